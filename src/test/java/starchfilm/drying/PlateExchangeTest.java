package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Room;
import starchfilm.casting.SwingingRoom;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.air.AirState;
import starchfilm.material.air.Harrison1963;
import starchfilm.material.air.PlateTransfer;
import starchfilm.material.sorption.FilmIsotherm;
import starchfilm.numerics.diffusion.FaceExchange.Argument;
import starchfilm.numerics.diffusion.FaceExchange.Result;

/** The exchange of a plate: its derivatives against differences, its heat by hand. */
class PlateExchangeTest {
  private static final ParameterSample SOME =
      ParameterSample.NONE
          .with(UncertainParameter.AIR_SIDE, 0.3)
          .with(UncertainParameter.ISOTHERM, 0.1)
          .with(UncertainParameter.BENCH, 0.2)
          .with(UncertainParameter.HUMIDITY, 0.04)
          .with(UncertainParameter.AIR_TEMPERATURE, 1.5);
  private static final double TIME_S = 9_000;
  private static final double LOWER = 0.6;
  private static final double UPPER = 0.3;
  private static final double MEAN = 0.45;
  private static final double KELVIN = 290;

  @ParameterizedTest
  @EnumSource(OpenFaces.class)
  void derivativesAreThoseOfTheExchange(OpenFaces faces) {
    assertDerivatives(Castings.USUAL, faces);
    Room swing = new SwingingRoom(new AirState(293.15, 0.5, 0.3), 5, 0.1, 0);
    assertDerivatives(
        Castings.plate(3, Castings.paste(0.08, 0.3), swing, 60, OptionalDouble.of(40), List.of()),
        faces);
  }

  private static void assertDerivatives(Casting drying, OpenFaces faces) {
    PlateExchange exchange = exchange(drying, faces);
    exchange.evaluate(TIME_S, LOWER, UPPER, MEAN, KELVIN);
    exchange.linearise(TIME_S, LOWER, UPPER, MEAN, KELVIN);
    double[][] slopes = new double[Result.values().length][Argument.values().length];
    for (Result of : Result.values()) {
      for (Argument by : Argument.values()) {
        slopes[of.ordinal()][by.ordinal()] = exchange.slope(of, by);
      }
    }
    double[] here = results(exchange, 0, 0, 0, 0, 0);
    assertThat(new double[] {exchange.lowerOutflow(), exchange.upperOutflow()})
        .containsExactly(here[0], here[1]);
    double[][] steps = {
      {1e-5, 0, 0, 0, 0},
      {0, 1e-5, 0, 0, 0},
      {0, 0, 1e-4, 0, 0},
      {0, 0, 0, 1e-2, 0},
      {0, 0, 0, 0, 60}
    };
    for (Argument by : Argument.values()) {
      double[] step = steps[by.ordinal()];
      double size = step[by.ordinal()];
      double[] above = results(exchange, step[0], step[1], step[2], step[3], step[4]);
      double[] below = results(exchange, -step[0], -step[1], -step[2], -step[3], -step[4]);
      for (Result of : Result.values()) {
        int i = of.ordinal();
        // An outflow's slope by the mean is not read.
        if (by != Argument.MEAN || of == Result.BORDER_RATE) {
          double slope = (above[i] - below[i]) / (2 * size);
          assertThat(slopes[i][by.ordinal()])
              .as("%s by %s, %s", of, by, faces)
              .isCloseTo(slope, within(4e-3 * Math.abs(slope) + 1e-13));
        }
      }
    }
  }

  private static double[] results(
      PlateExchange exchange,
      double lower,
      double upper,
      double mean,
      double kelvin,
      double seconds) {
    exchange.evaluate(TIME_S + seconds, LOWER + lower, UPPER + upper, MEAN + mean, KELVIN + kelvin);
    return new double[] {exchange.lowerOutflow(), exchange.upperOutflow(), exchange.borderRate()};
  }

  /**
   * On a rack both faces meet the same air: in a wind alike, in still air the lower one loses more,
   * for what it cools sinks away from it. A doubled transfer doubles both.
   */
  @Test
  void bothFacesOfARackMeetTheAirOfTheMoment() {
    Casting windy = Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(20, 50, 3), 60);
    double[] inWind = wetRack(windy, ParameterSample.NONE, 0);
    assertThat(inWind[0]).isCloseTo(inWind[1], within(0.02 * inWind[1]));
    Casting still = Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(20, 50, 0), 60);
    double[] inStillAir = wetRack(still, ParameterSample.NONE, 0);
    assertThat(inStillAir[0]).isGreaterThan(1.1 * inStillAir[1]);
    double[] doubled =
        wetRack(still, ParameterSample.NONE.with(UncertainParameter.AIR_SIDE, Math.log(2)), 0);
    assertThat(doubled[0]).isCloseTo(2 * inStillAir[0], within(1e-9 * doubled[0]));
    assertThat(doubled[1]).isCloseTo(2 * inStillAir[1], within(1e-9 * doubled[1]));
    // Six hours into a swing of humidity that begins at its middle, the air is at its dampest.
    Room swing = new SwingingRoom(new AirState(293.15, 0.5, 3), 0, 0.3, 0);
    Casting swinging = Castings.plate(3, Castings.paste(0.08, 0.3), swing, 60);
    double[] before = wetRack(swinging, ParameterSample.NONE, 0);
    double[] after = wetRack(swinging, ParameterSample.NONE, 6 * 3600);
    assertThat(after[0] / before[0]).isCloseTo(after[1] / before[1], within(0.02));
    assertThat(after[0] / before[0]).isNotCloseTo(1, within(0.2));
  }

  /** Outflows of the lower and the upper face of a wet sheet of 290 K. */
  private static double[] wetRack(Casting drying, ParameterSample deviations, double timeS) {
    PreparedCase prepared = PreparedCase.of(drying);
    PlateExchange exchange = new PlateExchange(drying, prepared.material().isotherm());
    exchange.setCase(deviations, prepared.material(), 0.3);
    exchange.setOpenFaces(OpenFaces.BOTH);
    exchange.evaluate(timeS, 5, 5, 5, KELVIN);
    return new double[] {exchange.lowerOutflow(), exchange.upperOutflow()};
  }

  /**
   * Heat by hand for a closed lower face: air and radiation bring {@code h (T_a - T)}, the bench
   * {@code U (T_b - T)}, evaporation takes {@code lambda J}; film and plate share what is left.
   */
  @Test
  void balancesHeat() {
    PlateExchange exchange = exchange(Castings.USUAL, OpenFaces.UPPER);
    exchange.evaluate(0, LOWER, UPPER, MEAN, KELVIN);
    double airK = 293.15 + 1.5;
    PlateTransfer transfer = new PlateTransfer(0.2, 0.2, 0);
    transfer.setFactor(Math.exp(0.3));
    transfer.setAir(airK, 0.54, 0.1);
    var isotherm = PreparedCase.of(Castings.USUAL).material().isotherm();
    transfer.evaluate(
        KELVIN, isotherm.activity(UPPER / Math.exp(0.1) / FilmIsotherm.warmth(KELVIN)));
    double flux = transfer.vapourFluxKgPerM2S();
    double heat =
        (transfer.convectionWPerM2K() + transfer.radiationWPerM2K() + 3 * Math.exp(0.2))
                * (airK - KELVIN)
            - new Harrison1963().jPerKg(KELVIN) * flux;
    // 0.3 kg/m2 of solids, 10 parts starch to 3 of glycerol; 4 mm of glass of 2500 kg/m3, 750 J.
    double solids = (1550 + 0.3 * 2430) / 1.3;
    double capacity = 0.3 * (solids + MEAN * 4180) + 2500 * 750 * 0.004;
    assertThat(exchange.upperOutflow()).isCloseTo(flux, within(1e-15));
    assertThat(exchange.lowerOutflow()).isZero();
    assertThat(exchange.borderRate()).isCloseTo(heat / capacity, within(1e-12));
  }

  /** A hygrometer may be off by more than lies between the air and its ends. */
  @ParameterizedTest
  @CsvSource({"2, -0.05, 0", "98, 0.05, 1"})
  void airIsNeitherDrierThanDryNorDamperThanSaturated(double percent, double off, double ratio) {
    Casting drying =
        Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(20, percent, 0.1), 60);
    PreparedCase prepared = PreparedCase.of(drying);
    PlateExchange exchange = new PlateExchange(drying, prepared.material().isotherm());
    exchange.setCase(
        ParameterSample.NONE.with(UncertainParameter.HUMIDITY, off), prepared.material(), 0.3);
    assertThat(exchange.restingActivity(0)).isCloseTo(ratio, within(1e-12));
  }

  /** 0.3 kg/m2 of solids with twice their weight of water at 333.15 K on glass at 294.65 K. */
  @Test
  void mixesPasteAndPlate() {
    PlateExchange exchange = exchange(Castings.USUAL, OpenFaces.UPPER);
    double film = 0.3 * ((1550 + 0.3 * 2430) / 1.3 + 2 * 4180);
    double plate = 2500 * 750 * 0.004;
    assertThat(exchange.startTemperatureK(333.15, 2))
        .isCloseTo((film * 333.15 + plate * 294.65) / (film + plate), within(1e-9));
  }

  /** Two open faces lose more than one, and a face turned up loses what the upper one would. */
  @Test
  void opensTheFacesThatAreNamed() {
    double[] upper = results(exchange(Castings.USUAL, OpenFaces.UPPER), 0, 0, 0, 0, 0);
    double[] turned = results(exchange(Castings.USUAL, OpenFaces.TURNED), 0, 0, 0, 0, 0);
    double[] both = results(exchange(Castings.USUAL, OpenFaces.BOTH), 0, 0, 0, 0, 0);
    assertThat(upper[0]).isZero();
    assertThat(turned[1]).isZero();
    assertThat(both[1]).isEqualTo(upper[1]);
    assertThat(both[0]).isPositive();
    PlateExchange swapped = exchange(Castings.USUAL, OpenFaces.TURNED);
    swapped.evaluate(TIME_S, UPPER, LOWER, MEAN, KELVIN);
    assertThat(swapped.lowerOutflow()).isEqualTo(upper[1]);
  }

  private static PlateExchange exchange(Casting drying, OpenFaces faces) {
    PreparedCase prepared = PreparedCase.of(drying);
    PlateExchange exchange = new PlateExchange(drying, prepared.material().isotherm());
    exchange.setCase(SOME, prepared.material(), 0.3);
    exchange.setOpenFaces(faces);
    return exchange;
  }
}
