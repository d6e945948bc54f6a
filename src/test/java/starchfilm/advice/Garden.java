package starchfilm.advice;

import java.nio.file.Path;
import java.util.List;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;

/** The notebook that comes with the program, forecast once for all tests of advice. */
final class Garden {

  static final Adviser ADVISER = new Adviser(SameForAll.TEXTBOOK);

  static final List<TrialForecast> FORECASTS = forecasts();

  private Garden() {}

  private static List<TrialForecast> forecasts() {
    Notebook notebook = NotebookReader.read(List.of(Path.of("formulations")));
    TrialForecaster forecaster = new TrialForecaster(SameForAll.TEXTBOOK);
    return notebook.trials().stream().map(forecaster::forecast).toList();
  }

  static List<Trial> trials() {
    return FORECASTS.stream().map(TrialForecast::trial).toList();
  }

  /** A trial by its number in the demo, from 1. */
  static TrialForecast trial(int number) {
    return FORECASTS.get(number - 1);
  }

  static TrialAdvice adviceAfter(int number) {
    return ADVISER.after(trial(number), trials());
  }
}
