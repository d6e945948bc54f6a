package starchfilm.planning;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.Quantiles;

/**
 * Finds the wet thickness whose thick spot is ready by a moment in a given share of the likely
 * cases, by Brent's method on the real forecast.
 *
 * <p>Every thickness is forecast in much the same likely cases, so the time by which a share of
 * them is ready rises smoothly with the thickness; {@code ln t} is nearly a straight line in {@code
 * ln h}, which is what the root is sought in. Forecasts are kept: a second share costs few new
 * ones. For one thread.
 */
final class ThicknessRoot {
  /** Thinnest and thickest pour that is looked at (m). */
  static final double THINNEST_M = 0.1e-3;

  static final double THICKEST_M = 25e-3;

  /** The first pour that is looked at: 2 mm. */
  private static final double FIRST_LOG_M = Math.log(2e-3);

  /** How {@code ln t} usually rises with {@code ln h}; a guess that only saves forecasts. */
  private static final double USUAL_SLOPE = 1.1;

  /** First reach (log) of the bracket: a share of how far away the nearest known forecast is. */
  private static final double STEP_SHARE = 0.15;

  private static final double NEAR_STEP = 0.03;
  private static final double MOST_STEP = 0.4;

  private static final double ACCURACY = 2e-3;
  private static final int EVALUATIONS = 60;

  /** The logarithm (of s) that stands for never. */
  private static final double NEVER_LOG = 30;

  private final DryingForecaster times;
  private final DoubleFunction<Casting> pouredAt;
  private final Map<Double, double[]> known = new TreeMap<>();

  ThicknessRoot(DryingForecaster times, DoubleFunction<Casting> pouredAt) {
    this.times = times;
    this.pouredAt = pouredAt;
  }

  /**
   * The thickest pour that is ready.
   *
   * @param byS the moment (s after the pour)
   * @param sure share of the likely cases, above 0 and below 1
   * @return wet thickness (m); empty where not even {@link #THINNEST_M} is ready, and {@link
   *     #THICKEST_M} where even that is
   */
  OptionalDouble thickest(double byS, double sure) {
    double target = Math.log(byS);
    if (known.isEmpty()) {
      logReady(FIRST_LOG_M, sure);
    }
    double start = Math.log(THINNEST_M);
    double miss = Double.POSITIVE_INFINITY;
    for (double wetM : List.copyOf(known.keySet())) {
      double logM = Math.log(wetM);
      double logReady = logReady(logM, sure);
      if (logReady < NEVER_LOG && Math.abs(target - logReady) < Math.abs(miss)) {
        miss = target - logReady;
        start = logM + miss / USUAL_SLOPE;
      }
    }
    double step = Math.max(NEAR_STEP, Math.min(MOST_STEP, STEP_SHARE * Math.abs(miss)));
    return thickest(target, sure, start, step);
  }

  private OptionalDouble thickest(double target, double sure, double nearLogM, double firstStep) {
    double low = Math.log(THINNEST_M);
    double high = Math.log(THICKEST_M);
    // A bracket about the guess saves forecasts of very thick pours, which take longest.
    double start = Math.min(high, Math.max(low, nearLogM));
    double step = firstStep;
    double below = Math.max(low, start - step);
    while (logReady(below, sure) > target) {
      if (below == low) {
        return OptionalDouble.empty();
      }
      step *= 2;
      below = Math.max(low, below - step);
    }
    double above = Math.min(high, below + 2 * step);
    while (above < high && logReady(above, sure) <= target) {
      below = above;
      above = Math.min(high, above + step);
    }
    if (logReady(above, sure) <= target) {
      return OptionalDouble.of(THICKEST_M);
    }
    double root =
        new BrentSolver(ACCURACY)
            .solve(EVALUATIONS, logM -> logReady(logM, sure) - target, below, above);
    return OptionalDouble.of(Math.exp(root));
  }

  /**
   * When a pour is ready.
   *
   * @param wetM its thickness (m)
   * @return as {@link DryingForecaster#readyS}; without a new forecast where it was just found
   */
  double[] ready(double wetM) {
    return known.computeIfAbsent(wetM, m -> times.readyS(pouredAt.apply(m), Spot.THICK_SPOT));
  }

  /** Logarithm of the time (s) by which a share of the likely cases is ready. */
  private double logReady(double logM, double sure) {
    return Quantiles.of(
        Arrays.stream(ready(Math.exp(logM)))
            .map(time -> Double.isInfinite(time) ? NEVER_LOG : Math.log(time))
            .toArray(),
        sure);
  }
}
