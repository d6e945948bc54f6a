package starchfilm.report.chart;

import java.util.List;

/**
 * A figure of curves over time, with lanes of marks below that share its time axis.
 *
 * @param title what it shows
 * @param description the same in words, for those who hear the page
 * @param frame the drawing area of the curves
 * @param height height of the whole drawing
 * @param leftTitle title of the left axis, with its unit
 * @param rightTitle title of the right axis, with its unit
 * @param bottomTitle title of the time axis, with its unit
 * @param left ticks of the left axis
 * @param right ticks of the right axis
 * @param bottom ticks of the time axis
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
    String leftTitle,
    String rightTitle,
    String bottomTitle,
    List<TickMark> left,
    List<TickMark> right,
    List<TickMark> bottom,
    String ghost,
    String shade,
    List<Line> lines,
    List<Mark> marks,
    List<Lane> lanes,
    List<Upright> uprights) {
  /** Distance from a straight line (units of the drawing) that nobody sees. */
  private static final double UNSEEN = 0.15;

  public CurveFigure {
    left = List.copyOf(left);
    right = List.copyOf(right);
    bottom = List.copyOf(bottom);
    lines = List.copyOf(lines);
    marks = List.copyOf(marks);
    lanes = List.copyOf(lanes);
    uprights = List.copyOf(uprights);
  }

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
   * A tick.
   *
   * @param at its place along the axis
   * @param label its figure
   * @param under a second line below, such as a weekday; may be empty
   * @param spare true where a narrow page leaves the labels out
   */
  public record TickMark(String at, String label, String under, boolean spare) {}

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
  public record Mark(String x, String y, String label) {}

  /**
   * A row of ranges and marks below the curves.
   *
   * @param label what the row is of
   * @param look the curve the row belongs to, by its class; empty where the label says it
   * @param y its height in the drawing
   * @param ranges ranges along it
   * @param marks marks on it
   */
  public record Lane(
      String label, String look, int y, List<LaneRange> ranges, List<LaneMark> marks) {
    public Lane {
      ranges = List.copyOf(ranges);
      marks = List.copyOf(marks);
    }
  }

  /**
   * A range in a lane.
   *
   * @param kind class of the line
   * @param from its low end
   * @param to its high end
   * @param open true where the high end lies beyond the axis
   */
  public record LaneRange(String kind, String from, String to, boolean open) {}

  /**
   * A mark in a lane.
   *
   * @param kind class of the mark
   * @param x its place
   */
  public record LaneMark(String kind, String x) {}

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
