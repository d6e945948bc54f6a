package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Pour;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Wanted;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.numerics.evidence.Band;

/**
 * Made-up plates whose unevenness nobody measured, dried in cases drawn from what is believed of
 * them: their 80 % ranges hold about 80 of 100, at every spot, also after two weighings. Longer:
 * {@code -Dstarchfilm.plates=400 -Dstarchfilm.seed=5000}.
 */
class UnevennessCoverageTest {
  private static final int PLATES = Integer.getInteger("starchfilm.plates", 80);
  private static final int SEED = Integer.getInteger("starchfilm.seed", 77);

  @ParameterizedTest
  @CsvSource({"0", "2"})
  void eightOfTenPlatesLieWithinTheRangeOfEverySpot(int weighings) {
    SyntheticPlates chance = new SyntheticPlates(SEED + weighings);
    int[] held = new int[Spot.values().length];
    double thickOverAverage = 0;
    for (int i = 0; i < PLATES; i++) {
      Trial trial = unmeasured(chance.any("kitchen"));
      ParameterSample truth = NotebookCalibrationTest.truths(List.of(trial), chance).get(0);
      Trial weighed = weighings == 0 ? trial : SyntheticPlates.dried(trial, truth, 0.3, 0.7);
      for (Spot spot : Spot.values()) {
        Band band = SyntheticPlates.forecast(weighed, SharedParameters.untaught(), spot);
        double truthS = SyntheticPlates.dryThroughS(trial, truth, spot);
        held[spot.ordinal()] += truthS >= band.low() && truthS <= band.high() ? 1 : 0;
        double width = Math.log(band.high() / band.low());
        thickOverAverage += spot == Spot.THICK_SPOT ? width : spot == Spot.NOMINAL ? -width : 0;
      }
    }
    System.out.printf(
        "%d weighings: thin edge %d, average %d, thick spot %d of %d plates within%n",
        weighings,
        held[Spot.THIN_EDGE.ordinal()],
        held[Spot.NOMINAL.ordinal()],
        held[Spot.THICK_SPOT.ordinal()],
        PLATES);
    // Within 6 % as notebooks are, and of few plates within two standard errors and a little.
    double allowed = Math.max(0.06, 0.01 + 2 * Math.sqrt(0.8 * 0.2 / PLATES));
    for (Spot spot : Spot.values()) {
      assertThat(held[spot.ordinal()] / (double) PLATES)
          .as("%s, %s weighings", spot, weighings)
          .isBetween(0.8 - allowed, 0.8 + allowed);
    }
    assertThat(thickOverAverage / PLATES).isGreaterThan(weighings == 0 ? 0.02 : 0.1);
  }

  private static Trial unmeasured(Trial trial) {
    Pour pour = trial.casting().pour();
    Casting casting =
        trial
            .casting()
            .with(
                new Pour(
                    pour.wetThicknessM(),
                    pour.unevenness(),
                    Pour.UNMEASURED_SD_OF_LOG,
                    pour.pasteTemperatureK(),
                    pour.weighedKg(),
                    pour.plates(),
                    List.of()));
    return new Trial(
        trial.file(),
        trial.name(),
        trial.invented(),
        Optional.empty(),
        Wanted.NOTHING,
        trial.pouredAt(),
        trial.recipe(),
        casting,
        trial.seen(),
        trial.notRecorded());
  }
}
