package starchfilm.drying.uncertainty;

import java.util.Arrays;

/** Likely cases of a distribution, for tests that solve them by themselves. */
public final class DrawnCases {
  private DrawnCases() {}

  /** Cases for no outcome in particular. */
  public static ParameterSample[] of(ParameterDistribution model, int count) {
    return at(model, model.points(count));
  }

  /** Cases spread along an outcome's slopes. */
  public static ParameterSample[] of(ParameterDistribution model, int count, double[] slopes) {
    return at(model, model.points(count, slopes));
  }

  private static ParameterSample[] at(ParameterDistribution model, double[][] points) {
    return Arrays.stream(points).map(model::at).toArray(ParameterSample[]::new);
  }
}
