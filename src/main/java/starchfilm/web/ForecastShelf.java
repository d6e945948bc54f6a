package starchfilm.web;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;
import starchfilm.trial.Trial;
import starchfilm.trial.TrialForecast;

/**
 * Keeps the forecasts made last, so that a page that is loaded again does not compute them again. A
 * trial that changed in any way is another trial.
 *
 * <p>Safe to share between threads; a forecast that two ask for at once is made once.
 */
final class ForecastShelf {
  private static final int KEPT = 100;

  private final Function<Trial, TrialForecast> forecaster;
  private final Map<Trial, CompletableFuture<TrialForecast>> kept =
      new LinkedHashMap<>(16, 0.75f, true);

  ForecastShelf(Function<Trial, TrialForecast> forecaster) {
    this.forecaster = forecaster;
  }

  /**
   * A forecast, made now unless it is kept.
   *
   * @param trial the trial
   * @return its forecast
   * @throws IllegalArgumentException as {@link starchfilm.trial.TrialForecaster#forecast} does
   */
  TrialForecast forecast(Trial trial) {
    CompletableFuture<TrialForecast> mine = new CompletableFuture<>();
    CompletableFuture<TrialForecast> first = first(trial, mine);
    if (first == mine) {
      try {
        mine.complete(forecaster.apply(trial));
      } catch (RuntimeException | Error e) {
        drop(trial, mine);
        mine.completeExceptionally(e);
      }
    }
    try {
      return first.join();
    } catch (CompletionException e) {
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    }
  }

  /**
   * A forecast, if it is kept.
   *
   * @param trial the trial
   * @return its forecast; empty where it was not made yet
   */
  synchronized Optional<TrialForecast> kept(Trial trial) {
    CompletableFuture<TrialForecast> found = kept.get(trial);
    return found == null || !found.isDone() || found.isCompletedExceptionally()
        ? Optional.empty()
        : Optional.of(found.join());
  }

  private synchronized CompletableFuture<TrialForecast> first(
      Trial trial, CompletableFuture<TrialForecast> mine) {
    CompletableFuture<TrialForecast> earlier = kept.putIfAbsent(trial, mine);
    if (kept.size() > KEPT) {
      Iterator<Trial> oldest = kept.keySet().iterator();
      oldest.next();
      oldest.remove();
    }
    return earlier == null ? mine : earlier;
  }

  private synchronized void drop(Trial trial, CompletableFuture<TrialForecast> mine) {
    kept.remove(trial, mine);
  }
}
