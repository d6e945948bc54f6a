package starchfilm.report;

import java.util.Optional;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;

/**
 * What a cell shows below its text: nothing, a bar from zero, or a range on the row's scale.
 *
 * @param bar width of the bar, such as {@code 40%}; empty for none
 * @param strip the range, if any
 */
record CellFigure(String bar, Optional<Strip> strip) {
  /** Nothing. */
  static CellFigure none() {
    return new CellFigure("", Optional.empty());
  }

  /**
   * A bar from zero.
   *
   * @param share of the row's largest value, 0 to 1
   */
  static CellFigure bar(double share) {
    return new CellFigure(Scale.linear(0, 1, 0, 100).place(share) + "%", Optional.empty());
  }

  /** A range. */
  static CellFigure strip(Strip strip) {
    return new CellFigure("", Optional.of(strip));
  }
}
