package starchfilm.material.sorption;

/**
 * A rising curve q(X) through given points with given slopes, read without a search.
 *
 * <p>Between two points runs the cubic of Hermite, its end slopes cut to three times the secant
 * where they exceed it, which keeps it rising (Fritsch and Carlson 1980, SIAM J. Numer. Anal.
 * 17:238). Below the first point, which is 0, and beyond the last the curve goes on straight. The
 * value and the slope are continuous everywhere.
 *
 * <p>Reading: {@code u = X/(X + c)} lies in [0, 1); the interval where its bin begins is tabulated,
 * and at most a few intervals lie in one bin.
 */
final class InverseTable {
  private static final int BINS = 256;
  private static final int PER_INTERVAL = 4;

  private final double[] x;

  /**
   * For each interval: value, slope, half the curvature, third power's coefficient at its start.
   */
  private final double[] cubic;

  /** One entry a bin, and one for X so large that u rounds to 1. */
  private final byte[] firstInterval = new byte[BINS + 1];

  private final double scale;

  /**
   * Builds the curve.
   *
   * @param x the points, rising from 0; kept, not copied
   * @param slopes dX/dq at the points, above 0
   * @param scale the X that falls in the middle bin; above 0
   */
  InverseTable(double[] x, double[] slopes, double scale) {
    int last = x.length - 1;
    this.x = x;
    this.scale = scale;
    this.cubic = new double[PER_INTERVAL * x.length];
    double start = 1 / slopes[0];
    for (int i = 0; i < last; i++) {
      double width = x[i + 1] - x[i];
      double secant = (ActivityNodes.q(i + 1) - ActivityNodes.q(i)) / width;
      double end = 1 / slopes[i + 1];
      double left = Math.min(start, 3 * secant);
      double right = Math.min(end, 3 * secant);
      int at = PER_INTERVAL * i;
      cubic[at] = ActivityNodes.q(i);
      cubic[at + 1] = left;
      cubic[at + 2] = (3 * secant - 2 * left - right) / width;
      cubic[at + 3] = (left + right - 2 * secant) / (width * width);
      start = end;
    }
    cubic[PER_INTERVAL * last] = ActivityNodes.q(last);
    cubic[PER_INTERVAL * last + 1] = start;
    fillBins(last);
  }

  private void fillBins(int last) {
    int interval = 0;
    for (int bin = 0; bin <= BINS; bin++) {
      double u = (double) bin / BINS;
      double left = scale * u / (1 - u);
      while (interval < last && x[interval + 1] <= left) {
        interval++;
      }
      firstInterval[bin] = (byte) interval;
    }
  }

  /**
   * Finds the interval of a point.
   *
   * @param moisture X, 0 or more, finite
   * @return where its coefficients begin
   */
  private int interval(double moisture) {
    int i = firstInterval[(int) (BINS * (moisture / (moisture + scale)))];
    while (i < x.length - 1 && moisture >= x[i + 1]) {
      i++;
    }
    return i;
  }

  /**
   * The activity at a moisture.
   *
   * @param moisture X
   * @return a = q/(1 + q); below X = 0 the tangent at 0
   */
  double activity(double moisture) {
    if (!(moisture >= 0)) {
      return moisture * cubic[1];
    }
    int i = interval(moisture);
    double q = q(i, moisture - x[i]);
    return q / (1 + q);
  }

  /**
   * The slope of the activity.
   *
   * @param moisture X
   * @return da/dX
   */
  double activitySlope(double moisture) {
    if (!(moisture >= 0)) {
      return cubic[1];
    }
    int i = interval(moisture);
    double t = moisture - x[i];
    int at = PER_INTERVAL * i;
    double slope = cubic[at + 1] + t * (2 * cubic[at + 2] + t * 3 * cubic[at + 3]);
    double dryness = 1 / (1 + q(i, t));
    return slope * dryness * dryness;
  }

  private double q(int interval, double t) {
    int at = PER_INTERVAL * interval;
    return cubic[at] + t * (cubic[at + 1] + t * (cubic[at + 2] + t * cubic[at + 3]));
  }
}
