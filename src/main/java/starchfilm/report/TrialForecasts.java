package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
public record TrialForecasts(List<TrialForecast> done, List<String> failures) {
  /** Copies the lists. */
  public TrialForecasts {
    done = List.copyOf(done);
    failures = List.copyOf(failures);
  }

  /** One trial's forecast, or the sentence on why there is none. */
  private record Outcome(Optional<TrialForecast> forecast, String failure) {}

  /**
   * Forecasts trials.
   *
   * @param trials the trials
   * @param forecaster what forecasts one, such as {@link TrialForecaster#forecast}; called from
   *     several threads at once
   * @return every forecast or failure
   */
  public static TrialForecasts of(List<Trial> trials, Function<Trial, TrialForecast> forecaster) {
    List<Outcome> outcomes =
        trials.parallelStream().map(trial -> outcome(trial, forecaster)).toList();
    List<TrialForecast> done = new ArrayList<>();
    List<String> failures = new ArrayList<>();
    for (Outcome outcome : outcomes) {
      outcome.forecast().ifPresentOrElse(done::add, () -> failures.add(outcome.failure()));
    }
    return new TrialForecasts(done, failures);
  }

  private static Outcome outcome(Trial trial, Function<Trial, TrialForecast> forecaster) {
    try {
      return new Outcome(Optional.of(forecaster.apply(trial)), "");
    } catch (IllegalArgumentException | IntegrationFailure failure) {
      // Both carry a sentence written for the reader; anything else is a fault of the program.
      return new Outcome(Optional.empty(), trial.file() + ": no forecast: " + failure.getMessage());
    }
  }
}
