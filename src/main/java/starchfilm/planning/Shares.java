package starchfilm.planning;

import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/** Points of a sample of times that may hold positive infinity. */
final class Shares {
  private Shares() {}

  /**
   * The time by which a share of a sample is ready.
   *
   * <p>Linear between the order statistics. Source: Hyndman and Fan 1996, The American Statistician
   * 50:361, definition 7 (recalled).
   *
   * @param share above 0 and at most 1
   * @param times the sample; at least one
   * @return the time; positive infinity as soon as the upper neighbour is
   */
  static double at(double share, double[] times) {
    double time =
        new Percentile(100 * share)
            .withEstimationType(Percentile.EstimationType.R_7)
            .evaluate(times);
    // Between a last time and never, linear interpolation has no answer but never.
    return Double.isNaN(time) ? Double.POSITIVE_INFINITY : time;
  }
}
