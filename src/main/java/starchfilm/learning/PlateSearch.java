package starchfilm.learning;

import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresFactory;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem.Evaluation;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ParameterValidator;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.optim.ConvergenceChecker;
import org.apache.commons.math3.util.Pair;

/**
 * Searches the most likely deviations of one plate.
 *
 * <p>Minimises {@code sum w_i (m_i - f_i)^2/sigma_i^2 + z' z}, m the noted and f the expected
 * masses, z the deviations counted in the prior's own standard deviations ({@code mean + L z}, L L'
 * the prior's covariance), by Levenberg and Marquardt's method. A reading far off counts less:
 * {@code w = (nu + 1)/(nu + r^2)}, r its distance in sigmas and nu = 4, which is Student's t by
 * reweighting (Lange, Little and Taylor 1989, J. Am. Stat. Assoc. 84:881, recalled). A first search
 * begins by Huber's rule, {@code w = min(1, 1.345/|r|)} (Huber 1964, Ann. Math. Stat. 35:73,
 * recalled), which no single reading can pull far, and so finds the crowd of readings first.
 */
final class PlateSearch {
  private static final double STUDENT_FREEDOM = 4;
  private static final double HUBER_TUNING = 1.345;
  private static final int HUBER_ROUNDS = 4;
  private static final int MOST_ROUNDS = 100;
  private static final double SETTLED_WEIGHT = 0.02;

  /** No deviation may go further than this many of the prior's standard deviations. */
  private static final double FARTHEST = 8;

  private static final int MOST_EVALUATIONS = 200;
  private static final int MOST_ITERATIONS = 50;
  private static final int ENOUGH_ITERATIONS = 25;

  /** A step that lowers the sum of squares by less than this gains nothing that could be seen. */
  private static final double NOTHING_GAINED = 0.01;

  /** Nor does one that could not lower it by more than this share of it. */
  private static final double NOTHING_GAINED_SHARE = 1e-3;

  /*
   * Constants, because plates are fitted at the same time: where two threads link one lambda of an
   * interface as old as the library's, Java 17 crashes when it archives the classes (first start).
   */
  private static final UnivariateFunction NEAREST = z -> Math.max(-FARTHEST, Math.min(FARTHEST, z));
  private static final ParameterValidator BOX = point -> point.map(NEAREST);

  /** Whoever is still moving then goes on in the next round of reweighting. */
  private static final ConvergenceChecker<Evaluation> ENOUGH =
      (round, last, next) ->
          round >= ENOUGH_ITERATIONS
              || Math.abs(square(last.getCost()) - square(next.getCost())) < NOTHING_GAINED;

  private final PlateReadings readings;
  private final RealVector mean;
  private final RealMatrix lower;

  PlateSearch(PlateReadings readings, Normal prior) {
    this.readings = readings;
    this.mean = prior.mean();
    this.lower = prior.lower();
  }

  PlateFit from(RealVector start, RealVector startWeights, boolean first) {
    RealVector z = new LUDecomposition(lower, 0).getSolver().solve(start.subtract(mean));
    RealVector weights = startWeights.copy();
    int huberRounds = first ? HUBER_ROUNDS : 0;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      z = leastSquares(z, weights);
      boolean huber = round < huberRounds;
      RealVector next = weights(z, weights, huber);
      if (huber && next.subtract(weights).getLInfNorm() < SETTLED_WEIGHT) {
        huberRounds = round;
        huber = false;
        next = weights(z, weights, false);
      }
      double change = next.subtract(weights).getLInfNorm();
      weights = next;
      if (change < SETTLED_WEIGHT && !huber) {
        return at(z, weights);
      }
    }
    throw new UnsettledFitException(
        "after %s rounds it is still open which weighings to trust; check them for a slip of the pen"
            .formatted(MOST_ROUNDS));
  }

  private double[] deviations(RealVector z) {
    return mean.add(lower.operate(z)).toArray();
  }

  /** What each reading is multiplied by, a diagonal matrix. */
  private RealMatrix scales(RealVector weights) {
    return MatrixUtils.createRealDiagonalMatrix(
        IntStream.range(0, readings.count())
            .mapToDouble(i -> Math.sqrt(weights.getEntry(i)) / readings.get(i).sdKg())
            .toArray());
  }

  private RealVector weights(RealVector z, RealVector before, boolean huber) {
    double[] misses = readings.missesKg(deviations(z), before);
    RealVector weights = new ArrayRealVector(misses.length, 1);
    for (int i = 0; i < misses.length; i++) {
      if (readings.get(i).trusted()) {
        continue;
      }
      double r = Math.abs(misses[i]) / readings.get(i).sdKg();
      weights.setEntry(
          i,
          huber
              ? Math.min(1, HUBER_TUNING / r)
              : (STUDENT_FREEDOM + 1) / (STUDENT_FREEDOM + r * r));
    }
    return weights;
  }

  private RealVector leastSquares(RealVector start, RealVector weights) {
    int count = readings.count();
    RealVector target = new ArrayRealVector(count + VarianceShares.COUNT);
    try {
      return new LevenbergMarquardtOptimizer()
          .withCostRelativeTolerance(NOTHING_GAINED_SHARE)
          .optimize(
              LeastSquaresFactory.create(
                  new Expected(weights),
                  target,
                  start,
                  null,
                  ENOUGH,
                  MOST_EVALUATIONS,
                  MOST_ITERATIONS,
                  true,
                  BOX))
          .getPoint();
    } catch (MathIllegalStateException e) {
      throw new UnsettledFitException(
          "no drying of this plate fits its weighings; check their times and masses, and the tare");
    }
  }

  private static double square(double value) {
    return value * value;
  }

  private PlateFit at(RealVector z, RealVector weights) {
    double[] deviations = deviations(z);
    RealVector residuals = new ArrayRealVector(readings.missesKg(deviations, weights), false);
    RealMatrix slopes = readings.centredSlopes(deviations, weights);
    RealMatrix scales = scales(weights);
    RealMatrix weighted = scales.multiply(scales).multiply(slopes);
    return new PlateFit(
        new ArrayRealVector(deviations),
        Normal.symmetric(slopes.transpose().multiply(weighted)),
        weighted.transpose().operate(residuals),
        weights,
        residuals);
  }

  /** What least squares brings to 0: expected less noted masses, scaled, and z. */
  private final class Expected implements ValueAndJacobianFunction {
    private final RealVector weights;

    Expected(RealVector weights) {
      this.weights = weights;
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
      return new Pair<>(computeValue(point.toArray()), computeJacobian(point.toArray()));
    }

    @Override
    public RealVector computeValue(double[] point) {
      double[] misses = readings.missesKg(deviations(new ArrayRealVector(point, false)), weights);
      RealVector scaled = scales(weights).operate(new ArrayRealVector(misses, false));
      return scaled.mapMultiply(-1).append(new ArrayRealVector(point, false));
    }

    @Override
    public RealMatrix computeJacobian(double[] point) {
      RealMatrix slopes =
          readings.centredSlopes(deviations(new ArrayRealVector(point, false)), weights);
      int count = readings.count();
      RealMatrix jacobian = MatrixUtils.createRealMatrix(count + point.length, point.length);
      jacobian.setSubMatrix(scales(weights).multiply(slopes.multiply(lower)).getData(), 0, 0);
      jacobian.setSubMatrix(MatrixUtils.createRealIdentityMatrix(point.length).getData(), count, 0);
      return jacobian;
    }
  }
}
