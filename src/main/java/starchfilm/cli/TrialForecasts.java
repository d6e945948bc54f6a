package starchfilm.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.diffusion.IntegrationFailure;
import starchfilm.trial.Trial;
import starchfilm.trial.TrialForecast;
import starchfilm.trial.TrialForecaster;

/**
 * The forecasts of many trials, computed side by side on all cores, in the order of the trials.
 *
 * @param done the forecasts
 * @param failures a sentence for each trial that could not be forecast
 */
record TrialForecasts(List<TrialForecast> done, List<String> failures) {
  /** One trial's forecast, or the sentence on why there is none. */
  private record Outcome(Optional<TrialForecast> forecast, String failure) {}

  /**
   * Forecasts trials.
   *
   * @param trials the trials
   * @param forecaster what forecasts them
   * @return every forecast or failure
   */
  static TrialForecasts of(List<Trial> trials, TrialForecaster forecaster) {
    List<Outcome> outcomes =
        trials.parallelStream().map(trial -> outcome(trial, forecaster)).toList();
    List<TrialForecast> done = new ArrayList<>();
    List<String> failures = new ArrayList<>();
    for (Outcome outcome : outcomes) {
      outcome.forecast().ifPresentOrElse(done::add, () -> failures.add(outcome.failure()));
    }
    return new TrialForecasts(done, failures);
  }

  private static Outcome outcome(Trial trial, TrialForecaster forecaster) {
    try {
      return new Outcome(Optional.of(forecaster.forecast(trial)), "");
    } catch (IllegalArgumentException | IntegrationFailure failure) {
      // Both carry a sentence written for the reader; anything else is a fault of the program.
      return new Outcome(Optional.empty(), trial.file() + ": no forecast: " + failure.getMessage());
    }
  }
}
