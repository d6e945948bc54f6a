package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Pour;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.numerics.evidence.Band;

/**
 * Made-up plates whose unevenness nobody measured, dried in cases drawn from what is believed of
 * them: their 80 % ranges hold about 80 of 100, at every spot, also after two weighings.
 */
class UnevennessCoverageTest {
  private static final int PLATES = 80;

  @ParameterizedTest
  @CsvSource({"0", "2"})
  void eightOfTenPlatesLieWithinTheRangeOfEverySpot(int weighings) {
    SyntheticPlates chance = new SyntheticPlates(77 + weighings);
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
    for (Spot spot : Spot.values()) {
      // 80 % and two standard errors of so few plates; 150 plates lay between 72 and 90 % too.
      assertThat(held[spot.ordinal()] / (double) PLATES).as("%s", spot).isBetween(0.70, 0.90);
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
                    pour.plates()));
    return new Trial(
        trial.file(),
        trial.name(),
        trial.invented(),
        trial.pouredAt(),
        trial.recipe(),
        casting,
        trial.seen(),
        trial.notRecorded());
  }
}
