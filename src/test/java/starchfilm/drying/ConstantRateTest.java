package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.material.air.AirState;
import starchfilm.material.air.Harrison1963;
import starchfilm.material.air.PlateTransfer;

/** The constant-rate period of the whole model against a balance solved on its own. */
class ConstantRateTest {
  /**
   * A wet film dries at the rate and temperature of the psychrometric balance {@code (h_c +
   * h_r)(T_a - T) + U (T_a - T) = lambda J} at its own water activity, found by a root finder that
   * knows no time. The film follows that balance within 0.02 K and 0.5 % in the rate.
   */
  @ParameterizedTest
  @CsvSource({"20, 50, 0.1", "20, 50, 0", "25, 40, 0.5", "30, 40, 1", "40, 20, 2"})
  void followsThePsychrometricBalance(double celsius, double humidityPct, double speed) {
    Casting drying =
        Castings.plate(
            3, Castings.paste(0.05, 0.3), Castings.room(celsius, humidityPct, speed), celsius);
    double[] times = {3 * 3600, 3.2 * 3600};
    List<SpotMoment> moments = moments(drying, times);
    SpotMoment moment = moments.get(1);
    double moistureLost = moments.get(0).meanMoisture() - moment.meanMoisture();
    double solids = solidsKgPerM2(drying);
    double rate = moistureLost * solids / (times[1] - times[0]);

    double activity = PreparedCase.of(drying).material().isotherm().activity(moment.skinMoisture());
    PlateTransfer transfer = transfer(drying);
    double surfaceK = steadyK(transfer, drying.room().at(0).temperatureK(), activity);

    assertThat(moment.temperatureK()).isCloseTo(surfaceK, offset(0.02));
    assertThat(rate)
        .isCloseTo(transfer.vapourFluxKgPerM2S(), offset(0.005 * transfer.vapourFluxKgPerM2S()));
  }

  private static List<SpotMoment> moments(Casting drying, double[] timesS) {
    PreparedCase prepared = PreparedCase.of(drying);
    return new SpotSolver(prepared, new double[0])
        .moments(Spot.NOMINAL, ParameterSample.NONE, timesS);
  }

  private static double solidsKgPerM2(Casting drying) {
    double moisture = drying.composition().waterKgPerKgDry();
    return drying.pour().wetThicknessM().value() / drying.composition().volumeM3PerKgDry(moisture);
  }

  private static PlateTransfer transfer(Casting drying) {
    PlateTransfer transfer =
        new PlateTransfer(drying.plate().lengthM(), drying.plate().widthM(), 0);
    AirState air = drying.room().at(0);
    transfer.setAir(
        air.temperatureK(),
        air.relativeHumidity(),
        Math.max(PlateExchange.STILLEST_M_PER_S, air.speedMPerS()));
    return transfer;
  }

  private static double steadyK(PlateTransfer transfer, double airK, double activity) {
    Harrison1963 latentHeat = new Harrison1963();
    return new BrentSolver(1e-10)
        .solve(
            200,
            surfaceK -> {
              transfer.evaluate(surfaceK, activity);
              double fromAir =
                  transfer.convectionWPerM2K()
                      + transfer.radiationWPerM2K()
                      + PlateExchange.BENCH_W_PER_M2K;
              return fromAir * (airK - surfaceK)
                  - latentHeat.jPerKg(surfaceK) * transfer.vapourFluxKgPerM2S();
            },
            airK - 25,
            airK);
  }
}
