package starchfilm.web.work;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.report.Comparison;
import starchfilm.report.TrialForecasts;

/**
 * Where long work is done and the last of it remembered. Single trials have a line of their own, so
 * that a plate does not wait behind a comparison of two hundred.
 */
public final class Workbench implements AutoCloseable {
  private final ForecastShelf shelf;
  private final ForecastShelf glances;
  private final Function<Trial, Object> grounds;
  private final CourseShelf courses = new CourseShelf();
  private final WorkLine<Key<Trial>, TrialForecasts> trials = new WorkLine<>("forecast");
  private final WorkLine<Key<Trial>, TrialForecasts> looks = new WorkLine<>("look");
  private final WorkLine<Key<Notebook>, Comparison> comparisons = new WorkLine<>("compare");
  private final WorkLine<String, String> lessons = new WorkLine<>("learn");

  /** What is worked on, and what its forecasts rest on beside. */
  private record Key<S>(S subject, List<Object> grounds) {}

  /**
   * A bench without work.
   *
   * @param shelf where forecasts are made and kept
   * @param glances the same without what changes would do, for pages of many plates
   * @param grounds what the forecast of a trial rests on beside the trial, as of the shelf
   */
  public Workbench(ForecastShelf shelf, ForecastShelf glances, Function<Trial, Object> grounds) {
    this.shelf = shelf;
    this.glances = glances;
    this.grounds = grounds;
  }

  /**
   * The work on one trial: under way, ended, or started now.
   *
   * @param trial the trial
   * @return the work
   */
  public Work<TrialForecasts> on(Trial trial) {
    List<Trial> one = List.of(trial);
    return trials.on(key(trial, one), () -> forecasts(shelf, one, forecasts -> forecasts));
  }

  /**
   * The work on one trial of many: the same forecast without what changes would do to it.
   *
   * @param trial the trial
   * @return the work
   */
  public Work<TrialForecasts> glance(Trial trial) {
    List<Trial> one = List.of(trial);
    return looks.on(key(trial, one), () -> forecasts(glances, one, forecasts -> forecasts));
  }

  /** What scales under plates show. */
  public CourseShelf courses() {
    return courses;
  }

  /**
   * The work on a comparison: under way, ended, or started now.
   *
   * @param notebook what is compared
   * @param finish what is made of its forecasts; counts only where the work is started now
   * @return the work
   */
  public Work<Comparison> on(Notebook notebook, Function<TrialForecasts, Comparison> finish) {
    return comparisons.on(
        key(notebook, notebook.trials()), () -> forecasts(shelf, notebook.trials(), finish));
  }

  /**
   * Stops the work on a comparison, if there is any.
   *
   * @param notebook what is compared
   */
  public void cancel(Notebook notebook) {
    comparisons.cancel(key(notebook, notebook.trials()));
  }

  /**
   * Starts to learn, unless that is under way.
   *
   * @param trials from how many trials
   * @param lesson learns, and gives the address that says so; it is handed what to call before each
   *     step and before it writes
   */
  public synchronized void learn(int trials, Function<Runnable, String> lesson) {
    if (learning().stream().anyMatch(work -> work.endsWithin(0))) {
      stopLearning();
    }
    lessons.on("", () -> new Work<>(trials, work -> lesson.apply(work::requireWanted)));
  }

  /**
   * The learning that is under way, or the last one.
   *
   * @return the work
   */
  public Optional<Work<String>> learning() {
    return lessons.known("");
  }

  /** Stops the learning. */
  public void stopLearning() {
    lessons.cancel("");
  }

  private static <T> Work<T> forecasts(
      ForecastShelf from, List<Trial> of, Function<TrialForecasts, T> finish) {
    return new Work<>(
        of.size(),
        work -> finish.apply(TrialForecasts.of(of, trial -> work.step(from::forecast, trial))));
  }

  private <S> Key<S> key(S subject, List<Trial> trials) {
    return new Key<>(subject, trials.stream().map(grounds).toList());
  }

  @Override
  public void close() {
    trials.close();
    looks.close();
    comparisons.close();
    lessons.close();
  }
}
