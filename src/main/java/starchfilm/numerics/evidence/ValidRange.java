package starchfilm.numerics.evidence;

/**
 * The closed interval of one quantity over which a rule was fitted or stated to hold.
 *
 * @param quantity the quantity's name in the trade's words, such as "relative humidity"
 * @param min lower end, in {@code unit}
 * @param max upper end, in {@code unit}; not below {@code min}
 * @param unit the unit of both ends, as shown to a reader; empty for a ratio
 */
public record ValidRange(String quantity, double min, double max, String unit) {
  /** Checks that the ends are in order. */
  public ValidRange {
    if (!(min <= max)) {
      throw new IllegalArgumentException(
          quantity + ": the range " + min + " to " + max + " is empty");
    }
  }

  /**
   * Says whether a value lies inside, ends included.
   *
   * @param value the value, in {@code unit}
   * @return true inside
   */
  public boolean contains(double value) {
    return value >= min && value <= max;
  }
}
