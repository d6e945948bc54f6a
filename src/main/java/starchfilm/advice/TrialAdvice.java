package starchfilm.advice;

import java.util.List;
import java.util.Optional;

/**
 * The advice of the notebook after one trial.
 *
 * @param verdict in one sentence
 * @param diagnoses every fault with what may be behind it, in the order noted
 * @param next what to try next; empty where the trials give no reason to change anything, or does
 *     not tell what
 */
public record TrialAdvice(String verdict, List<Diagnosis> diagnoses, Optional<NextTrial> next) {
  static TrialAdvice nothing(String verdict) {
    return new TrialAdvice(verdict, List.of(), Optional.empty());
  }
}
