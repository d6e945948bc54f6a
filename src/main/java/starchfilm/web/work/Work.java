package starchfilm.web.work;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Something that takes its time, while the reader sees how far it is and may stop it.
 *
 * @param <T> what comes of it
 */
public final class Work<T> {
  private final int total;
  private final Function<Work<T>, T> task;
  private final AtomicInteger done = new AtomicInteger();
  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile boolean cancelled;
  private volatile @Nullable T result;
  private volatile @Nullable RuntimeException failure;

  /**
   * Work to be done.
   *
   * @param task does it; tells the work of each {@link #step}
   */
  Work(int total, Function<Work<T>, T> task) {
    this.total = total;
    this.task = task;
  }

  /** Does the work; called once, on a thread that may take its time. */
  void run() {
    try {
      requireWanted();
      T made = task.apply(this);
      requireWanted();
      result = made;
    } catch (CancellationException e) {
      cancelled = true;
    } catch (RuntimeException e) {
      failure = e;
    } finally {
      ended.countDown();
    }
  }

  /**
   * Does one step and counts it.
   *
   * @throws CancellationException where the reader stopped the work
   */
  <S, R> R step(Function<S, R> step, S subject) {
    requireWanted();
    try {
      return step.apply(subject);
    } finally {
      done.incrementAndGet();
    }
  }

  /**
   * Ends here where the reader stopped the work.
   *
   * @throws CancellationException where that is so
   */
  void requireWanted() {
    if (cancelled) {
      throw new CancellationException("the reader stopped it");
    }
  }

  /** Asks the work to end before its next step. */
  void cancel() {
    cancelled = true;
  }

  /**
   * Whether the reader stopped it.
   *
   * @return true where that is so
   */
  public boolean isCancelled() {
    return cancelled;
  }

  /**
   * How much there is to do.
   *
   * @return its steps
   */
  public int total() {
    return total;
  }

  /**
   * How far it is.
   *
   * @return the steps done
   */
  public int done() {
    return done.get();
  }

  /**
   * Waits a little for the end.
   *
   * @param milliseconds how long at most
   * @return true where the work has ended
   */
  public boolean endsWithin(long milliseconds) {
    try {
      return ended.await(milliseconds, TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /**
   * What came of it, if it ends so soon and was not stopped.
   *
   * @param milliseconds how long to wait at most
   */
  public Optional<T> within(long milliseconds) {
    return endsWithin(milliseconds) && !cancelled ? Optional.of(result()) : Optional.empty();
  }

  /**
   * What came of it.
   *
   * @return the result; only once it has ended and was not cancelled
   */
  public T result() {
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
