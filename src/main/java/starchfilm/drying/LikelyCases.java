package starchfilm.drying;

import java.util.Arrays;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;

/**
 * The likely cases of one plate, spread so that the range of its dry-through is met well: along the
 * slope of the logarithm of the thick spot's dry-through, which costs a solve for every factor.
 * Where one step would keep that spot wet for ever, the slope is that of the step back; where it is
 * wet for ever anyway, there is none, and they spread evenly.
 */
final class LikelyCases {
  /**
   * What the ends of a range are off by grows with the range: up to this standard deviation of the
   * logarithm of the time, {@link DryingForecaster#FEWEST_DRAWS} cases miss them by 1.2 % (root
   * mean square of 36 random plates), and {@link DryingForecaster#DRAWS} would by 1.1 %.
   */
  static final double NARROW = 0.1;

  private final ParameterDistribution model;
  private final double[] slopes;

  private LikelyCases(ParameterDistribution model, double[] slopes) {
    this.model = model;
    this.slopes = slopes;
  }

  static LikelyCases of(PreparedCase prepared, ParameterDistribution model) {
    double middle = logDryS(prepared, model.mean())[0];
    double[] slopes = logDryS(prepared, model.steps(1));
    Arrays.setAll(slopes, k -> slopes[k] - middle);
    if (!allFinite(slopes)) {
      double[] back = logDryS(prepared, model.steps(-1));
      Arrays.setAll(slopes, k -> Double.isFinite(slopes[k]) ? slopes[k] : middle - back[k]);
    }
    boolean known = allFinite(slopes) && Arrays.stream(slopes).anyMatch(slope -> slope != 0);
    return new LikelyCases(model, known ? slopes : new double[0]);
  }

  /** As many likely cases as are asked for. */
  ParameterSample[] draws(int count) {
    return slopes.length == 0 ? model.draws(count) : model.draws(count, slopes);
  }

  /** Whether a few of them do. */
  boolean isNarrow() {
    double variance = Arrays.stream(slopes).map(slope -> slope * slope).sum();
    return slopes.length > 0 && variance <= NARROW * NARROW;
  }

  /**
   * How the logarithm of the thick spot's dry-through changes with each part of the model, a
   * standard deviation each; empty where it is wet for ever.
   */
  double[] slopes() {
    return slopes;
  }

  private static boolean allFinite(double[] values) {
    return Arrays.stream(values).allMatch(Double::isFinite);
  }

  private static double[] logDryS(PreparedCase prepared, ParameterSample... cases) {
    SpotSolution[] traces = DryingForecaster.solve(prepared, Spot.THICK_SPOT, cases);
    return Arrays.stream(DryingForecaster.times(traces, Milestone.DRY_THROUGH))
        .map(Math::log)
        .toArray();
  }
}
