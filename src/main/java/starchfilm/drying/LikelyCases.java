package starchfilm.drying;

import java.util.Arrays;
import starchfilm.doubt.Deviations;
import starchfilm.doubt.FactorModel;
import starchfilm.plate.Spot;

/** The likely cases of one plate, spread so that the range of its dry-through is met well. */
final class LikelyCases {
  private LikelyCases() {}

  /**
   * As many likely cases as are asked for, along the slope of the logarithm of the thick spot's
   * dry-through, which costs a solve for every factor; spread evenly where that spot may never dry.
   */
  static Deviations[] of(PreparedCase prepared, FactorModel model, int count) {
    double middle = logDryS(prepared, model.mean())[0];
    double[] slopes = logDryS(prepared, model.steps());
    boolean known = false;
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] -= middle;
      known |= slopes[k] != 0;
    }
    known &= Arrays.stream(slopes).allMatch(Double::isFinite);
    return known ? model.draws(count, slopes) : model.draws(count);
  }

  private static double[] logDryS(PreparedCase prepared, Deviations... cases) {
    SpotTrace[] traces =
        DryingForecaster.solve(
            prepared, Spot.THICK_SPOT, cases, new double[0], DryingForecaster.HORIZON_S);
    return Arrays.stream(DryingForecaster.times(traces, Milestone.DRY_THROUGH))
        .map(Math::log)
        .toArray();
  }
}
