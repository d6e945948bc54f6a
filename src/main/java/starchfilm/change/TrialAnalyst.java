package starchfilm.change;

import starchfilm.casting.trial.Trial;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;

/**
 * Forecasts trials and reruns them with changes. Every method throws an IllegalArgumentException
 * with a sentence for the reader where a figure lies outside what the model can do. Immutable; safe
 * to share between threads.
 *
 * @param forecaster what forecasts a trial
 */
public record TrialAnalyst(TrialForecaster forecaster) {

  /** The forecast, what more of each ingredient would do, and what would lower the risks. */
  public TrialAnalysis whole(Trial trial) {
    CastingForecaster known = forecaster.knowing(trial);
    TrialForecast forecast = forecaster.forecast(trial, known);
    return new TrialAnalysis(
        forecast,
        Sensitivities.of(known, trial.casting()),
        Remedies.of(known, trial.casting(), forecast.risks()));
  }

  /**
   * The forecast alone, at the least cost: for trials whose changes nobody reads, and for a recipe
   * that is still being moved about.
   */
  public TrialAnalysis outline(Trial trial) {
    return TrialAnalysis.alone(forecaster.forecast(trial));
  }
}
