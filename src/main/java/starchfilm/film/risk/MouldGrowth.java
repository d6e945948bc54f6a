package starchfilm.film.risk;

import java.util.Arrays;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.units.Units;

/**
 * How fast mould gets going on a rich medium, against its fastest.
 *
 * <p>Days to germination at 20 to 25 C: 1 at a water activity of 0.95 and above, 2 at 0.90, 4 at
 * 0.85, 8 at 0.80, 16 at 0.76; between them the logarithm is interpolated, and below 0.75 a paste
 * is taken as safe. Cold slows it by a factor of 2.5 in 10 K below 22 C (judged), above 22 C
 * nothing is gained, and from 45 C on nothing is counted.
 *
 * <p><em>Source</em>: Sedlbauer 2001, Prediction of mould fungus formation on the surface of and
 * inside building components, dissertation, Stuttgart, isopleth of the optimum medium (recalled);
 * lower limits of moulds: Beuchat 1981, Cereal Foods World 26:345 (read in a copy).
 */
final class MouldGrowth {
  /** Where the speeds come from. */
  static final Source SOURCE =
      new Source(
          "mould: Sedlbauer 2001, Prediction of mould fungus formation on the surface of and inside"
              + " building components, isopleth of the optimum medium; limits of growth: Beuchat"
              + " 1981, Cereal Foods World 26:345",
          Check.RECALLED);

  /** What acid does. */
  static final Source ACID_SOURCE =
      new Source(
          "acetic acid preserves food at 0.5 to 1 %: mould half as fast per 0.3 % of the water,"
              + " judged",
          Check.JUDGED);

  private static final double HALVES_PER_ACID = 0.003;

  private static final double[] ACTIVITY = {0.75, 0.76, 0.80, 0.85, 0.90, 0.95};
  private static final double[] DAYS = {18, 16, 8, 4, 2, 1};
  private static final double FULL_SPEED_C = 22;
  private static final double TOO_HOT_C = 45;
  private static final double FACTOR_PER_10_K = 2.5;

  private final PolynomialSplineFunction logDays;

  MouldGrowth() {
    double[] logs = Arrays.stream(DAYS).map(Math::log).toArray();
    logDays = new LinearInterpolator().interpolate(ACTIVITY, logs);
  }

  /**
   * Speed of germination against the fastest.
   *
   * @param activity water activity (ratio, 0 to 1)
   * @param temperatureK temperature (K)
   * @return 0 to 1
   */
  double speed(double activity, double temperatureK) {
    double celsius = temperatureK - Units.ZERO_CELSIUS_K;
    if (activity < ACTIVITY[0] || celsius >= TOO_HOT_C) {
      return 0;
    }
    double days = Math.exp(logDays.value(Math.min(activity, ACTIVITY[ACTIVITY.length - 1])));
    double cold = Math.pow(FACTOR_PER_10_K, Math.min(0, celsius - FULL_SPEED_C) / 10);
    return cold / days;
  }

  /**
   * How the vinegar slows it: by half per 0.3 % acetic acid in the water (judged). At the pH of a
   * paste with vinegar nearly all of the acid is undissociated, which is what preserves, and it
   * leaves with the water, so its share of the water lasts.
   *
   * @param composition the paste
   * @return factor on the speed, above 0 to 1
   */
  static double slowedBy(Composition composition) {
    double liquid = composition.water() + composition.aceticAcid();
    double acid = liquid > 0 ? composition.aceticAcid() / liquid : 0;
    return Math.pow(2, -acid / HALVES_PER_ACID);
  }
}
