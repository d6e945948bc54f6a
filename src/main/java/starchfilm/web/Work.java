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

/** The forecasts of some trials, being made while the reader sees how far they are. */
final class Work {
  private final List<Trial> trials;
  private final AtomicInteger done = new AtomicInteger();
  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile boolean cancelled;
  private volatile @Nullable TrialForecasts result;
  private volatile @Nullable RuntimeException failure;

  Work(List<Trial> trials) {
    this.trials = List.copyOf(trials);
  }

  /**
   * Does the work; called once, on a thread that may take its time.
   *
   * @param forecaster what forecasts one trial
   */
  void run(Function<Trial, TrialForecast> forecaster) {
    try {
      result = TrialForecasts.of(trials, trial -> counted(trial, forecaster));
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

  List<Trial> trials() {
    return trials;
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
   * @return the forecasts; only once it has ended and was not cancelled
   */
  TrialForecasts result() {
    RuntimeException failed = failure;
    if (failed != null) {
      throw failed;
    }
    TrialForecasts there = result;
    if (there == null) {
      throw new IllegalStateException("the work has not ended");
    }
    return there;
  }
}
