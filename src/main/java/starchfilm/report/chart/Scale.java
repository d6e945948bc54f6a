package starchfilm.report.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * From values to places on the drawing.
 *
 * @param from the value at the first place; above 0 on a logarithmic scale
 * @param to the value at the last place; not equal to {@code from}
 * @param firstPlace where {@code from} is drawn
 * @param lastPlace where {@code to} is drawn
 * @param logarithmic true where equal ratios get equal lengths
 */
public record Scale(
    double from, double to, double firstPlace, double lastPlace, boolean logarithmic) {
  /** Checks that there is something to scale. */
  public Scale {
    if (!Double.isFinite(from) || !Double.isFinite(to) || from == to) {
      throw new IllegalArgumentException("a scale needs two finite ends, not " + from + ", " + to);
    }
    if (logarithmic && !(from > 0 && to > 0)) {
      throw new IllegalArgumentException(
          "a logarithmic scale needs ends above 0, not " + from + ", " + to);
    }
  }

  /**
   * A linear scale.
   *
   * @param from the value at the first place
   * @param to the value at the last place
   * @param firstPlace where {@code from} is drawn
   * @param lastPlace where {@code to} is drawn
   * @return the scale
   */
  public static Scale linear(double from, double to, double firstPlace, double lastPlace) {
    return new Scale(from, to, firstPlace, lastPlace, false);
  }

  /**
   * A logarithmic scale.
   *
   * @param from the value at the first place, above 0
   * @param to the value at the last place, above 0
   * @param firstPlace where {@code from} is drawn
   * @param lastPlace where {@code to} is drawn
   * @return the scale
   */
  public static Scale logarithmic(double from, double to, double firstPlace, double lastPlace) {
    return new Scale(from, to, firstPlace, lastPlace, true);
  }

  /**
   * The place of a value; values beyond the ends are drawn at the ends, as an arrow would point.
   *
   * @param value any number; infinity is beyond the end
   * @return the place
   */
  public double at(double value) {
    double share =
        logarithmic
            ? Math.log(Math.max(value, Double.MIN_NORMAL) / from) / Math.log(to / from)
            : (value - from) / (to - from);
    return firstPlace + Math.max(0, Math.min(1, share)) * (lastPlace - firstPlace);
  }

  /**
   * The place of a value, as an attribute of a drawing.
   *
   * @param value any number
   * @return the place with one decimal
   */
  public String place(double value) {
    return decimal(at(value));
  }

  /**
   * A place as text.
   *
   * @return with at most two decimals and no zeros at the end
   */
  static String decimal(double place) {
    BigDecimal rounded = BigDecimal.valueOf(place).setScale(2, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
