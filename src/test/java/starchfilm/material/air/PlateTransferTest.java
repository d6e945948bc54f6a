package starchfilm.material.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlateTransferTest {
  private static final double ROOM_K = 293.15;

  @Test
  void driesFasterInADraught() {
    double last = 0;
    for (double speed = 0; speed < 45; speed += 0.05) {
      double flux = flux(ROOM_K, 0.5, speed, 290, 1);
      assertThat(flux).as("%s m/s", speed).isGreaterThan(last);
      last = flux;
    }
  }

  @Test
  void driesSlowerInDamperAir() {
    double last = Double.MAX_VALUE;
    for (double humidity = 0; humidity <= 1; humidity += 0.01) {
      double flux = flux(ROOM_K, humidity, 0.1, 290, 1);
      assertThat(flux).as("RH %s", humidity).isLessThan(last);
      last = flux;
    }
  }

  @Test
  void passesNothingAtEquilibriumAndTurnsSignThere() {
    assertThat(flux(ROOM_K, 0.5, 0.1, ROOM_K, 0.5)).isCloseTo(0, within(1e-18));
    assertThat(flux(ROOM_K, 0.5, 0.1, ROOM_K, 0.49)).isNegative();
    assertThat(flux(ROOM_K, 0.5, 0.1, ROOM_K, 0.51)).isPositive();
  }

  @Test
  void factorMultipliesVapourAndHeatAlike() {
    PlateTransfer face = new PlateTransfer(0.3, 0.2, 0.01);
    face.evaluate(290, 0.9);
    double flux = face.vapourFluxKgPerM2S();
    double convection = face.convectionWPerM2K();
    double radiation = face.radiationWPerM2K();
    face.setFactor(1.7);
    face.evaluate(290, 0.9);
    assertThat(face.vapourFluxKgPerM2S() / flux).isCloseTo(1.7, within(1e-12));
    assertThat(face.convectionWPerM2K() / convection).isCloseTo(1.7, within(1e-12));
    assertThat(face.radiationWPerM2K()).isEqualTo(radiation);
  }

  /** The slope changes little from one millikelvin to the next, so a solver may difference. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 1, 37, 45})
  void hasASmoothSlopeInTemperature(double speed) {
    PlateTransfer face = new PlateTransfer(0.2, 0.2, 0);
    face.setAir(ROOM_K, 0.5, speed);
    double step = 1e-4;
    double largest = 0;
    double before = heat(face, 280 + step) - heat(face, 280);
    for (double t = 280; t < 340; t += 1e-3) {
      double slope = heat(face, t + step) - heat(face, t);
      largest = Math.max(largest, Math.abs(slope - before) / step);
      before = slope;
    }
    // W/(m2 K) a millikelvin, beside a slope of some 10 W/(m2 K); largest at the joint of the
    // natural branches in still air.
    assertThat(largest).isLessThan(1);
  }

  @Test
  void doesNotJumpWhereTheMixedLayerBegins() {
    PlateTransfer face = new PlateTransfer(0.2, 0.2, 0);
    double last = 0;
    for (double speed = 33; speed < 43; speed += 0.01) {
      face.setAir(ROOM_K, 0.5, speed);
      face.evaluate(ROOM_K, 1);
      if (last > 0) {
        assertThat(face.massTransferMPerS() / last).isBetween(1.0, 1.002);
      }
      last = face.massTransferMPerS();
    }
  }

  @Test
  void boilingSurfaceIsNotANumber() {
    assertThat(flux(ROOM_K, 0.5, 0, 380, 1)).isNaN();
  }

  @Test
  void repeatsItself() {
    assertThat(flux(300, 0.4, 0.3, 295, 0.8)).isEqualTo(flux(300, 0.4, 0.3, 295, 0.8));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          293 | 1.2 | 0.1 | exchange with the air: relative humidity: 1.2 given, allowed 0 to 1
          293 | NaN | 0.1 | exchange with the air: relative humidity: NaN given, allowed 0 to 1
          293 | 0.5 | -1 | exchange with the air: air speed: -1.0 given, allowed 0 m/s or more
          -3 | 0.5 | 0 | exchange with the air: air temperature: -3.0 given, allowed above 0 K
          """)
  void refusesImpossibleAir(double temperatureK, double humidity, double speed, String message) {
    PlateTransfer face = new PlateTransfer(0.2, 0.2, 0);
    assertThatThrownBy(() -> face.setAir(temperatureK, humidity, speed))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(message);
  }

  @Test
  void refusesAPlateWithoutWidth() {
    assertThatThrownBy(() -> new PlateTransfer(0.2, 0, 0))
        .hasMessage("exchange with the air: width: 0.0 given, allowed above 0 m");
  }

  private static double heat(PlateTransfer face, double surfaceK) {
    face.evaluate(surfaceK, 1);
    return face.convectionWPerM2K() * (ROOM_K - surfaceK) - 2.45e6 * face.vapourFluxKgPerM2S();
  }

  private static double flux(
      double airK, double humidity, double speed, double surfaceK, double activity) {
    PlateTransfer face = new PlateTransfer(0.2, 0.2, 0);
    face.setAir(airK, humidity, speed);
    face.evaluate(surfaceK, activity);
    return face.vapourFluxKgPerM2S();
  }

  /**
   * Under a rim the resistance grows by that of still air 0.35 of the rim deep; in a draught of 0.3
   * m/s by half of that. The diffusivity of vapour is that of the same air without a rim.
   */
  @Test
  void aRimAddsALayerOfStillAir() {
    double still = rimResistance(0, 0.010);
    assertThat(rimResistance(0, 0.020)).isCloseTo(2 * still, within(1e-6 * still));
    assertThat(rimResistance(0.3, 0.010)).isCloseTo(still / 2, within(1e-6 * still));
    double diffusivity = new MarreroMason1972().m2PerS(293.15, HumidAir.STANDARD_PRESSURE_PA);
    assertThat(still * diffusivity).isCloseTo(0.35 * 0.010, within(1e-5));
  }

  private static double rimResistance(double speedMPerS, double rimM) {
    return 1 / coefficient(speedMPerS, rimM) - 1 / coefficient(speedMPerS, 0);
  }

  private static double coefficient(double speedMPerS, double rimM) {
    PlateTransfer transfer = new PlateTransfer(0.2, 0.2, rimM);
    transfer.setAir(293.15, 0.5, speedMPerS);
    transfer.evaluate(293.15, 0.99);
    return transfer.massTransferMPerS();
  }

  /** Vapour only diffuses from a plate so small that its air cannot rise: Sh = 1. */
  @Test
  void airOverATinyPlateStandsStill() {
    double sideM = 4e-4;
    double diffusivity = 2.5e-5;
    for (boolean down : new boolean[] {false, true}) {
      NaturalFlow flow = new NaturalFlow(sideM * sideM, 4 * sideM, 1);
      flow.setFacingDown(down);
      assertThat(Math.cbrt(flow.massTransferCubed(0, diffusivity, 1e-3)))
          .isCloseTo(diffusivity / (sideM / 4), within(1e-3));
    }
  }
}
