package starchfilm.web.work;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Supplier;

/**
 * Work of one kind, one piece after the other, the last ones remembered.
 *
 * <p>Safe to share between threads.
 */
final class WorkLine<K, T> {
  private static final int REMEMBERED = 64;

  private final Map<K, Work<T>> works = new LinkedHashMap<>();
  private final ExecutorService thread;

  WorkLine(String name) {
    this.thread =
        Executors.newSingleThreadExecutor(
            work -> {
              Thread worker = new Thread(work, name);
              worker.setDaemon(true);
              return worker;
            });
  }

  /**
   * The work on something: under way, ended, or started now.
   *
   * @param work makes the work where there is none
   */
  synchronized Work<T> on(K key, Supplier<Work<T>> work) {
    Work<T> known = works.get(key);
    if (known != null && !known.isCancelled()) {
      return known;
    }
    Work<T> started = work.get();
    works.put(key, started);
    if (works.size() > REMEMBERED) {
      Iterator<Work<T>> oldest = works.values().iterator();
      oldest.next().cancel();
      oldest.remove();
    }
    thread.execute(started::run);
    return started;
  }

  /** The work on something, if it was started and not stopped. */
  synchronized Optional<Work<T>> known(K key) {
    return Optional.ofNullable(works.get(key));
  }

  /** Stops the work on something, if there is any, and forgets it. */
  synchronized void cancel(K key) {
    Work<T> work = works.remove(key);
    if (work != null) {
      work.cancel();
    }
  }

  /** Stops everything. */
  synchronized void close() {
    works.values().forEach(Work::cancel);
    thread.shutdownNow();
  }
}
