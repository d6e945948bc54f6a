package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.change.TrialAnalyst;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecaster;

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

  private static TrialAnalysis failing(Trial trial, RuntimeException failure) {
    if (trial.file().endsWith("4-blend.json")) {
      throw failure;
    }
    return FEW.outline(trial);
  }
}
