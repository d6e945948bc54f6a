package starchfilm.advice;

import org.apache.commons.math3.distribution.NormalDistribution;
import starchfilm.drying.MilestoneForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;

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
   * @param timeS time since the pour (s, above 0)
   * @return 0 to 1
   */
  static double by(MilestoneForecast milestone, double timeS) {
    Band band = milestone.timeS();
    double share = milestone.shareReached();
    // A band that ends is that of the cases in which it comes; one without end is that of all.
    return Double.isInfinite(band.high())
        ? Math.min(share, ifItComes(band, timeS))
        : share * ifItComes(band, timeS);
  }

  /** How many of a hundred likely cases; never 0 or 100, which nobody knows. */
  static String words(double probability) {
    double cases = Math.rint(100 * probability);
    if (cases < 1) {
      return "fewer than 1 of 100";
    }
    return (cases > 99 ? "more than 99" : Figures.whole(cases)) + " of 100";
  }

  private static double ifItComes(Band band, double timeS) {
    if (Double.isInfinite(band.low())) {
      return 0.1;
    }
    if (Double.isInfinite(band.middle())) {
      return timeS < band.low() ? 0.1 : 0.5;
    }
    double distance = Math.log(timeS / band.middle());
    double half =
        distance <= 0 || Double.isInfinite(band.high())
            ? band.middle() / band.low()
            : band.high() / band.middle();
    double z = distance / Math.log(half) * Band.Z90;
    return new NormalDistribution(null, 0, 1).cumulativeProbability(z);
  }
}
