package starchfilm.advice;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.numerics.evidence.Source;

/**
 * One row of the table of causes.
 *
 * @param fault what was seen
 * @param where the places on the plate the row holds for; at least one
 * @param heldAgainst what the cause is held against
 * @param cause what may be behind it
 * @param limits the cause's own figures and what is harmless of them; at least one
 * @param source why this cause is looked at
 */
public record Rule(
    FaultKind fault,
    Set<FaultPlace> where,
    Measure heldAgainst,
    Cause cause,
    List<CauseLimit> limits,
    Source source) {
  /** The cause's own figure; of several the worst. */
  CauseReading read(FaultContext scene) {
    return limits.stream()
        .map(limit -> limit.read(scene))
        .reduce(CauseReading::orWorse)
        .orElseThrow();
  }

  boolean holdsFor(FaultKind seen, FaultPlace at) {
    return fault == seen && where.contains(at);
  }

  /** Whether the model can say how much of the trouble goes when the cause is put right. */
  boolean isRerun() {
    return heldAgainst.isOfModel() && cause.canBePutRight();
  }

  /**
   * How much of the trouble this row speaks of a scene holds: 0 none, 1 clearly; empty where the
   * notebook does not tell.
   */
  OptionalDouble trouble(FaultContext scene) {
    if (heldAgainst.needsTime() && scene.seenAtS().isEmpty()) {
      return OptionalDouble.empty();
    }
    if (isRerun()) {
      return OptionalDouble.of(heldAgainst.trouble(scene));
    }
    CauseReading reading = read(scene);
    return reading.told()
        ? OptionalDouble.of(Math.max(0, reading.excess()))
        : OptionalDouble.empty();
  }
}
