package starchfilm.report.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * The places of the numbers of points: beside their marks, on no mark and on no other number. Where
 * marks crowd, a number stands further off, with a line to its mark.
 */
public final class NumberPlaces {
  /** Half of a mark's side (units of the drawing). */
  private static final double MARK = 9;

  private static final double HALF_DIGIT = 5.5;
  private static final double HALF_HEIGHT = 7.5;

  /** Numbers side by side would read as one. */
  private static final double APART = 5;

  private static final double NEAR = 15;
  private static final double STEP = 7;
  private static final int RINGS = 12;

  /** Up and to the right first, as a reader looks for it. */
  private static final int[] TURNS = {-45, 0, -90, 45, -135, 90, 180, 135, -22, 22, -67, -112};

  private final List<double[]> marks;
  private final List<double[]> taken = new ArrayList<>();

  /**
   * Nothing placed yet.
   *
   * @param marks the places of all marks, across and upwards
   */
  public NumberPlaces(List<double[]> marks) {
    this.marks = marks;
  }

  /**
   * The place of a number from its mark.
   *
   * @param dx to the right
   * @param dy downwards
   * @param far whether a line leads to it
   */
  public record Offset(String dx, String dy, boolean far) {
    private static Offset of(double dx, double dy, boolean far) {
      return new Offset(Scale.decimal(dx), Scale.decimal(dy), far);
    }
  }

  /**
   * The nearest free place.
   *
   * @param mark whose number it is
   * @param digits how many figures it has
   * @return where it stands; to the upper right where no place is free
   */
  public Offset next(double[] mark, int digits) {
    double halfWidth = HALF_DIGIT * digits;
    for (int ring = 0; ring < RINGS; ring++) {
      for (int turn : TURNS) {
        double radius = NEAR + STEP * ring;
        double dx = radius * Math.cos(Math.toRadians(turn));
        double dy = radius * Math.sin(Math.toRadians(turn));
        double[] box = {mark[0] + dx, mark[1] + dy, halfWidth, HALF_HEIGHT};
        if (isFree(box)) {
          taken.add(new double[] {box[0], box[1], halfWidth + APART, HALF_HEIGHT});
          return Offset.of(dx, dy, ring > 0);
        }
      }
    }
    return Offset.of(NEAR, -NEAR, false);
  }

  private boolean isFree(double[] box) {
    boolean inside =
        box[0] - box[2] >= Scatter.LEFT
            && box[0] + box[2] <= Scatter.RIGHT + MARK
            && box[1] - box[3] >= Scatter.TOP - MARK
            && box[1] + box[3] <= Scatter.BOTTOM;
    return inside
        && marks.stream()
            .noneMatch(mark -> overlap(box, new double[] {mark[0], mark[1], MARK, MARK}))
        && taken.stream().noneMatch(other -> overlap(box, other));
  }

  private static boolean overlap(double[] a, double[] b) {
    return Math.abs(a[0] - b[0]) < a[2] + b[2] && Math.abs(a[1] - b[1]) < a[3] + b[3];
  }
}
