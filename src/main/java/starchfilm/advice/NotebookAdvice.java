package starchfilm.advice;

import java.util.List;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.forecast.TrialForecast;

/**
 * The advice on a whole notebook: what to try next.
 *
 * @param from the trial to go on from
 * @param verdict why, and what to do, in plain sentences
 * @param next the change to make there; empty where nothing is better than doing it again
 * @param taught what the faults of the notebook teach together, whole sentences; may be empty
 */
public record NotebookAdvice(
    TrialForecast from, String verdict, Optional<NextTrial> next, List<String> taught) {
  static NotebookAdvice of(
      TrialForecast best, List<Trial> notebook, Optional<NextTrial> next, List<String> taught) {
    return new NotebookAdvice(best, verdict(best.trial(), notebook, next), next, taught);
  }

  private static String verdict(Trial best, List<Trial> notebook, Optional<NextTrial> next) {
    boolean rated = best.seen().rating().isPresent();
    boolean alone = notebook.stream().filter(Trial::hasHistory).count() == 1;
    boolean ratedAlone =
        notebook.stream().filter(trial -> trial.seen().rating().isPresent()).count() == 1;
    if (!best.seen().faults().isEmpty()) {
      String why =
          rated
              ? (ratedAlone ? "Only this one is rated, " : "None is rated higher than this one, ")
                  + best.seen().rating().getAsInt()
                  + " of 5, and it has"
              : alone
                  ? "It is the only one poured, and has"
                  : "No trial is rated; none has fewer faults than this one, which still has";
      return next.isPresent()
          ? why + " a fault to fix."
          : why + " a fault, and your trials don't show what to change about it.";
    }
    String why =
        rated
            ? (ratedAlone ? "Only this one is rated, " : "It is the best rated, ")
                + best.seen().rating().getAsInt()
                + " of 5, and has no fault"
            : "No trial is rated; this one has no fault";
    return next.isPresent()
        ? why + ": keep it. To have it sooner, change one thing:"
        : why + ": keep it, and pour it again to see how far plates differ.";
  }
}
