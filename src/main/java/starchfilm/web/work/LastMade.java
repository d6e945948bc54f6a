package starchfilm.web.work;

import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Predicate;

/**
 * What was made last, by what it was made of, so that it need not be made again.
 *
 * <p>Safe to share between threads; what two ask for at once is made once.
 */
public final class LastMade<K, V> {
  private final Map<K, FutureTask<V>> made;

  /**
   * Nothing yet.
   *
   * @param most how many are kept; the one that was asked for longest ago goes first
   */
  public LastMade(int most) {
    this.made = LastFew.of(most);
  }

  /** Makes something, and may fail. */
  @FunctionalInterface
  public interface Making<V, E extends Exception> {
    /** What is made. */
    V make() throws E;
  }

  /** What is made of this, now unless it is kept. */
  public <E extends Exception> V of(K key, Making<V, E> making) throws E {
    return of(key, making, made -> true);
  }

  /**
   * The same, kept only where that is worth it; what failed is made again.
   *
   * @param isKept whether the next who asks gets it, too; who waits for it does in any case
   */
  public <E extends Exception> V of(K key, Making<V, E> making, Predicate<V> isKept) throws E {
    FutureTask<V> mine = new FutureTask<>(making::make);
    FutureTask<V> earlier = made.putIfAbsent(key, mine);
    FutureTask<V> first = earlier == null ? mine : earlier;
    if (earlier == null) {
      mine.run();
    }
    boolean kept = false;
    try {
      V result = LastMade.<V, E>result(first);
      kept = isKept.test(result);
      return result;
    } finally {
      if (!kept) {
        made.remove(key, first);
      }
    }
  }

  /** What comes of a task, which throws nothing else. */
  @SuppressWarnings("unchecked")
  static <V, E extends Exception> V result(FutureTask<V> task) throws E {
    try {
      return task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while another thread made it", e);
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof Error error) {
        throw error;
      }
      throw (E) failed.getCause();
    }
  }
}
