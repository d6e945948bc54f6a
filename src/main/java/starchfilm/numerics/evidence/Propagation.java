package starchfilm.numerics.evidence;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * What the uncertainty of several figures makes of a result.
 *
 * <p>{@code u^2(y) = sum (dy/dx_i)^2 u^2(x_i)}, the slopes by central differences of a tenth of
 * each figure's own uncertainty; all figures taken as independent. Source: JCGM 100:2008 (GUM),
 * 5.1.2 equation 10 and 5.1.3 note 2 (recalled).
 */
public final class Propagation {
  private static final double STEP_IN_SD = 0.1;

  private Propagation() {}

  /**
   * The result with its standard uncertainty, to first order.
   *
   * @param result the result as a function of the figures, in their order
   * @param figures the figures
   * @return the result at the best values
   */
  public static Estimate firstOrder(ToDoubleFunction<double[]> result, Estimate... figures) {
    double[] values = Arrays.stream(figures).mapToDouble(Estimate::value).toArray();
    double variance = 0;
    for (int i = 0; i < figures.length; i++) {
      if (figures[i].sd() > 0) {
        double step = STEP_IN_SD * figures[i].sd();
        double rise =
            result.applyAsDouble(moved(values, i, step))
                - result.applyAsDouble(moved(values, i, -step));
        double part = rise / (2 * STEP_IN_SD);
        variance += part * part;
      }
    }
    return new Estimate(result.applyAsDouble(values.clone()), Math.sqrt(variance));
  }

  private static double[] moved(double[] values, int index, double step) {
    double[] copy = values.clone();
    copy[index] += step;
    return copy;
  }
}
