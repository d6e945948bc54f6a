package starchfilm.advice;

/**
 * Something that came out differently, and whether the model agrees.
 *
 * @param seen what was seen, a sentence
 * @param agreement whether the model, given both trials, says so too
 * @param model what the model says, a sentence; with the change that does most of it
 */
public record OutcomeDifference(String seen, Agreement agreement, String model) {
  /** The agreement of model and observation. */
  public enum Agreement {
    /** The model says so too. */
    AGREES,
    /** The model says otherwise. */
    DISAGREES,
    /** The model has no figure for it. */
    CANNOT_TELL
  }
}
