package starchfilm.report;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Function;
import java.util.stream.Stream;
import starchfilm.casting.trial.Trial;
import starchfilm.change.TrialAnalysis;
import starchfilm.change.TrialAnalyst;
import starchfilm.files.findings.PlainLine;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.forecast.TrialKnowledge;

/**
 * The forecasts of many trials, computed side by side on all cores, in the order of the trials.
 *
 * @param done the forecasts
 * @param failures a sentence for each trial that could not be forecast
 */
public record TrialForecasts(List<TrialAnalysis> done, List<String> failures) {
  /** The forecasts alone. */
  public List<TrialForecast> forecasts() {
    return done.stream().map(TrialAnalysis::forecast).toList();
  }

  /**
   * Forecasts trials for a comparison: those that have a part of their own in full, of the earlier
   * ones the forecast alone.
   *
   * @param trials the trials
   * @param knowledge what is known before a trial is forecast
   * @return every forecast or failure
   */
  public static TrialForecasts of(List<Trial> trials, TrialKnowledge knowledge) {
    TrialAnalyst analyst = new TrialAnalyst(new TrialForecaster(knowledge));
    TrialForecasts last = new TrialForecasts(List.of(), List.of());
    int from = trials.size();
    while (from > 0 && last.done().size() < ComparisonPage.APART_UP_TO) {
      // Where some cannot be forecast, earlier ones take their place.
      int first = Math.max(0, from - ComparisonPage.APART_UP_TO + last.done().size());
      last = of(trials.subList(first, from), analyst::whole).then(last);
      from = first;
    }
    return of(trials.subList(0, from), analyst::outline).then(last);
  }

  private TrialForecasts then(TrialForecasts later) {
    return new TrialForecasts(
        Stream.of(done, later.done).flatMap(List::stream).toList(),
        Stream.of(failures, later.failures).flatMap(List::stream).toList());
  }

  /**
   * Forecasts trials.
   *
   * @param trials the trials
   * @param forecaster what forecasts one, such as {@link TrialAnalyst#whole}; called from several
   *     threads at once
   * @return every forecast or failure
   */
  public static TrialForecasts of(List<Trial> trials, Function<Trial, TrialAnalysis> forecaster) {
    // A task each: a parallel stream would hand out a quarter of them at a time, and the last idly.
    List<ForkJoinTask<TrialForecasts>> tasks =
        trials.stream().map(trial -> ForkJoinTask.adapt(() -> of(trial, forecaster))).toList();
    List<TrialForecasts> each =
        ForkJoinTask.invokeAll(tasks).stream().map(ForkJoinTask::join).toList();
    return new TrialForecasts(
        each.stream().flatMap(one -> one.done().stream()).toList(),
        each.stream().flatMap(one -> one.failures().stream()).toList());
  }

  private static TrialForecasts of(Trial trial, Function<Trial, TrialAnalysis> forecaster) {
    try {
      return new TrialForecasts(List.of(forecaster.apply(trial)), List.of());
    } catch (CancellationException stopped) {
      throw stopped;
    } catch (RuntimeException failure) {
      // Whatever it is, the other trials go through.
      return new TrialForecasts(List.of(), List.of(failure(trial, failure)));
    }
  }

  /** The sentence on a trial that could not be forecast. */
  public static String failure(Trial trial, RuntimeException failure) {
    return PlainLine.of(trial.file().toString()) + ": no forecast: " + why(failure);
  }

  /**
   * The reason why a forecast failed. A refused figure comes with a sentence for the reader; a
   * solver's words are of no use to one.
   *
   * @param failure what was thrown
   * @return a clause, with what to do
   */
  public static String why(RuntimeException failure) {
    return failure instanceof IllegalArgumentException && failure.getCause() == null
        ? String.valueOf(failure.getMessage())
        : "these amounts, or ranges as wide as these, cannot be computed ("
            + failure.getMessage()
            + "); narrow the ranges, or check the amounts";
  }
}
