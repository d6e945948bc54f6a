package starchfilm.web;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import starchfilm.trial.Trial;

/** Where long work is done: one piece after the other, the last ones remembered. */
final class Workbench implements AutoCloseable {
  private static final int REMEMBERED = 64;

  private final ForecastShelf shelf;
  private final Function<Trial, Object> grounds;
  private final Map<Key, Work> works = new LinkedHashMap<>();
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread worker = new Thread(work, "forecasts");
            worker.setDaemon(true);
            return worker;
          });

  /** Trials, and what their forecasts rest on beside. */
  private record Key(List<Trial> trials, List<Object> grounds) {}

  /**
   * A bench without work.
   *
   * @param shelf where forecasts are made and kept
   * @param grounds what the forecast of a trial rests on beside the trial, as of the shelf
   */
  Workbench(ForecastShelf shelf, Function<Trial, Object> grounds) {
    this.shelf = shelf;
    this.grounds = grounds;
  }

  private Key key(List<Trial> trials) {
    return new Key(List.copyOf(trials), trials.stream().map(grounds).toList());
  }

  /**
   * The work on some trials: under way, ended, or started now.
   *
   * @param trials the trials
   * @return the work
   */
  synchronized Work on(List<Trial> trials) {
    Key key = key(trials);
    Work known = works.get(key);
    if (known != null && !known.isCancelled()) {
      return known;
    }
    Work work = new Work(trials);
    works.put(key, work);
    if (works.size() > REMEMBERED) {
      Iterator<Work> oldest = works.values().iterator();
      oldest.next().cancel();
      oldest.remove();
    }
    thread.execute(() -> work.run(shelf::forecast));
    return work;
  }

  /**
   * Cancels the work on some trials, if there is any.
   *
   * @param trials the trials
   */
  synchronized void cancel(List<Trial> trials) {
    Work work = works.remove(key(trials));
    if (work != null) {
      work.cancel();
    }
  }

  @Override
  public synchronized void close() {
    works.values().forEach(Work::cancel);
    thread.shutdownNow();
  }
}
