package starchfilm.web;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import starchfilm.report.TrialForecasts;
import starchfilm.trial.Trial;
import starchfilm.trial.TrialForecast;

/**
 * The forecasts of some trials and what is made of them, while the reader sees how far they are.
 *
 * @param <T> what is made of the forecasts
 */
final class Work<T> {
  private final List<Trial> trials;
  private final Function<TrialForecasts, T> finish;
  private final AtomicInteger done = new AtomicInteger();
  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile boolean cancelled;
  private volatile @Nullable T result;
  private volatile @Nullable RuntimeException failure;

  /**
   * Work to be done.
   *
   * @param trials the trials
   * @param finish what is made of their forecasts
   */
  Work(List<Trial> trials, Function<TrialForecasts, T> finish) {
    this.trials = List.copyOf(trials);
    this.finish = finish;
  }

  /**
   * Does the work; called once, on a thread that may take its time.
   *
   * @param forecaster what forecasts one trial
   */
  void run(Function<Trial, TrialForecast> forecaster) {
    try {
      result = finish.apply(TrialForecasts.of(trials, trial -> counted(trial, forecaster)));
    } catch (CancellationException e) {
      cancelled = true;
    } catch (RuntimeException e) {
      failure = e;
    } finally {
      ended.countDown();
    }
  }

  private TrialForecast counted(Trial trial, Function<Trial, TrialForecast> forecaster) {
    if (cancelled) {
      throw new CancellationException("the reader cancelled");
    }
    try {
      return forecaster.apply(trial);
    } finally {
      done.incrementAndGet();
    }
  }

  /** Asks the work to end before its next trial. */
  void cancel() {
    cancelled = true;
  }

  boolean isCancelled() {
    return cancelled;
  }

  int total() {
    return trials.size();
  }

  int done() {
    return done.get();
  }

  /**
   * Waits a little for the end.
   *
   * @param milliseconds how long at most
   * @return true where the work has ended
   */
  boolean endsWithin(long milliseconds) {
    try {
      return ended.await(milliseconds, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /**
   * What came of it.
   *
   * @return what was made of the forecasts; only once it has ended and was not cancelled
   */
  T result() {
    RuntimeException failed = failure;
    if (failed != null) {
      throw failed;
    }
    T there = result;
    if (there == null) {
      throw new IllegalStateException("the work has not ended");
    }
    return there;
  }
}
