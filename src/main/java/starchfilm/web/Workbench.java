package starchfilm.web;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import starchfilm.report.Comparison;
import starchfilm.report.TrialForecasts;
import starchfilm.trial.Notebook;
import starchfilm.trial.Trial;

/**
 * Where long work is done and the last of it remembered. Single trials have a line of their own, so
 * that a plate does not wait behind a comparison of two hundred.
 */
final class Workbench implements AutoCloseable {
  private final Function<Trial, Object> grounds;
  private final Line<Key<Trial>, TrialForecasts> trials;
  private final Line<Key<Notebook>, Comparison> comparisons;

  /** What is worked on, and what its forecasts rest on beside. */
  private record Key<S>(S subject, List<Object> grounds) {}

  /**
   * A bench without work.
   *
   * @param shelf where forecasts are made and kept
   * @param grounds what the forecast of a trial rests on beside the trial, as of the shelf
   */
  Workbench(ForecastShelf shelf, Function<Trial, Object> grounds) {
    this.grounds = grounds;
    this.trials = new Line<>("forecast", shelf);
    this.comparisons = new Line<>("compare", shelf);
  }

  /**
   * The work on one trial: under way, ended, or started now.
   *
   * @param trial the trial
   * @return the work
   */
  Work<TrialForecasts> on(Trial trial) {
    List<Trial> one = List.of(trial);
    return trials.on(key(trial, one), one, forecasts -> forecasts);
  }

  /**
   * The work on a comparison: under way, ended, or started now.
   *
   * @param notebook what is compared
   * @param finish what is made of its forecasts; counts only where the work is started now
   * @return the work
   */
  Work<Comparison> on(Notebook notebook, Function<TrialForecasts, Comparison> finish) {
    return comparisons.on(key(notebook, notebook.trials()), notebook.trials(), finish);
  }

  /**
   * Cancels the work on a comparison, if there is any.
   *
   * @param notebook what is compared
   */
  void cancel(Notebook notebook) {
    comparisons.cancel(key(notebook, notebook.trials()));
  }

  private <S> Key<S> key(S subject, List<Trial> trials) {
    return new Key<>(subject, trials.stream().map(grounds).toList());
  }

  @Override
  public void close() {
    trials.close();
    comparisons.close();
  }

  /** One piece of work after the other. */
  private static final class Line<K, T> {
    private static final int REMEMBERED = 64;

    private final ForecastShelf shelf;
    private final Map<K, Work<T>> works = new LinkedHashMap<>();
    private final ExecutorService thread;

    Line(String name, ForecastShelf shelf) {
      this.shelf = shelf;
      this.thread =
          Executors.newSingleThreadExecutor(
              work -> {
                Thread worker = new Thread(work, name);
                worker.setDaemon(true);
                return worker;
              });
    }

    synchronized Work<T> on(K key, List<Trial> trials, Function<TrialForecasts, T> finish) {
      Work<T> known = works.get(key);
      if (known != null && !known.isCancelled()) {
        return known;
      }
      Work<T> work = new Work<>(trials, finish);
      works.put(key, work);
      if (works.size() > REMEMBERED) {
        Iterator<Work<T>> oldest = works.values().iterator();
        oldest.next().cancel();
        oldest.remove();
      }
      thread.execute(() -> work.run(shelf::forecast));
      return work;
    }

    synchronized void cancel(K key) {
      Work<T> work = works.remove(key);
      if (work != null) {
        work.cancel();
      }
    }

    synchronized void close() {
      works.values().forEach(Work::cancel);
      thread.shutdownNow();
    }
  }
}
