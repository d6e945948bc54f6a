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
   * The origin of a jar: what was stated; where that is unknown or nothing, recovered if salt was
   * stated, because glycerol bought with a label holds none.
   *
   * @param stated what was said, if anything
   * @param saltStated whether a salt content above zero was given
   * @return the origin to handle it by
   */
  public static GlycerolOrigin of(Optional<GlycerolOrigin> stated, boolean saltStated) {
    GlycerolOrigin said = stated.orElse(UNKNOWN);
    return said == UNKNOWN && saltStated ? RECOVERED : said;
  }

  /**
   * Tells whether it may hold what a recovery leaves behind.
   *
   * @return false only for bought glycerol
   */
  public boolean mayHoldMethanol() {
    return this != BOUGHT;
  }
}
