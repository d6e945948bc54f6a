package starchfilm.drying;

import java.util.Arrays;
import java.util.Iterator;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.apache.commons.math3.util.MathArrays;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * The likely cases of one plate, spread so that the range of its dry-through is met well: along the
 * slope of the logarithm of the thick spot's dry-through, which costs a solve for every factor.
 * Where one step would keep that spot wet for ever, the slope is that of the step back; where it is
 * wet for ever anyway, there is none, and they spread evenly.
 */
final class LikelyCases {
  /** How many neighbours along an outcome's slope a case stands for in its quantiles. */
  private static final int NEIGHBOURS = 8;

  /**
   * How far they lie about it, in standard deviations of where the cases stand along the slope. Of
   * 0.4 to 0.6, 0.5 met the ranges of 64 random plates best with 16 cases; 32 others are met as
   * well.
   */
  private static final double REACH = 0.5;

  /** Keeps the variance along the slope what it was. */
  private static final double SHRUNK = Math.sqrt(1 - REACH * REACH);

  /** How many times the cases where a film may stay soft: its times are those of the rest alone. */
  private static final int UNSURE = 3;

  /**
   * Half the cases do where a standard deviation of all that is open moves dry-through by no more
   * than this share of it: 8 then meet the ends to 1.8 and 3.5 % and the middle to 2.8 %, 16 of
   * twice that spread to 2.3, 3.5 and 2.3 % (44 random plates and 20 in logged rooms).
   */
  private static final double NARROW = 0.14;

  /** The fewest cases a line is put through; judged. */
  private static final int FEWEST = 8;

  private static final int UNEVENNESS = UncertainParameter.UNEVENNESS.ordinal();

  private static final double[] OFFSETS = offsets();

  private final ParameterDistribution model;
  private final SpotSolution middle;
  private final SpotSolution[] forth;
  private final SpotSolution[] back;
  private final double[] slopes;
  private final double[][] points;

  /**
   * As many likely cases as are asked for; half of them where little is open, {@value #UNSURE}
   * times as many where the middle case or a step of a standard deviation from it leaves the thick
   * spot too soft to peel.
   */
  LikelyCases(PreparedCase prepared, ParameterDistribution model, int count) {
    this.model = model;
    this.middle = DryingForecaster.solveOne(prepared, Spot.THICK_SPOT, model.mean());
    this.forth = solved(prepared, model.steps(1));
    this.back =
        Arrays.stream(forth).allMatch(one -> Double.isFinite(one.at(Milestone.DRY_THROUGH)))
            ? forth
            : solved(prepared, model.steps(-1));
    this.slopes = slopes(Spot.THICK_SPOT, one -> one.at(Milestone.DRY_THROUGH));
    boolean firm =
        Stream.concat(Stream.of(middle), Arrays.stream(forth)).noneMatch(one -> one.staysSoft);
    boolean narrow = slopes.length > 0 && norm(slopes) <= NARROW;
    int sure = narrow ? Math.min(count, Math.max(FEWEST, count / 2)) : count;
    int cases = firm ? sure : UNSURE * count;
    this.points = slopes.length == 0 ? model.points(cases) : model.points(cases, slopes);
  }

  /** The thick spot in each case; the middle one is not solved again. */
  private SpotSolution[] solved(PreparedCase prepared, ParameterSample[] cases) {
    ParameterSample mean = model.mean();
    ParameterSample[] others =
        Arrays.stream(cases).filter(one -> !one.equals(mean)).toArray(ParameterSample[]::new);
    Iterator<SpotSolution> solutions =
        Arrays.stream(DryingForecaster.solve(prepared, Spot.THICK_SPOT, others)).iterator();
    return Arrays.stream(cases)
        .map(one -> one.equals(mean) ? middle : solutions.next())
        .toArray(SpotSolution[]::new);
  }

  ParameterSample[] cases() {
    return Arrays.stream(points).map(model::at).toArray(ParameterSample[]::new);
  }

  /**
   * How the logarithm of the thick spot's dry-through changes with each part of the model, a
   * standard deviation each; empty where it is wet for ever.
   */
  double[] slopes() {
    return slopes;
  }

  /**
   * How the logarithm of a time changes with each part of the model, as {@link #slopes()} for
   * another time or spot; empty where it is not known, or nothing changes it.
   */
  private double[] slopes(Spot spot, ToDoubleFunction<SpotSolution> timeS) {
    double middleLog = Math.log(timeS.applyAsDouble(middle));
    double[] found = new double[forth.length];
    for (int k = 0; k < found.length; k++) {
      double step = Math.log(timeS.applyAsDouble(forth[k])) - middleLog;
      found[k] =
          Double.isFinite(step) || back == forth
              ? step
              : middleLog - Math.log(timeS.applyAsDouble(back[k]));
    }
    if (spot == Spot.NOMINAL) {
      found[UNEVENNESS] = 0;
    }
    boolean known =
        Arrays.stream(found).allMatch(Double::isFinite)
            && Arrays.stream(found).anyMatch(slope -> slope != 0);
    return known ? found : new double[0];
  }

  /**
   * Where each case stands along the slope of a time, in standard deviations; empty where that
   * slope is not known, or nothing changes the time. The slope of every spot is taken as that of
   * the thick one; at the average thickness, unevenness does nothing.
   */
  double[] along(Spot spot, ToDoubleFunction<SpotSolution> timeS) {
    double[] direction = slopes(spot, timeS);
    return direction.length == 0
        ? direction
        : Arrays.stream(points)
            .mapToDouble(z -> MathArrays.linearCombination(z, direction) / norm(direction))
            .toArray();
  }

  /**
   * A sample of an outcome from its value in each case, for quantiles and chances: {@value
   * #NEIGHBOURS} neighbours stand for each, moved along the slope by the line that fits the
   * logarithms best, so that few cases give as even a range as many. Source: smoothed bootstrap
   * with shrinkage, Silverman 1986, Density Estimation, section 6.4.1 (recalled), here along one
   * direction alone.
   *
   * @param outcomes of each case: positive, infinite where it never comes, NaN where the case does
   *     not count
   * @param along from {@link #along}; where it is empty, the sample is the outcomes that count
   */
  static double[] sample(double[] outcomes, double[] along) {
    int[] counted =
        IntStream.range(0, outcomes.length).filter(j -> !Double.isNaN(outcomes[j])).toArray();
    double[] given = Arrays.stream(counted).mapToDouble(j -> outcomes[j]).toArray();
    if (along.length == 0) {
      return given;
    }
    double[] where = Arrays.stream(counted).mapToDouble(j -> along[j]).toArray();
    SimpleRegression line = new SimpleRegression();
    for (int i = 0; i < given.length; i++) {
      if (Double.isFinite(given[i])) {
        line.addData(where[i], Math.log(given[i]));
      }
    }
    if (line.getN() < FEWEST) {
      return given;
    }
    double slope = line.getSlope();
    double mean = StatUtils.mean(where);
    double reach = REACH * Math.sqrt(StatUtils.populationVariance(where));
    return IntStream.range(0, given.length * NEIGHBOURS)
        .mapToDouble(
            i -> {
              int one = i / NEIGHBOURS;
              double moved = (SHRUNK - 1) * (where[one] - mean) + reach * OFFSETS[i % NEIGHBOURS];
              return given[one] * Math.exp(slope * moved);
            })
        .toArray();
  }

  private static double norm(double[] vector) {
    return Math.sqrt(MathArrays.linearCombination(vector, vector));
  }

  /** Middles of equal shares of a normal distribution, of variance 1 together. */
  private static double[] offsets() {
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    double[] middles = new double[NEIGHBOURS];
    Arrays.setAll(middles, i -> normal.inverseCumulativeProbability((i + 0.5) / NEIGHBOURS));
    return MathArrays.scale(1 / Math.sqrt(StatUtils.populationVariance(middles)), middles);
  }
}
