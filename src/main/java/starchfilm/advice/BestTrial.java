package starchfilm.advice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import starchfilm.forecast.TrialForecast;

/**
 * Picks the trial to go on from: the best rated; of equals the one with fewest faults, the last.
 */
final class BestTrial {
  private BestTrial() {}

  static Optional<TrialForecast> of(List<TrialForecast> forecasts) {
    Comparator<TrialForecast> byRating =
        Comparator.comparingInt(each -> each.trial().seen().rating().orElse(0));
    Comparator<TrialForecast> byFaults =
        Comparator.comparingInt(each -> -each.trial().seen().faults().size());
    Comparator<TrialForecast> order = byRating.thenComparing(byFaults);
    return forecasts.stream()
        .filter(each -> each.trial().hasHistory())
        .reduce((one, later) -> order.compare(later, one) >= 0 ? later : one);
  }
}
