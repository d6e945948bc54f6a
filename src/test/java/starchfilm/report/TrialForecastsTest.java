package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.change.TrialAnalyst;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.film.LearntFilm;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.PlateParameters;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.forecast.TrialKnowledge;

class TrialForecastsTest {
  private static final List<Trial> TRIALS =
      NotebookReader.read(List.of(Path.of("formulations/garden"))).trials();
  private static final TrialAnalyst FEW =
      new TrialAnalyst(new TrialForecaster(SameForAll.TEXTBOOK));

  @Test
  void whateverFailsInOneTrialLeavesTheOthers() {
    TrialForecasts forecasts =
        TrialForecasts.of(
            TRIALS, trial -> failing(trial, new ArithmeticException("a step too small")));

    assertThat(forecasts.done()).hasSize(TRIALS.size() - 1);
    assertThat(forecasts.failures())
        .singleElement()
        .asString()
        .isEqualTo(
            "formulations/garden/4-blend.json: no forecast: these amounts, or ranges as wide as"
                + " these, cannot be computed (a step too small); narrow the ranges, or check the"
                + " amounts");
  }

  @Test
  void aReaderWhoStopsTheWorkStopsAllOfIt() {
    assertThatThrownBy(
            () -> TrialForecasts.of(TRIALS, trial -> failing(trial, new CancellationException())))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void asManyTrialsAreForecastInFullAsHaveAPartOfTheirOwnThoughSomeFail() {
    List<Trial> many = IntStream.range(0, 56).mapToObj(i -> TRIALS.get(i % TRIALS.size())).toList();

    TrialForecasts forecasts = TrialForecasts.of(many, new FailingFor("4-blend.json"));

    List<TrialAnalysis> done = forecasts.done();
    assertThat(forecasts.failures()).hasSize(9);
    assertThat(forecasts.forecasts())
        .extracting(TrialForecast::trial)
        .isEqualTo(many.stream().filter(trial -> !trial.file().endsWith("4-blend.json")).toList());
    assertThat(done.subList(ComparisonPage.firstApart(done.size()), done.size()))
        .allSatisfy(one -> assertThat(one.sensitivities()).isNotEmpty());
  }

  @Test
  void ofAnEarlierTrialOfManyNoChangeIsTried() {
    List<Trial> many = Collections.nCopies(51, TRIALS.get(0));

    List<TrialAnalysis> done = TrialForecasts.of(many, SameForAll.TEXTBOOK).done();

    assertThat(done.get(0).sensitivities()).isEmpty();
    assertThat(done.get(0).forecast()).isEqualTo(done.get(50).forecast());
  }

  /** The textbook, which refuses the trials of one file. */
  private record FailingFor(String file) implements TrialKnowledge {
    @Override
    public PlateParameters drying(Trial trial) {
      if (trial.file().endsWith(file)) {
        throw new IllegalArgumentException("refused");
      }
      return SameForAll.TEXTBOOK.drying(trial);
    }

    @Override
    public PlateParameters atThePour(Trial trial) {
      return SameForAll.TEXTBOOK.atThePour(trial);
    }

    @Override
    public LearntFilm film(Trial trial) {
      return SameForAll.TEXTBOOK.film(trial);
    }

    @Override
    public CastingForecaster changed(Trial trial, Casting changed) {
      return SameForAll.TEXTBOOK.changed(trial, changed);
    }
  }

  private static TrialAnalysis failing(Trial trial, RuntimeException failure) {
    if (trial.file().endsWith("4-blend.json")) {
      throw failure;
    }
    return FEW.outline(trial);
  }
}
