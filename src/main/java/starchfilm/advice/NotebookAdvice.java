package starchfilm.advice;

import java.util.List;
import java.util.Optional;
import starchfilm.trial.Trial;
import starchfilm.trial.TrialForecast;

/**
 * What to try next over a whole notebook.
 *
 * @param from the trial to go on from
 * @param verdict why, and what to do, in plain sentences
 * @param next the change to make there; empty where nothing is better than doing it again
 * @param taught what the faults of the notebook teach together, whole sentences; may be empty
 */
public record NotebookAdvice(
    TrialForecast from, String verdict, Optional<NextTrial> next, List<String> taught) {
  /** Copies the list. */
  public NotebookAdvice {
    taught = List.copyOf(taught);
  }

  static NotebookAdvice of(TrialForecast best, Optional<NextTrial> next, List<String> taught) {
    return new NotebookAdvice(best, verdict(best.trial(), next), next, taught);
  }

  private static String verdict(Trial best, Optional<NextTrial> next) {
    String why =
        best.rating().isPresent()
            ? "It is the best rated, " + best.rating().getAsInt() + " of 5"
            : "No trial is rated; this one has the fewest faults";
    if (!best.faults().isEmpty()) {
      return next.isPresent()
          ? why + ", and has a fault to mend."
          : why + ", but the notebook does not tell what to change about its fault.";
    }
    return next.isPresent()
        ? why + " and without a fault: keep it. To have it sooner, change one thing:"
        : why + " and without a fault: keep it, and pour it again to see how far plates differ.";
  }
}
