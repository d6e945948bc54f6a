package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.report.MilestoneTable.MilestoneLine;
import starchfilm.report.words.PlainWords;

/**
 * What is said of a plate under way: milestones, the scale's test, cracks, curling, failed film.
 */
class PlateWordsTest {
  private static final List<Trial> GARDEN =
      NotebookReader.read(List.of(Path.of("formulations", "garden"))).trials();

  static Stream<TrialForecast> garden() {
    return GARDEN.stream().map(PlateWordsTest::forecast);
  }

  @ParameterizedTest
  @MethodSource("garden")
  void aPlateIsNoLighterFromTheHourThatIsToldAndNotLongBefore(TrialForecast trial) {
    String told = ConstantMass.of(trial).orElseThrow();
    assertThat(told).contains("g in twelve hours");
    double hours = Double.parseDouble(told.replaceAll(".*from (\\d+) hours.*", "$1"));
    double grams = Double.parseDouble(told.replaceAll(".*more than ([0-9.]+) g.*", "$1"));
    assertThat(lossG(trial, hours)).isLessThan(1.2 * grams);
    assertThat(lossG(trial, 0.85 * hours)).isGreaterThan(grams);
  }

  private static double lossG(TrialForecast trial, double hours) {
    CurveReading reading = new CurveReading(trial);
    double before = reading.moistureAt(3_600 * Math.max(0, hours - 12)).middle();
    double now = reading.moistureAt(3_600 * hours).middle();
    return 1_000 * (reading.massKg(before) - reading.massKg(now));
  }

  @ParameterizedTest
  @MethodSource("garden")
  void skinDryIsToldOnlyWhereItComesWellBeforePeelable(TrialForecast trial) {
    MilestoneTable table = MilestoneTable.of(trial);
    assertThat(table.rows()).extracting(MilestoneLine::name).contains("peelable");
    assertThat(table.rows()).hasSizeBetween(2, 3);
  }

  @Test
  void aFailedFilmIsCookedAgainOrThrownAway() {
    String said =
        garden()
            .flatMap(
                trial ->
                    trial.seen().faults().stream()
                        .map(
                            fault ->
                                PlainWords.word(fault.kind())
                                    + ": "
                                    + FailedFilm.todo(fault, trial)))
            .reduce("", (all, one) -> all + "\n" + one);

    assertThat(said)
        .containsPattern("cracked.*soak it overnight in \\d+ times its weight of water")
        .containsPattern("mould.*throw it away")
        .containsPattern("curled.*pressed under a board");
  }

  private static TrialForecast forecast(Trial trial) {
    return new TrialForecaster(SameForAll.TEXTBOOK).forecast(trial);
  }
}
