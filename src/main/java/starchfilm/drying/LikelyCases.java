package starchfilm.drying;

import java.util.Arrays;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;

/** The likely cases of one plate, spread so that the range of its dry-through is met well. */
final class LikelyCases {
  private LikelyCases() {}

  /**
   * As many likely cases as are asked for, along the slope of the logarithm of the thick spot's
   * dry-through, which costs a solve for every factor. Where one step would keep that spot wet for
   * ever, the slope is that of the step back; where it is wet for ever anyway, they spread evenly.
   */
  static ParameterSample[] of(PreparedCase prepared, ParameterDistribution model, int count) {
    double middle = logDryS(prepared, model.mean())[0];
    double[] slopes = logDryS(prepared, model.steps(1));
    Arrays.setAll(slopes, k -> slopes[k] - middle);
    if (!allFinite(slopes)) {
      double[] back = logDryS(prepared, model.steps(-1));
      Arrays.setAll(slopes, k -> Double.isFinite(slopes[k]) ? slopes[k] : middle - back[k]);
    }
    boolean known = allFinite(slopes) && Arrays.stream(slopes).anyMatch(slope -> slope != 0);
    return known ? model.draws(count, slopes) : model.draws(count);
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
