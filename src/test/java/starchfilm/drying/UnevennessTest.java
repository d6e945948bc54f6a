package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Pour;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** A plate whose unevenness nobody measured is known less well where it is thick and thin. */
class UnevennessTest {
  private static final DryingForecaster FORECASTER =
      new DryingForecaster(ParameterDistribution.textbook(), 512);
  private static final Casting UNMEASURED =
      Castings.USUAL.with(
          new Pour(
              Estimate.exact(0.003),
              Pour.DEFAULT_UNEVENNESS,
              Pour.UNMEASURED_SD_OF_LOG,
              333,
              Optional.empty(),
              1,
              List.of()));

  @Test
  void widensTheRangeOfEdgeAndThickSpotAlone() {
    DryingForecast measured = FORECASTER.forecast(Castings.USUAL);
    DryingForecast unmeasured = FORECASTER.forecast(UNMEASURED);
    assertThat(width(unmeasured, Spot.NOMINAL))
        .isCloseTo(width(measured, Spot.NOMINAL), within(0.03));
    assertThat(width(unmeasured, Spot.THICK_SPOT))
        .isGreaterThan(1.03 * width(unmeasured, Spot.NOMINAL));
    assertThat(width(unmeasured, Spot.THIN_EDGE))
        .isGreaterThan(1.1 * width(unmeasured, Spot.NOMINAL));
  }

  @Test
  void isNamedAmongWhatTheRangeComesFrom() {
    assertThat(FORECASTER.forecast(UNMEASURED).spreadDrivers())
        .extracting(SpreadDriver::factor)
        .contains(UncertainParameter.UNEVENNESS);
    assertThat(FORECASTER.forecast(Castings.USUAL).spreadDrivers())
        .extracting(SpreadDriver::factor)
        .doesNotContain(UncertainParameter.UNEVENNESS);
  }

  /** 8 of 10 between 13 and 48 %, around 25 % (the 90 % point of a normal is 1.2816). */
  @Test
  void spreadsAsTheGuideSays() {
    double reach = Math.exp(1.2816 * Pour.UNMEASURED_SD_OF_LOG);
    assertThat(Pour.DEFAULT_UNEVENNESS / reach).isCloseTo(0.13, within(0.005));
    assertThat(Pour.DEFAULT_UNEVENNESS * reach).isCloseTo(0.48, within(0.005));
  }

  /** However uneven, no part of a plate is without paste. */
  @Test
  void neverLeavesAPlaceBare() {
    ParameterSample wild = ParameterSample.NONE.with(UncertainParameter.UNEVENNESS, 3);
    assertThat(SolvedPlates.spot(UNMEASURED, Spot.THIN_EDGE, wild).solidsKgPerM2).isPositive();
    double[] masses = new double[1];
    new PlateSimulation(UNMEASURED, 0).filmMassesKg(wild, masses);
    assertThat(masses[0])
        .isCloseTo(UNMEASURED.pastePerPlateKg(), within(0.01 * UNMEASURED.pastePerPlateKg()));
  }

  private static double width(DryingForecast forecast, Spot spot) {
    Band band = forecast.at(spot).at(Milestone.DRY_THROUGH).timeS();
    return Math.log(band.high() / band.low());
  }
}
