package starchfilm.web.work;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Function;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;

/**
 * Keeps the forecasts made last, so that a page that is loaded again does not compute them again. A
 * trial that changed in any way is another trial, and what was learnt since makes another forecast.
 *
 * <p>Safe to share between threads; a forecast that two ask for at once is made once.
 */
public final class ForecastShelf {
  private static final int KEPT = 100;

  private final Function<Trial, TrialAnalysis> forecaster;
  private final Function<Trial, Object> grounds;
  private final Map<Key, CompletableFuture<TrialAnalysis>> kept =
      new LinkedHashMap<>(16, 0.75f, true);

  /** A trial, and what its forecast rests on beside. */
  private record Key(Trial trial, Object grounds) {}

  /**
   * An empty shelf.
   *
   * @param forecaster makes the forecasts
   * @param grounds what the forecast of a trial rests on beside the trial; where that is equal, so
   *     is the forecast
   */
  public ForecastShelf(Function<Trial, TrialAnalysis> forecaster, Function<Trial, Object> grounds) {
    this.forecaster = forecaster;
    this.grounds = grounds;
  }

  private Key key(Trial trial) {
    return new Key(trial, grounds.apply(trial));
  }

  /** A forecast, made now unless it is kept. */
  TrialAnalysis forecast(Trial trial) {
    CompletableFuture<TrialAnalysis> mine = new CompletableFuture<>();
    Key key = key(trial);
    CompletableFuture<TrialAnalysis> first = first(key, mine);
    if (first == mine) {
      try {
        mine.complete(forecaster.apply(trial));
      } catch (RuntimeException | Error e) {
        drop(key, mine);
        mine.completeExceptionally(e);
      }
    }
    try {
      return first.join();
    } catch (CompletionException e) {
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    }
  }

  private synchronized CompletableFuture<TrialAnalysis> first(
      Key key, CompletableFuture<TrialAnalysis> mine) {
    CompletableFuture<TrialAnalysis> earlier = kept.putIfAbsent(key, mine);
    if (kept.size() > KEPT) {
      Iterator<Key> oldest = kept.keySet().iterator();
      oldest.next();
      oldest.remove();
    }
    return earlier == null ? mine : earlier;
  }

  private synchronized void drop(Key key, CompletableFuture<TrialAnalysis> mine) {
    kept.remove(key, mine);
  }
}
