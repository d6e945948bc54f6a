package starchfilm.report.chart;

import java.util.List;

/**
 * A thin horizontal figure of ranges and marks; places are per cent of its width.
 *
 * @param title what it shows, for those who hear the page
 * @param description the same figures in words
 * @param grid faint lines at round values, with labels where the strip is an axis
 * @param lane ranges and single values
 * @param landmarks things one knows, to hold the values against
 */
public record Strip(
    String title, String description, List<Axis.Tick> grid, Lane lane, List<Landmark> landmarks) {
  /** The place of the first value of a strip's scale (% of the width). */
  public static final double FIRST_PLACE = 2;

  /** The place of the last value of a strip's scale (% of the width). */
  public static final double LAST_PLACE = 97;

  /**
   * The scale of a strip.
   *
   * @param from the value at its beginning
   * @param to the value at its end
   */
  public static Scale linear(double from, double to) {
    return Scale.linear(from, to, FIRST_PLACE, LAST_PLACE);
  }

  /**
   * The scale of a strip with equal lengths for equal ratios.
   *
   * @param from the value at its beginning, above 0
   * @param to the value at its end, above 0
   */
  public static Scale logarithmic(double from, double to) {
    return Scale.logarithmic(from, to, FIRST_PLACE, LAST_PLACE);
  }

  /**
   * A thing one knows.
   *
   * @param at its place
   * @param label what it is
   */
  public record Landmark(String at, String label) {}
}
