package starchfilm.casting.trial;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something that went wrong with a plate, as its maker saw it.
 *
 * @param kind what
 * @param where where on the plate
 * @param seenAtS when, since the pour (s), if noted
 * @param remark in the maker's words, if noted
 */
public record ObservedFault(
    FaultKind kind, FaultPlace where, OptionalDouble seenAtS, Optional<String> remark) {
  /** What can go wrong. */
  public enum FaultKind {
    /** Cracked on the plate. */
    CRACKED,
    /** Broke apart when peeled. */
    BROKE_APART,
    /** Curled up. */
    CURLED,
    /** Shrank in its plane. */
    SHRANK,
    /** Sticky for good. */
    STICKY,
    /** Brittle when dry. */
    BRITTLE,
    /** Cloudy. */
    CLOUDY,
    /** Still wet when it should be dry. */
    STILL_WET,
    /** Bubbles in the film. */
    BUBBLES,
    /** Lumps in the film. */
    LUMPS,
    /** Scorched in the pot. */
    SCORCHED,
    /** Mould. */
    MOULD,
    /** Stuck to the plate. */
    STUCK,
    /** Uneven thickness. */
    UNEVEN
  }

  /** Where on a plate. */
  public enum FaultPlace {
    /** At the edge. */
    EDGE,
    /** In the middle. */
    MIDDLE,
    /** All over. */
    ALL
  }
}
