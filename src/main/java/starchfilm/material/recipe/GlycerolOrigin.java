package starchfilm.material.recipe;

import java.util.Optional;

/**
 * Where a jar of glycerol comes from, which decides how carefully it is handled: glycerol recovered
 * from oil may still hold methanol, lye and soap.
 */
public enum GlycerolOrigin {
  /** Bought, with a label. */
  BOUGHT,
  /** Recovered from a batch of oil. */
  RECOVERED,
  /** Nobody said, or nobody knows. */
  UNKNOWN;

  /**
   * The origin of a jar: what was stated, else recovered where its salt was stated, because bought
   * glycerol gives no reason to state any, else unknown.
   *
   * @param stated what was said, if anything
   * @param saltStated whether a salt content was given
   * @return the origin to handle it by
   */
  public static GlycerolOrigin of(Optional<GlycerolOrigin> stated, boolean saltStated) {
    return stated.orElse(saltStated ? RECOVERED : UNKNOWN);
  }

  /**
   * Whether it may hold what a recovery leaves behind.
   *
   * @return false only for bought glycerol
   */
  public boolean mayHoldMethanol() {
    return this != BOUGHT;
  }
}
