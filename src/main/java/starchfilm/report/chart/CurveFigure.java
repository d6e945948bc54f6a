package starchfilm.report.chart;

import java.util.List;

/**
 * A figure of curves over time, with lanes of marks below that share its time axis.
 *
 * @param title what it shows
 * @param description the same in words, for those who hear the page
 * @param frame the drawing area of the curves
 * @param height height of the whole drawing
 * @param left the left axis
 * @param right the right axis
 * @param bottom the time axis
 * @param ghost corners of the band as it was before anything was weighed; empty where that is the
 *     same
 * @param shade corners of the shaded band
 * @param lines the curves
 * @param marks measured points
 * @param lanes rows of marks below the curves
 * @param uprights moments that are marked over the whole height
 */
public record CurveFigure(
    String title,
    String description,
    Frame frame,
    int height,
    Axis left,
    Axis right,
    Axis bottom,
    String ghost,
    String shade,
    List<Line> lines,
    List<MeasuredPoint> marks,
    List<Lane> lanes,
    List<Upright> uprights) {
  /** Distance from a straight line (units of the drawing) that nobody sees. */
  private static final double UNSEEN = 0.15;

  /**
   * The drawing area.
   *
   * @param left its left end
   * @param top its upper end
   * @param right its right end
   * @param bottom its lower end
   * @param width width of the whole drawing
   */
  public record Frame(int left, int top, int right, int bottom, int width) {}

  /**
   * A moment marked over the whole height.
   *
   * @param x its place
   * @param label what it is
   */
  public record Upright(String x, String label) {}

  /**
   * A curve.
   *
   * @param kind class of the curve
   * @param points its corners
   */
  public record Line(String kind, String points) {}

  /**
   * A measured point.
   *
   * @param x its place
   * @param y its place
   * @param label what was measured, in words
   */
  public record MeasuredPoint(String x, String y, String label) {}

  /**
   * The corners of a curve; those that nobody would see on the straight line past them are left
   * out, for hundreds of corners weigh.
   *
   * @param x scale of the first coordinate
   * @param y scale of the second
   * @param points pairs of values
   * @return such as {@code 10,20 30.5,40}
   */
  public static String corners(Scale x, Scale y, List<double[]> points) {
    List<double[]> drawn =
        points.stream().map(point -> new double[] {x.at(point[0]), y.at(point[1])}).toList();
    StringBuilder text = new StringBuilder();
    int kept = 0;
    for (int i = 0; i < drawn.size(); i++) {
      if (i > 0 && i < drawn.size() - 1 && straight(drawn, kept, i + 1)) {
        continue;
      }
      kept = i;
      text.append(i > 0 ? " " : "").append(fifth(drawn.get(i)[0]));
      text.append(',').append(fifth(drawn.get(i)[1]));
    }
    return text.toString();
  }

  private static boolean straight(List<double[]> points, int from, int to) {
    double[] start = points.get(from);
    double along = points.get(to)[0] - start[0];
    double up = points.get(to)[1] - start[1];
    double length = Math.hypot(along, up);
    for (int i = from + 1; i < to; i++) {
      double right = points.get(i)[0] - start[0];
      double above = points.get(i)[1] - start[1];
      double beside = length > 0 ? (along * above - up * right) / length : Math.hypot(right, above);
      if (Math.abs(beside) > UNSEEN) {
        return false;
      }
    }
    return true;
  }

  /** A corner is drawn no finer than a fifth of a unit. */
  private static String fifth(double place) {
    return Scale.decimal(Math.round(5 * place) / 5.0);
  }
}
