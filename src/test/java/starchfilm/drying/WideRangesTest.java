package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Pour;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

/** Ranges as wide as people write them leave no likely case without an answer. */
class WideRangesTest {
  /** Millimetres from and to, and relative spreads of dry solids and of glycerol. */
  @ParameterizedTest
  @CsvSource({
    "0.5, 12, 0, 0",
    "0.05, 25, 0, 0",
    "3, 3, 0.45, 0",
    "3, 3, 0, 0.55",
    "0.5, 12, 0.45, 0.55",
    "0.5, 12, 1.5, 2"
  })
  void everyLikelyCaseIsSolved(double fromMm, double toMm, double solidsSd, double glycerolSd) {
    for (double starch : new double[] {0.02, 0.08, 0.25}) {
      DryingForecast forecast =
          new DryingForecaster(ParameterDistribution.textbook(), DryingForecaster.DRAWS)
              .forecast(plate(starch, fromMm / 1000, toMm / 1000, solidsSd, glycerolSd));
      for (Spot spot : Spot.values()) {
        Band dry = forecast.at(spot).at(Milestone.DRY_THROUGH).timeS();
        assertThat(dry.low()).isNotNegative();
        assertThat(dry.middle()).isFinite();
      }
    }
  }

  /** However far off, a paste is never more solids than paste, nor a layer thinner than nothing. */
  @ParameterizedTest
  @CsvSource({"-6", "-2", "2", "6"})
  void noFactorLeavesItsDomain(double sds) {
    Casting drying = plate(0.3, 0.0005, 0.012, 0.45, 0.55);
    for (UncertainParameter parameter :
        List.of(
            UncertainParameter.THICKNESS,
            UncertainParameter.SOLIDS,
            UncertainParameter.PLASTICISER)) {
      SpotSolution solved =
          SolvedPlates.spot(drying, Spot.NOMINAL, ParameterSample.NONE.with(parameter, 0.5 * sds));
      assertThat(solved.startMoisture).isPositive();
      assertThat(solved.solidsKgPerM2).isPositive();
      assertThat(solved.at(Milestone.DRY_THROUGH)).isNotNaN().isNotNegative();
    }
  }

  /** A little more of dry solids s is as much more of s: ds = s d to first order. */
  @Test
  void aSmallDeviationOfTheSolidsIsRelative() {
    Casting drying = plate(0.3, 0.003, 0.003, 0, 0);
    double solids = drying.composition().drySolids();
    ParameterSample more = ParameterSample.NONE.with(UncertainParameter.SOLIDS, 1e-4);
    double moisture = PreparedCase.startMoisture(drying.composition(), more);
    assertThat(1 / (1 + moisture) / solids).isCloseTo(1 + 1e-4, within(1e-8));
  }

  private static Casting plate(
      double starch, double fromM, double toM, double solidsSd, double glycerolSd) {
    Casting usual = Castings.plate(3, Castings.paste(starch, 0.3), Castings.room(20, 50, 0.1), 60);
    return usual
        .with(new Paste(usual.composition(), 1, solidsSd, glycerolSd))
        .with(new Pour(Estimate.between(fromM, toM), 0.25, 333));
  }
}
