package starchfilm.drying;

import java.util.Arrays;
import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterSample;

/**
 * How the thin edge and the thick spot of a plate stand from the pour until the thick spot is dry
 * through, at moments that lie closer together at first, when most happens.
 *
 * @param edge the thin edge
 * @param thick the thick spot, at the same moments
 */
public record PlateCourse(List<SpotMoment> edge, List<SpotMoment> thick) {
  /**
   * Against twelve times as many on 120 random plates, a quarter of them in a daily swing, the
   * figures of mould and of cracking are within 0.6 % (root mean square), at worst 3 %.
   */
  private static final int POINTS = 40;

  private static final double CROWDING = 1.5;
  private static final double BEYOND_DRY = 1.02;

  public PlateCourse {
    edge = List.copyOf(edge);
    thick = List.copyOf(thick);
  }

  /**
   * Follows one plate in one likely case.
   *
   * @param drying the plate
   * @param deviations the likely case
   * @param horizonS it is followed until then where its thick spot is not dry before (s)
   * @return its course
   */
  public static PlateCourse of(Casting drying, ParameterSample deviations, double horizonS) {
    PreparedCase prepared = PreparedCase.of(drying);
    SpotSolver solver = new SpotSolver(prepared, new double[0]);
    SpotSolution first = new SpotSolution();
    solver.solve(Spot.THICK_SPOT, deviations, horizonS, first);
    double endS = Math.min(horizonS, first.at(Milestone.DRY_THROUGH) * BEYOND_DRY);
    double[] timesS = new double[POINTS + 1];
    Arrays.setAll(timesS, i -> endS * Math.pow((double) i / POINTS, CROWDING));
    return new PlateCourse(
        solver.moments(Spot.THIN_EDGE, deviations, timesS),
        solver.moments(Spot.THICK_SPOT, deviations, timesS));
  }
}
