package starchfilm.planning;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;
import starchfilm.drying.DryingCase;
import starchfilm.drying.ReadyTimes;
import starchfilm.drying.Spot;

/**
 * Finds the wet thickness whose thick spot is ready by a moment in a given share of the likely
 * cases, by Brent's method on the real forecast.
 *
 * <p>Every thickness is forecast in the same likely cases, so the time by which a share of them is
 * ready rises smoothly with the thickness; {@code ln t} is nearly a straight line in {@code ln h},
 * which is what the root is sought in. Forecasts are kept: a second share costs few new ones. For
 * one thread.
 */
final class ThicknessRoot {
  /** Thinnest and thickest pour that is looked at (m). */
  static final double THINNEST_M = 0.1e-3;

  static final double THICKEST_M = 25e-3;

  /** First reach (log) of the bracket. */
  private static final double FIRST_STEP = 0.35;

  /** The same where the root is known to be near. */
  private static final double NEAR_STEP = 0.03;

  private static final double ACCURACY = 1e-3;
  private static final int EVALUATIONS = 60;

  /** The logarithm (of s) that stands for never. */
  private static final double NEVER_LOG = 30;

  private final ReadyTimes times;
  private final DoubleFunction<DryingCase> pouredAt;
  private final Map<Double, double[]> known = new HashMap<>();

  ThicknessRoot(ReadyTimes times, DoubleFunction<DryingCase> pouredAt) {
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
    if (logReady(Math.log(THINNEST_M), sure) > Math.log(byS)) {
      return OptionalDouble.empty();
    }
    return thickest(byS, sure, guess(Math.log(byS)), FIRST_STEP);
  }

  /**
   * The same where it is known to lie near a thickness.
   *
   * @param nearM that thickness (m)
   */
  OptionalDouble thickest(double byS, double sure, double nearM) {
    return thickest(byS, sure, Math.log(nearM), NEAR_STEP);
  }

  private OptionalDouble thickest(double byS, double sure, double nearLogM, double firstStep) {
    double target = Math.log(byS);
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

  /** Where the middle case would be ready if time went with thickness as near the thinnest. */
  private double guess(double target) {
    double reference = Math.log(2e-3);
    double logReady = logReady(reference, 0.5);
    return logReady >= NEVER_LOG ? reference : reference + (target - logReady);
  }

  /** Logarithm of the time (s) by which a share of the likely cases is ready. */
  private double logReady(double logM, double sure) {
    double[] ready =
        known.computeIfAbsent(
            logM, log -> times.of(pouredAt.apply(Math.exp(log)), Spot.THICK_SPOT));
    double[] logs =
        Arrays.stream(ready)
            .map(time -> Double.isInfinite(time) ? NEVER_LOG : Math.log(time))
            .toArray();
    return new Percentile(100 * sure)
        .withEstimationType(Percentile.EstimationType.R_7)
        .evaluate(logs);
  }
}
