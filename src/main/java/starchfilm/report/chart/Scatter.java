package starchfilm.report.chart;

import java.util.List;

/**
 * A figure of points: what was changed along, what came of it upwards.
 *
 * @param title what it shows
 * @param description the same in words, for those who hear the page
 * @param across the lower axis
 * @param up the left axis
 * @param points the points
 */
public record Scatter(String title, String description, Axis across, Axis up, List<Point> points) {
  /** Left end of the drawing area. */
  public static final int LEFT = 52;

  /** Right end of the drawing area. */
  public static final int RIGHT = 348;

  /** Upper end of the drawing area. */
  public static final int TOP = 30;

  /** Lower end of the drawing area. */
  public static final int BOTTOM = 190;

  /**
   * A point.
   *
   * @param x its place across
   * @param y its place upwards
   * @param low the low end of its range upwards
   * @param high the high end
   * @param label its number
   * @param dx where the number stands to the right of the point
   * @param dy and below it
   * @param far whether a line leads to the number
   * @param kind class of its colour
   * @param faulty true for a triangle: the film had a fault
   * @param words what it is, in words
   */
  public record Point(
      String x,
      String y,
      String low,
      String high,
      String label,
      String dx,
      String dy,
      boolean far,
      String kind,
      boolean faulty,
      String words) {}
}
