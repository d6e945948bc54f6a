package starchfilm.change;

import java.util.List;
import starchfilm.forecast.TrialForecast;

/**
 * A trial's forecast and what changes would do to it.
 *
 * @param forecast the forecast
 * @param sensitivities what more of each ingredient would do; empty where that was not asked
 * @param remedies what would lower its risks most
 */
public record TrialAnalysis(
    TrialForecast forecast, List<Sensitivity> sensitivities, Remedies remedies) {
  /** A forecast of which no change was tried. */
  public static TrialAnalysis alone(TrialForecast forecast) {
    return new TrialAnalysis(forecast, List.of(), Remedies.NONE);
  }
}
