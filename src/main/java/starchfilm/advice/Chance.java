package starchfilm.advice;

import org.apache.commons.math3.distribution.NormalDistribution;
import starchfilm.drying.MilestoneForecast;
import starchfilm.numerics.evidence.Band;

/**
 * The probability that a milestone has come by some time, read off its 10, 50 and 90 % points.
 *
 * <p>Below the median the logarithm of the time is taken as normal with the spread of the lower
 * half of the band, above it with that of the upper half; where the upper half is endless, the
 * probability rises no further than the share of the cases in which the milestone comes at all.
 */
final class Chance {
  private Chance() {}

  /**
   * The probability.
   *
   * @param milestone its forecast
   * @param timeS time since the pour (s, above 0)
   * @return 0 to 1
   */
  static double by(MilestoneForecast milestone, double timeS) {
    Band band = milestone.timeS();
    if (Double.isInfinite(band.low())) {
      return Math.min(0.1, milestone.shareReached());
    }
    if (Double.isInfinite(band.middle())) {
      return timeS < band.low() ? 0.1 : Math.min(0.5, milestone.shareReached());
    }
    double distance = Math.log(timeS / band.middle());
    if (distance <= 0 || Double.isInfinite(band.high())) {
      double lower = normal(distance / Math.log(band.middle() / band.low()) * Band.Z90);
      return Math.min(lower, milestone.shareReached());
    }
    return normal(distance / Math.log(band.high() / band.middle()) * Band.Z90);
  }

  private static double normal(double z) {
    return new NormalDistribution(null, 0, 1).cumulativeProbability(z);
  }
}
