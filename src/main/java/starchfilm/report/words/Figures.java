package starchfilm.report.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as text, the same on every machine. */
public final class Figures {
  private static final MathContext TWO = new MathContext(2, RoundingMode.HALF_UP);
  private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_UP);
  private static final MathContext FOUR = new MathContext(4, RoundingMode.HALF_UP);

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
    return text(value, TWO, false);
  }

  /**
   * A measured figure: up to three significant figures, without zeros at the end.
   *
   * @param value a finite number
   * @return such as {@code 7.42} or {@code 112}
   */
  public static String three(double value) {
    return text(value, THREE, true);
  }

  /**
   * A figure somebody noted: up to four significant figures, without zeros at the end.
   *
   * @param value a finite number
   * @return such as {@code 46.25} or {@code 900}
   */
  public static String noted(double value) {
    return text(value, FOUR, true);
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
   * @return such as {@code 2.6–14}, {@code −7 to 31} or {@code 5.0 to never}
   */
  public static String range(String low, String high) {
    boolean dash = !low.startsWith(MINUS) && Character.isDigit(high.charAt(0));
    return dash ? low + "–" + high : low + " to " + high;
  }

  private static String text(double value, MathContext precision, boolean strip) {
    if (Double.isInfinite(value)) {
      return "never";
    }
    BigDecimal rounded = BigDecimal.valueOf(value).round(precision);
    if (rounded.signum() == 0) {
      return "0";
    }
    if (strip) {
      return signed(rounded.stripTrailingZeros());
    }
    int missingZeros = precision.getPrecision() - rounded.precision();
    return signed(missingZeros > 0 ? rounded.setScale(rounded.scale() + missingZeros) : rounded);
  }

  private static String signed(BigDecimal value) {
    String plain = value.abs().toPlainString();
    return value.signum() < 0 ? MINUS + plain : plain;
  }
}
