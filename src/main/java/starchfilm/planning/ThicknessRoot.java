package starchfilm.planning;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.UnivariateFunction;
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

  /** How far (log) about that guess the root is looked for first: thick pours take longest. */
  private static final double REACH = 0.15;

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
    double thinnest = Math.log(THINNEST_M);
    double thickest = Math.log(THICKEST_M);
    UnivariateFunction late = logM -> logReady(logM, sure) - Math.log(byS);
    double guess = FIRST_LOG_M - late.value(FIRST_LOG_M) / USUAL_SLOPE;
    double low = Math.max(thinnest, guess - REACH);
    double below = low < thickest && late.value(low) <= 0 ? low : thinnest;
    double high = Math.min(thickest, guess + REACH);
    double above = high > below && late.value(high) > 0 ? high : thickest;
    if (late.value(below) > 0) {
      return OptionalDouble.empty();
    }
    if (late.value(above) <= 0) {
      return OptionalDouble.of(THICKEST_M);
    }
    return OptionalDouble.of(
        Math.exp(new BrentSolver(ACCURACY).solve(EVALUATIONS, late, below, above)));
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
