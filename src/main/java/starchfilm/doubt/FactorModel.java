package starchfilm.doubt;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * What is known of the factors together: a normal distribution of their deviations, from which
 * likely cases are drawn.
 *
 * <p>The draws are a Sobol sequence shifted by fixed amounts modulo 1 (Cranley and Patterson 1976,
 * SIAM J. Numer. Anal. 13:904, recalled), put through the inverse normal distribution: the same
 * count gives the same draws on every machine. Immutable.
 */
public final class FactorModel {
  private static final int COUNT = Factor.values().length;

  /** Added to the diagonal so that a factor without spread does not stop the factoring. */
  private static final double TINY_VARIANCE = 1e-18;

  /**
   * Steps of the shift: multiples of the golden ratio modulo 1, far from the sequence's lattice.
   */
  private static final double SHIFT = 0.618033988749895;

  private final double[] mean;
  private final double[][] lower;

  private FactorModel(double[] mean, double[][] lower) {
    this.mean = mean;
    this.lower = lower;
  }

  /**
   * The factors before anything is learnt: independent, each with its own spread.
   *
   * @return the model
   */
  public static FactorModel textbook() {
    double[][] lower = new double[COUNT][COUNT];
    for (Factor factor : Factor.values()) {
      lower[factor.ordinal()][factor.ordinal()] = factor.spread();
    }
    return new FactorModel(new double[COUNT], lower);
  }

  /**
   * The factors after something was learnt.
   *
   * @param mean the most likely deviations, in the order of {@link Factor}
   * @param covariance their covariance, symmetric and not negative
   * @return the model
   */
  public static FactorModel learnt(double[] mean, double[][] covariance) {
    RealMatrix padded = new Array2DRowRealMatrix(covariance);
    for (int i = 0; i < COUNT; i++) {
      padded.addToEntry(i, i, TINY_VARIANCE);
    }
    double[][] lower = new CholeskyDecomposition(padded, 1e-9, 1e-30).getL().getData();
    return new FactorModel(mean.clone(), lower);
  }

  /**
   * This model with more uncertainty in one factor, independent of the rest.
   *
   * @param factor which
   * @param sd standard deviation to add in squares, in the factor's deviation
   * @return the widened model
   */
  public FactorModel widened(Factor factor, double sd) {
    if (sd == 0) {
      return this;
    }
    double[][] covariance = covariance();
    covariance[factor.ordinal()][factor.ordinal()] += sd * sd;
    return learnt(mean, covariance);
  }

  /**
   * The most likely deviations.
   *
   * @return the mean of every factor
   */
  public Deviations mean() {
    return Deviations.of(mean);
  }

  /**
   * Standard deviation of one factor.
   *
   * @param factor which
   * @return in the factor's deviation
   */
  public double sd(Factor factor) {
    double sum = 0;
    for (double part : lower[factor.ordinal()]) {
      sum += part * part;
    }
    return Math.sqrt(sum);
  }

  /**
   * Covariance of the deviations.
   *
   * @return a new matrix in the order of {@link Factor}
   */
  public double[][] covariance() {
    double[][] covariance = new double[COUNT][COUNT];
    for (int i = 0; i < COUNT; i++) {
      for (int j = 0; j < COUNT; j++) {
        for (int k = 0; k < COUNT; k++) {
          covariance[i][j] += lower[i][k] * lower[j][k];
        }
      }
    }
    return covariance;
  }

  /**
   * Likely cases.
   *
   * @param count how many, at least 1
   * @return the draws, always the same for the same count and model
   */
  public Deviations[] draws(int count) {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(COUNT);
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    Deviations[] draws = new Deviations[count];
    for (int draw = 0; draw < count; draw++) {
      double[] point = sobol.nextVector();
      double[] z = new double[COUNT];
      for (int k = 0; k < COUNT; k++) {
        double shifted = point[k] + (k + 1) * SHIFT;
        shifted -= Math.floor(shifted);
        z[k] = normal.inverseCumulativeProbability(Math.min(1 - 1e-9, Math.max(1e-9, shifted)));
      }
      double[] values = mean.clone();
      for (int i = 0; i < COUNT; i++) {
        for (int k = 0; k <= i; k++) {
          values[i] += lower[i][k] * z[k];
        }
      }
      draws[draw] = Deviations.of(values);
    }
    return draws;
  }
}
