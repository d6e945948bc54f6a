package starchfilm.numerics.figures;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import starchfilm.numerics.evidence.Band;

/** Numbers as text, the same on every machine. */
public final class Figures {
  private static final int TWO = 2;
  private static final int THREE = 3;
  private static final int FOUR = 4;

  /** The sign of negative numbers; a hyphen would be read as a range. */
  private static final String MINUS = "−";

  private Figures() {}

  /**
   * A forecast figure: two significant figures.
   *
   * @param value any number; infinity stands for a time that never comes
   * @return such as {@code 0.012}, {@code 6.0}, {@code 120}; {@code never} for infinity
   */
  public static String two(double value) {
    if (Double.isInfinite(value)) {
      return "never";
    }
    BigDecimal rounded = rounded(value, TWO);
    int missingZeros = rounded.signum() == 0 ? 0 : TWO - rounded.precision();
    return signed(rounded.setScale(rounded.scale() + missingZeros));
  }

  /**
   * A measured figure: up to three significant figures, without zeros at the end.
   *
   * @param value a finite number
   * @return such as {@code 7.42} or {@code 112}
   */
  public static String three(double value) {
    return stripped(value, THREE);
  }

  /**
   * A figure somebody noted: up to four significant figures, without zeros at the end.
   *
   * @param value a finite number
   * @return such as {@code 46.25} or {@code 900}
   */
  public static String noted(double value) {
    return stripped(value, FOUR);
  }

  /**
   * A number rounded to significant figures, with a hyphen below zero, as it is typed.
   *
   * @param value the number
   * @param figures how many figures count, 1 or more; zeros at the end of the decimals are dropped
   * @return such as {@code 0.034}, {@code 12}, {@code 1240}; {@code endless} for infinity, {@code
   *     unknown} for NaN
   */
  public static String of(double value, int figures) {
    if (Double.isInfinite(value)) {
      return value > 0 ? "endless" : "-endless";
    }
    return Double.isNaN(value) ? "unknown" : rounded(value, figures).toPlainString();
  }

  /**
   * A figure in a clause: two significant figures, without zeros at the end.
   *
   * @param value a finite number
   * @return such as {@code 6} or {@code 0.12}
   */
  public static String brief(double value) {
    return stripped(value, TWO);
  }

  /**
   * A mass in grams, to three figures.
   *
   * @param kg the mass (kg)
   * @return such as {@code 84.3}
   */
  public static String grams(double kg) {
    return of(kg * 1000, THREE);
  }

  /**
   * A fraction in per cent, to three figures.
   *
   * @param fraction the fraction
   * @return such as {@code 84.3}
   */
  public static String percent(double fraction) {
    return of(fraction * 100, THREE);
  }

  /**
   * A figure to the nearest whole number.
   *
   * @param value a finite number
   * @return such as {@code 12}
   */
  public static String whole(double value) {
    return signed(BigDecimal.valueOf(value).setScale(0, RoundingMode.HALF_UP));
  }

  /**
   * A figure to the nearest tenth.
   *
   * @param value a finite number
   * @return such as {@code 12.0}
   */
  public static String tenths(double value) {
    return signed(BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP));
  }

  /**
   * A difference to the nearest tenth.
   *
   * @param value a finite number
   * @return such as {@code +1.4}, {@code −6.5} or {@code 0.0}
   */
  public static String change(double value) {
    String tenths = tenths(value);
    return tenths.startsWith(MINUS) || tenths.equals("0.0") ? tenths : "+" + tenths;
  }

  /**
   * A range of figures that are already text.
   *
   * @param low the lower end
   * @param high the upper end
   * @return such as {@code 2.6–14}, {@code −7 to 31} or {@code 5.0 to never}; one figure where both
   *     read the same
   */
  public static String range(String low, String high) {
    if (low.equals(high)) {
      return low;
    }
    boolean dash = !low.startsWith(MINUS) && Character.isDigit(high.charAt(0));
    return dash ? low + "–" + high : low + " to " + high;
  }

  /**
   * A range behind its middle.
   *
   * @param low the lower end
   * @param high the upper end
   * @return such as {@code (2.6–14)}, with a blank before it; empty where both read the same
   */
  public static String around(String low, String high) {
    return low.equals(high) ? "" : " (" + range(low, high) + ")";
  }

  /**
   * The range of a forecast figure.
   *
   * @param band the figure, in the unit it is read in
   * @return its ends to two significant figures
   */
  public static String range(Band band) {
    return range(two(band.low()), two(band.high()));
  }

  private static String stripped(double value, int figures) {
    return Double.isInfinite(value) ? "never" : signed(rounded(value, figures));
  }

  private static BigDecimal rounded(double value, int figures) {
    return BigDecimal.valueOf(value)
        .round(new MathContext(figures, RoundingMode.HALF_UP))
        .stripTrailingZeros();
  }

  private static String signed(BigDecimal value) {
    String plain = value.abs().toPlainString();
    return value.signum() < 0 ? MINUS + plain : plain;
  }
}
