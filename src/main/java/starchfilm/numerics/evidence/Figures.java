package starchfilm.numerics.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as they stand in a sentence: so many figures, no exponent, a point for the decimals. */
public final class Figures {
  private Figures() {}

  /**
   * A number rounded to significant figures.
   *
   * @param value the number
   * @param figures how many figures count, 1 or more; zeros at the end of the decimals are dropped
   * @return such as "0.034", "12", "1240" "endless" for infinity, "unknown" for NaN
   */
  public static String of(double value, int figures) {
    if (Double.isInfinite(value)) {
      return value > 0 ? "endless" : "-endless";
    }
    if (Double.isNaN(value)) {
      return "unknown";
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).round(new MathContext(figures, RoundingMode.HALF_EVEN));
    return rounded.stripTrailingZeros().toPlainString();
  }

  /**
   * A mass in grams, to three figures.
   *
   * @param kg the mass (kg)
   * @return such as "84.3"
   */
  public static String grams(double kg) {
    return of(kg * 1000, 3);
  }

  /**
   * A fraction in per cent, to three figures.
   *
   * @param fraction the fraction
   * @return such as "84.3"
   */
  public static String percent(double fraction) {
    return of(fraction * 100, 3);
  }
}
