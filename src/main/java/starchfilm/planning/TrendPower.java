package starchfilm.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import starchfilm.casting.Casting;
import starchfilm.drying.DryingForecaster;
import starchfilm.film.FilmProperty;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * The chance that a trend over the groups of a series shows against the scatter of single plates.
 *
 * <p>A straight line is drawn through the logarithm of what is measured, and the slope is tested
 * against none, two-sided at 5 %. Its chance to show is
 *
 * <p>{@code P(|T| > t(0.975, df))}, T noncentral t with df = N - 2 and {@code delta = slope
 * sqrt(sum (x - mean)^2) / sd}
 *
 * <p>N: plates in all; x: the values; slope: of the forecast's middle; sd: scatter of the logarithm
 * between plates that are meant to be the same.
 *
 * @param what what is measured
 * @param first its forecast in the group with the least value, in SI units
 * @param last its forecast in the group with the greatest value
 * @param logSd scatter of its logarithm between plates
 * @param chance how likely the trend shows, 0 to 1
 * @param platesForEighty the fewest plates a group with which it shows in 80 of 100 series; 0 where
 *     {@value #MOST_PLATES} are too few
 */
public record TrendPower(
    MeasuredResponse what,
    double first,
    double last,
    double logSd,
    double chance,
    int platesForEighty) {
  /** A figure that can be measured of a plate. */
  public enum MeasuredResponse {
    /** Time until the thick spot is dry through. */
    DRY_THROUGH,
    /** Stretch at break. */
    STRETCH,
    /** Tensile strength. */
    STRENGTH;

    /** The middle of its forecast, in its SI unit; not a number where it is not to be stated. */
    private double middle(PlannedRecipe recipe) {
      return switch (this) {
        case DRY_THROUGH -> recipe.drying().dryThroughS().middle();
        case STRETCH -> recipe.film().stated(FilmProperty.ELONGATION);
        case STRENGTH -> recipe.film().stated(FilmProperty.TENSILE_STRENGTH);
      };
    }
  }

  /** The source of the calculation. */
  public static final Source SOURCE =
      new Source(
          "power of the t test of a slope: Draper and Smith 1998, Applied Regression Analysis, 3rd"
              + " ed., section 1.4; noncentral t: Johnson, Kotz and Balakrishnan 1995, Continuous"
              + " Univariate Distributions, vol. 2, chapter 31",
          Check.RECALLED);

  /** More plates a group are not looked at. */
  static final int MOST_PLATES = 20;

  private static final double LEVEL = 0.05;
  private static final double TAIL = 1e-9;
  private static final double ACCURACY = 1e-6;
  private static final int LEAST_HALVINGS = 6;
  private static final int MOST_HALVINGS = 16;
  private static final double USUALLY_ENOUGH = 0.8;
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** What of a series will show: each thing that is forecast in every group. */
  static List<TrendPower> of(
      SeriesRequest series, List<Series.Group> groups, PlateScatter scatter) {
    Casting middle = groups.get(groups.size() / 2).recipe().casting();
    Band own =
        new DryingForecaster(scatter.drying(), DryingForecaster.DRAWS)
            .forecast(middle)
            .dryThroughS();
    double dryLogSd = Math.log(own.high() / own.low()) / (2 * Band.Z90);
    List<TrendPower> shows = new ArrayList<>();
    for (MeasuredResponse what : MeasuredResponse.values()) {
      double logSd =
          switch (what) {
            case DRY_THROUGH -> dryLogSd;
            case STRETCH -> scatter.stretchLogSd();
            case STRENGTH -> scatter.strengthLogSd();
          };
      List<Double> middles = groups.stream().map(group -> what.middle(group.recipe())).toList();
      List<Double> weighed = groups.stream().map(Series.Group::weighed).toList();
      boolean varies = weighed.stream().distinct().count() > 1;
      if (varies
          && logSd > 0
          && Double.isFinite(logSd)
          && middles.stream().allMatch(figure -> figure > 0 && Double.isFinite(figure))) {
        shows.add(of(what, weighed, middles, logSd, series.platesEach()));
      }
    }
    return shows;
  }

  /**
   * The power of a series.
   *
   * @param values value of each group, at least two
   * @param middles its forecast in each group, above 0
   * @param logSd scatter of its logarithm between plates, above 0
   */
  static TrendPower of(
      MeasuredResponse what,
      List<Double> values,
      List<Double> middles,
      double logSd,
      int platesEach) {
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < values.size(); i++) {
      line.addData(values.get(i), Math.log(middles.get(i)));
    }
    double onePlateEach = Math.abs(line.getSlope()) * Math.sqrt(line.getXSumSquares()) / logSd;
    int enough = 0;
    for (int plates = 1; plates <= MOST_PLATES && enough == 0; plates++) {
      enough = chance(onePlateEach, values.size(), plates) >= USUALLY_ENOUGH ? plates : 0;
    }
    return new TrendPower(
        what,
        middles.get(values.indexOf(Collections.min(values))),
        middles.get(values.indexOf(Collections.max(values))),
        logSd,
        chance(onePlateEach, values.size(), platesEach),
        enough);
  }

  private static double chance(double onePlateEach, int groups, int platesEach) {
    int freedom = groups * platesEach - 2;
    return freedom < 1 ? 0 : chance(onePlateEach * Math.sqrt(platesEach), freedom);
  }

  /**
   * The chance that a two-sided t test at 5 % shows an effect.
   *
   * @param delta noncentrality, 0 or more
   * @param freedom degrees of freedom, at least 1
   * @return 0.05 for no effect, up to 1
   */
  static double chance(double delta, int freedom) {
    double critical = new TDistribution(null, freedom).inverseCumulativeProbability(1 - LEVEL / 2);
    ChiSquaredDistribution spread = new ChiSquaredDistribution(null, freedom);
    // Over the root of the spread, where its density has no pole.
    double from = Math.max(1e-6, Math.sqrt(spread.inverseCumulativeProbability(TAIL)));
    double to = Math.sqrt(spread.inverseCumulativeProbability(1 - TAIL));
    return new SimpsonIntegrator(ACCURACY, ACCURACY, LEAST_HALVINGS, MOST_HALVINGS)
        .integrate(
            1 << MOST_HALVINGS,
            root -> {
              double limit = critical * root / Math.sqrt(freedom);
              double beyond =
                  NORMAL.cumulativeProbability(delta - limit)
                      + NORMAL.cumulativeProbability(-limit - delta);
              return beyond * spread.density(root * root) * 2 * root;
            },
            from,
            to);
  }
}
