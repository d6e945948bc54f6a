package starchfilm.advice;

import java.util.List;
import starchfilm.casting.trial.ObservedFault;

/**
 * A fault and what may be behind it.
 *
 * @param fault the fault as noted
 * @param model what the model says of such trouble on this plate, a sentence
 * @param suspicions the causes that explain it, best first; may be empty
 * @param notNoted what would have to be noted to hold further causes against it, each a noun phrase
 */
public record Diagnosis(
    ObservedFault fault, String model, List<Suspicion> suspicions, List<String> notNoted) {
  /**
   * Tells whether the notebook shows what may be behind it.
   *
   * @return true where at least one cause explains part of it
   */
  public boolean tells() {
    return !suspicions.isEmpty();
  }
}
