package starchfilm.web.work;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/**
 * Something that takes its time, while the reader sees how far it is and may stop it.
 *
 * @param <T> what comes of it
 */
public final class Work<T> {
  private final int total;
  private final AtomicInteger done = new AtomicInteger();
  private final FutureTask<T> task;

  /**
   * Work to be done.
   *
   * @param task does it; tells the work of each {@link #step}
   */
  Work(int total, Function<Work<T>, T> task) {
    this.total = total;
    this.task = new FutureTask<>(() -> task.apply(this));
  }

  /** Does the work; called once, on a thread that may take its time. */
  void run() {
    task.run();
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
    if (task.isCancelled()) {
      throw new CancellationException("the reader stopped it");
    }
  }

  /** Asks the work to end before its next step. */
  void cancel() {
    task.cancel(false);
  }

  /**
   * Whether the reader stopped it.
   *
   * @return true where that is so
   */
  public boolean isCancelled() {
    return task.isCancelled();
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
      task.get(milliseconds, TimeUnit.MILLISECONDS);
      return true;
    } catch (TimeoutException notYet) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    } catch (ExecutionException | CancellationException ended) {
      return true;
    }
  }

  /**
   * What came of it, if it ends so soon and was not stopped.
   *
   * @param milliseconds how long to wait at most
   */
  public Optional<T> within(long milliseconds) {
    return endsWithin(milliseconds) && !isCancelled() ? Optional.of(result()) : Optional.empty();
  }

  /**
   * What came of it.
   *
   * @return the result; only once it has ended and was not cancelled
   */
  public T result() {
    if (!task.isDone()) {
      throw new IllegalStateException("the work has not ended");
    }
    return LastMade.<T, RuntimeException>result(task);
  }
}
