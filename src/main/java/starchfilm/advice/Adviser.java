package starchfilm.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import starchfilm.advice.NextTrialSearch.Suspected;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialKnowledge;
import starchfilm.numerics.units.Named;

/**
 * Tells what to try next after a trial or after all of them, and what the changes between two
 * trials did.
 *
 * <p>Immutable; safe to share between threads. The same notebook gives the same advice on every
 * machine.
 *
 * @param knowledge what is known of the drying factors
 */
public record Adviser(TrialKnowledge knowledge) {
  private static final int MOST_SUSPECTS = 5;
  private static final RuleBook BOOK = RuleBook.packed();

  private NextTrials nextTrials() {
    return new NextTrials(BOOK, knowledge);
  }

  /**
   * Advice after one trial.
   *
   * @param forecast the trial with its forecast
   * @param notebook all trials, whose rooms may be advised
   * @return what may be behind its faults, and what to try next
   */
  public TrialAdvice after(TrialForecast forecast, List<Trial> notebook) {
    Trial trial = forecast.trial();
    if (!trial.hasHistory()) {
      return TrialAdvice.nothing("Nothing is noted yet, so there is nothing to go on.");
    }
    if (trial.seen().faults().isEmpty()) {
      return TrialAdvice.nothing("No fault is noted, so there is no reason to change it.");
    }
    List<Diagnosis> diagnoses = new ArrayList<>();
    List<Suspected> suspected = new ArrayList<>();
    ForecastCache outlook = new ForecastCache(trial, knowledge);
    for (ObservedFault fault : trial.seen().faults()) {
      FaultContext scene = FaultContext.of(trial, fault, forecast.drying(), outlook);
      Diagnosis diagnosis = new Diagnosing(BOOK).of(scene);
      diagnoses.add(diagnosis);
      if (diagnosis.tells()) {
        suspected.add(new Suspected(scene, diagnosis.suspicions()));
      }
    }
    if (suspected.isEmpty()) {
      return new TrialAdvice(usualSuspects(trial), diagnoses, Optional.empty());
    }
    Optional<NextTrial> next = nextTrials().against(suspected, outlook, notebook);
    return new TrialAdvice(verdict(next), diagnoses, next);
  }

  /** What a beginner would rule out where nothing noted explains a fault. */
  private String usualSuspects(Trial trial) {
    String suspects =
        trial.seen().faults().stream()
            .flatMap(fault -> BOOK.rulesFor(fault.kind(), fault.where()).stream())
            .map(rule -> Named.of(rule.cause()))
            .distinct()
            .limit(MOST_SUSPECTS)
            .collect(Collectors.joining("; "));
    return "Your notes don't explain it. The usual suspects, to rule out one at a time: %s."
        .formatted(suspects);
  }

  private static String verdict(Optional<NextTrial> next) {
    if (next.isEmpty()) {
      return "Your trials don't show what to do about it: no single change that can"
          + " be recomputed helps enough.";
    }
    return next.get().changes().size() == 1
        ? "Change one thing, so that you can see what it did."
        : "Change these two things and nothing else, so that you can see what" + " they did.";
  }

  /**
   * Advice after all trials: from the best of them on.
   *
   * @param forecasts the trials with their forecasts, in the order of the notebook
   * @return where to start from and what to change there; empty where no plate has a history
   */
  public Optional<NotebookAdvice> over(List<TrialForecast> forecasts) {
    List<Trial> notebook = forecasts.stream().map(TrialForecast::trial).toList();
    return best(forecasts).stream()
        .mapToObj(forecasts::get)
        .map(
            best ->
                NotebookAdvice.of(
                    best,
                    notebook,
                    best.trial().seen().faults().isEmpty()
                        ? nextTrials().sooner(best, notebook)
                        : after(best, notebook).next(),
                    Taught.by(forecasts)))
        .findFirst();
  }

  /**
   * The trial to go on from: the best rated; of equals the one with fewest faults, then the last.
   *
   * @param forecasts the trials with their forecasts, in the order of the notebook
   * @return its place among them, from 0; empty where no plate has a history
   */
  public static OptionalInt best(List<TrialForecast> forecasts) {
    Comparator<Observations> order =
        Comparator.comparingInt((Observations seen) -> seen.rating().orElse(0))
            .thenComparingInt(seen -> -seen.faults().size());
    return IntStream.range(0, forecasts.size())
        .filter(each -> forecasts.get(each).trial().hasHistory())
        .reduce(
            (one, later) ->
                order.compare(forecasts.get(later).seen(), forecasts.get(one).seen()) >= 0
                    ? later
                    : one);
  }

  /**
   * Lists what changed between two trials, what the model says each change does on its own, and
   * whether what was seen agrees.
   *
   * @param before the earlier or other trial
   * @param after the trial that is asked about
   * @return the differences and the outcome
   */
  public Contrast contrast(TrialForecast before, TrialForecast after) {
    return new Contrasting(BOOK, knowledge).of(before, after);
  }
}
