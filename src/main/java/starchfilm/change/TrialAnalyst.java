package starchfilm.change;

import java.util.List;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.CastingForecaster;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;

/**
 * Forecasts trials and reruns them with changes. Every method throws an IllegalArgumentException
 * with a sentence for the reader where a figure lies outside what the model can do. Immutable; safe
 * to share between threads.
 */
public final class TrialAnalyst {
  private final TrialForecaster forecaster;

  /**
   * An analyst.
   *
   * @param forecaster what forecasts a trial
   */
  public TrialAnalyst(TrialForecaster forecaster) {
    this.forecaster = forecaster;
  }

  /** The forecast, what more of each ingredient would do, and what would lower the risks. */
  public TrialAnalysis whole(Trial trial) {
    CastingForecaster known = forecaster.knowing(trial);
    return analysis(trial, known, Sensitivities.of(known, trial.casting()));
  }

  /**
   * The same without what more of each ingredient would do, which is most of the work; for a recipe
   * that is still being moved about.
   */
  public TrialAnalysis sketch(Trial trial) {
    return analysis(trial, forecaster.knowing(trial), List.of());
  }

  private TrialAnalysis analysis(
      Trial trial, CastingForecaster known, List<Sensitivity> sensitivities) {
    TrialForecast forecast = forecaster.forecast(trial, known);
    return new TrialAnalysis(
        forecast, sensitivities, Remedies.of(known, trial.casting(), forecast.risks()));
  }

  /** The forecast alone, at the least cost, for hundreds of trials at once. */
  public TrialAnalysis outline(Trial trial) {
    return TrialAnalysis.alone(forecaster.forecast(trial));
  }
}
