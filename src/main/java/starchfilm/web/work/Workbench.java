package starchfilm.web.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.change.TrialAnalyst;
import starchfilm.files.notebook.Notebook;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.learning.Workshop;
import starchfilm.learning.Workshops;
import starchfilm.report.Comparison;
import starchfilm.report.TrialForecasts;
import starchfilm.today.ScaleCourse;

/**
 * Where long work is done and the last of it remembered. Single trials have a line of their own, so
 * that a plate does not wait behind a comparison of two hundred.
 */
public final class Workbench implements AutoCloseable {
  private static final int FORECASTS_KEPT = 100;
  private static final int COURSES_KEPT = 300;

  private final Function<Trial, TrialAnalysis> forecaster;
  private final Function<Trial, TrialAnalysis> glancer;
  private final Function<Trial, TrialAnalysis> sketcher;
  private final Workshops workshops;
  private final LastMade<Same, ScaleCourse> courses = new LastMade<>(COURSES_KEPT);
  private final WorkLine<Key<Trial>, TrialForecasts> trials = new WorkLine<>("forecast");
  private final WorkLine<Key<Trial>, TrialForecasts> looks = new WorkLine<>("look");
  private final WorkLine<Key<Notebook>, Comparison> comparisons = new WorkLine<>("compare");
  private final WorkLine<String, String> lessons = new WorkLine<>("learn");

  /** What is worked on, and what its forecasts rest on beside. */
  private record Key<S>(S subject, List<Workshop> grounds) {}

  /** The very forecast: to compare two in full would take longer than to make one. */
  private record Same(TrialForecast forecast) {
    @Override
    @SuppressWarnings("ReferenceEquality") // the very forecast, as the comment above says
    public boolean equals(Object other) {
      return other instanceof Same that && that.forecast == forecast;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(forecast);
    }
  }

  /**
   * A bench without work.
   *
   * @param workshops what the forecast of a trial rests on beside the trial; where that is equal,
   *     so is the forecast
   */
  public Workbench(Workshops workshops) {
    this.workshops = workshops;
    TrialAnalyst analyst = new TrialAnalyst(new TrialForecaster(workshops));
    this.forecaster = kept(analyst::whole);
    this.glancer = kept(analyst::outline);
    this.sketcher = kept(analyst::outline);
  }

  /** A trial that changed in any way is another trial, and what was learnt makes other grounds. */
  private Function<Trial, TrialAnalysis> kept(Function<Trial, TrialAnalysis> making) {
    LastMade<Key<Trial>, TrialAnalysis> made = new LastMade<>(FORECASTS_KEPT);
    return trial -> made.of(key(trial, List.of(trial)), () -> making.apply(trial));
  }

  /**
   * What comes of these trials within a time, in full; those that take longer are not there yet.
   *
   * @param trials few trials
   * @param milliseconds how long to wait at most for all of them
   */
  public Map<Trial, TrialForecasts> wholes(List<Trial> trials, long milliseconds) {
    return within(milliseconds, trials, this.trials, forecaster);
  }

  /** The same without what changes would do to them, for single plates of many. */
  public Map<Trial, TrialForecasts> glances(List<Trial> trials, long milliseconds) {
    return within(milliseconds, trials, looks, glancer);
  }

  private Map<Trial, TrialForecasts> within(
      long milliseconds,
      List<Trial> trials,
      WorkLine<Key<Trial>, TrialForecasts> line,
      Function<Trial, TrialAnalysis> from) {
    Map<Trial, Work<TrialForecasts>> works = new LinkedHashMap<>();
    for (Trial trial : trials) {
      List<Trial> one = List.of(trial);
      works.put(trial, line.on(key(trial, one), () -> forecasts(from, one, made -> made)));
    }
    long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(milliseconds);
    Map<Trial, TrialForecasts> made = new LinkedHashMap<>();
    works.forEach(
        (trial, work) -> {
          long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
          work.within(Math.max(0, left)).ifPresent(one -> made.put(trial, one));
        });
    return made;
  }

  /** A recipe that is moved about as it is now, forecast at once. */
  public TrialAnalysis sketch(Trial trial) {
    return sketcher.apply(trial);
  }

  /** What a scale under a plate shows, of the plate's forecast. */
  public ScaleCourse course(TrialForecast forecast) {
    return courses.of(new Same(forecast), () -> ScaleCourse.of(forecast));
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
        key(notebook, notebook.trials()), () -> forecasts(forecaster, notebook.trials(), finish));
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
      Function<Trial, TrialAnalysis> from, List<Trial> of, Function<TrialForecasts, T> finish) {
    return new Work<>(
        of.size(), work -> finish.apply(TrialForecasts.of(of, trial -> work.step(from, trial))));
  }

  private <S> Key<S> key(S subject, List<Trial> trials) {
    return new Key<>(subject, trials.stream().map(workshops::of).toList());
  }

  @Override
  public void close() {
    List.of(trials, looks, comparisons, lessons).forEach(WorkLine::close);
  }
}
