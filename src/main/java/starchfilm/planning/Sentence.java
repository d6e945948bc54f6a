package starchfilm.planning;

import static starchfilm.numerics.units.Units.DAY_S;

import java.math.BigDecimal;
import java.math.MathContext;

/** The one sentence somebody gets whose request cannot be met, and the figures in it. */
final class Sentence {
  private static final MathContext THREE_FIGURES = new MathContext(3);

  private Sentence() {}

  /** Refuses what does not hold. */
  static void require(boolean holds, String quantity, String given, String allowed, String mend) {
    if (!holds) {
      throw new UnworkableRequestException(
          quantity + ": " + given + " given, allowed " + allowed + "; " + mend);
    }
  }

  static String grams(double kg) {
    return number(kg * 1e3) + " g";
  }

  static String percent(double fraction) {
    return number(fraction * 100) + " %";
  }

  static String millimetres(double m) {
    return number(m * 1e3) + " mm";
  }

  static String days(double s) {
    return number(s / DAY_S) + " days";
  }

  /** Three figures, no exponent, no zeros at the end. */
  static String number(double value) {
    return number(value, THREE_FIGURES);
  }

  /** A forecast figure: two figures. */
  static String two(double value) {
    return number(value, new MathContext(2));
  }

  private static String number(double value, MathContext figures) {
    if (!Double.isFinite(value)) {
      return String.valueOf(value);
    }
    BigDecimal rounded = BigDecimal.valueOf(value).round(figures);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
