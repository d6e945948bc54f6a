package starchfilm.drying.uncertainty;

import java.util.Arrays;
import starchfilm.numerics.evidence.Band;

/** Quantiles of a sample that may hold positive infinity. */
public final class Quantiles {
  private Quantiles() {}

  /**
   * The 10, 50 and 90 % points.
   *
   * @param sample the outcomes, in any order; at least one
   * @return the band
   */
  public static Band band(double[] sample) {
    double[] sorted = sample.clone();
    Arrays.sort(sorted);
    return new Band(at(sorted, 0.1), at(sorted, 0.5), at(sorted, 0.9));
  }

  /**
   * One point.
   *
   * @param sample the outcomes, in any order; at least one
   * @param share of the outcomes that stay below it (0 to 1)
   * @return the point, in the sample's unit
   */
  public static double of(double[] sample, double share) {
    double[] sorted = sample.clone();
    Arrays.sort(sorted);
    return at(sorted, share);
  }

  /**
   * Linear between the order statistics, each in the middle of its share of the sample, as the
   * cases of {@link ParameterDistribution} stand; infinite as soon as the upper one is. Source:
   * Hyndman and Fan 1996, The American Statistician 50:361, definition 5 (recalled).
   */
  private static double at(double[] sorted, double share) {
    double place = Math.max(0, Math.min(sorted.length - 1.0, share * sorted.length - 0.5));
    int i = (int) place;
    double rest = place - i;
    if (rest == 0 || sorted[i] == sorted[i + 1]) {
      return sorted[i];
    }
    return sorted[i] + rest * (sorted[i + 1] - sorted[i]);
  }

  /**
   * How many of the outcomes ever come.
   *
   * @param sample the outcomes; at least one
   * @return share of them that is finite (0 to 1)
   */
  public static double finiteShare(double[] sample) {
    return (double) Arrays.stream(sample).filter(Double::isFinite).count() / sample.length;
  }
}
