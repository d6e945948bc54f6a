package starchfilm.files.findings;

import java.math.BigDecimal;

/**
 * The values a number in a file may have.
 *
 * @param min the least
 * @param minExcluded true where {@code min} itself is not allowed
 * @param max the most
 * @param unit unit of both ends, as in a sentence; empty for a bare number
 * @param percentOnly true where a number up to 1 can only be a fraction typed for per cent
 * @param mend what to write
 */
public record Allowed(
    double min, boolean minExcluded, double max, String unit, boolean percentOnly, String mend) {
  /**
   * A range with both its ends.
   *
   * @param min the least
   * @param max the most
   * @param unit unit of both
   * @param mend what to write
   * @return what is allowed
   */
  public static Allowed between(double min, double max, String unit, String mend) {
    return new Allowed(min, false, max, unit, false, mend);
  }

  /**
   * A range without its lower end.
   *
   * @param min what the number must be above
   * @param max the most
   * @param unit unit of both
   * @param mend what to write
   * @return what is allowed
   */
  public static Allowed above(double min, double max, String unit, String mend) {
    return new Allowed(min, true, max, unit, false, mend);
  }

  /**
   * Per cent of something that is 0 or well above 1 %, so that 0.3 is a fraction by mistake.
   *
   * @param max the most (%)
   * @param mend what to write
   * @return what is allowed
   */
  public static Allowed percent(double max, String mend) {
    return new Allowed(0, false, max, "%", true, mend);
  }

  /**
   * Returns whether a number is allowed.
   *
   * @param value the number
   * @return true where it is
   */
  public boolean contains(double value) {
    boolean aboveMin = minExcluded ? value > min : value >= min;
    return aboveMin && value <= max && !(percentOnly && value > 0 && value <= 1);
  }

  /**
   * Returns whether a number looks like a fraction where per cent are asked.
   *
   * @param value the number
   * @return true where it does
   */
  public boolean isFractionByMistake(double value) {
    return percentOnly && value >= 0.001 && value <= 1;
  }

  /**
   * The range in words.
   *
   * @return such as {@code 0 to 100 %} or {@code more than 0, up to 100000 g}
   */
  public String words() {
    String tail = unit.isEmpty() ? "" : " " + unit;
    if (percentOnly) {
      return "0, or more than 1 up to " + plain(max) + tail;
    }
    return minExcluded
        ? "more than " + plain(min) + ", up to " + plain(max) + tail
        : plain(min) + " to " + plain(max) + tail;
  }

  /**
   * A number without an exponent.
   *
   * @param value the number
   * @return its digits
   */
  public static String plain(double value) {
    return value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
