package starchfilm.drying.uncertainty;

import java.util.Arrays;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.util.MathArrays;

/**
 * What is known of the factors together: a normal distribution of their deviations, from which
 * likely cases are drawn.
 *
 * <p>The draws are a Sobol sequence shifted by fixed amounts modulo 1 (Cranley and Patterson 1976,
 * SIAM J. Numer. Anal. 13:904, recalled), put through the inverse normal distribution: the same
 * count gives the same draws on every machine. Immutable.
 */
public final class ParameterDistribution {
  private static final int COUNT = UncertainParameter.values().length;

  /** Added to the diagonal so that a factor without spread does not stop the factoring. */
  private static final double TINY_VARIANCE = 1e-18;

  /**
   * Steps of the shift: multiples of the golden ratio modulo 1, far from the sequence's lattice.
   */
  private static final double SHIFT = 0.618033988749895;

  /** A factor with less of a spread of its own has none, or follows from the others. */
  private static final double LEAST_OWN_SD = 1e-6;

  private final double[] mean;
  private final double[][] lower;

  private ParameterDistribution(double[] mean, double[][] lower) {
    this.mean = mean;
    this.lower = lower;
  }

  /**
   * The factors before anything is learnt: independent, each with its own spread.
   *
   * @return the model
   */
  public static ParameterDistribution textbook() {
    double[][] lower = new double[COUNT][COUNT];
    for (UncertainParameter factor : UncertainParameter.values()) {
      lower[factor.ordinal()][factor.ordinal()] = factor.spread();
    }
    return new ParameterDistribution(new double[COUNT], lower);
  }

  /**
   * The factors after something was learnt.
   *
   * @param mean the most likely deviations, in the order of {@link UncertainParameter}
   * @param covariance their covariance, symmetric and not negative
   * @return the model
   */
  public static ParameterDistribution learnt(double[] mean, double[][] covariance) {
    RealMatrix padded = new Array2DRowRealMatrix(covariance);
    for (int i = 0; i < COUNT; i++) {
      padded.addToEntry(i, i, TINY_VARIANCE);
    }
    double[][] lower = new CholeskyDecomposition(padded, 1e-9, 1e-30).getL().getData();
    return new ParameterDistribution(mean.clone(), lower);
  }

  /**
   * This model with more uncertainty in one factor, independent of the rest.
   *
   * @param factor which
   * @param sd standard deviation to add in squares, in the factor's deviation
   * @return the widened model
   */
  public ParameterDistribution widened(UncertainParameter factor, double sd) {
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
  public ParameterSample mean() {
    return ParameterSample.of(mean);
  }

  /**
   * Standard deviation of one factor.
   *
   * @param factor which
   * @return in the factor's deviation
   */
  public double sd(UncertainParameter factor) {
    return norm(lower[factor.ordinal()]);
  }

  /**
   * Covariance of the deviations.
   *
   * @return a new matrix in the order of {@link UncertainParameter}
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
   * The most likely case with one independent part after the other moved: what an outcome's slopes
   * are found with.
   *
   * @param sds by how many of its standard deviations a part is moved
   * @return one case a part, in the order {@link #points(int, double[])} takes the slopes in; that
   *     of a part which moves no factor is {@link #mean}
   */
  public ParameterSample[] steps(double sds) {
    ParameterSample[] steps = new ParameterSample[COUNT];
    for (int k = 0; k < COUNT; k++) {
      int part = k;
      double[] z = new double[COUNT];
      z[k] = sds;
      boolean moves = Arrays.stream(lower).anyMatch(row -> Math.abs(row[part]) > LEAST_OWN_SD);
      steps[k] = moves ? at(z) : mean();
    }
    return steps;
  }

  /**
   * How an outcome changes with each factor alone, from its slopes along the parts: those are what
   * the factors do together that a part moves, so the last factor's is known first.
   *
   * @param slopes how the outcome changes with each of the parts of {@link #steps}, a standard
   *     deviation each
   * @return the change a standard deviation of each factor; 0 of one without spread, and of one
   *     that the others determine
   */
  public double[] perFactor(double[] slopes) {
    double[] alone = new double[COUNT];
    for (int k = COUNT - 1; k >= 0; k--) {
      double rest = slopes[k];
      for (int i = k + 1; i < COUNT; i++) {
        rest -= lower[i][k] * alone[i];
      }
      alone[k] = lower[k][k] > LEAST_OWN_SD ? rest / lower[k][k] : 0;
    }
    for (int k = 0; k < COUNT; k++) {
      alone[k] *= norm(lower[k]);
    }
    return alone;
  }

  /**
   * Where likely cases for no outcome in particular stand.
   *
   * @param count how many, at least 1
   * @return independent standard normal parts, a row a case, for {@link #at}
   */
  public double[][] points(int count) {
    double[] first = new double[COUNT];
    first[0] = 1;
    return points(count, first);
  }

  /**
   * Where likely cases stand that meet the range of one outcome well: the sequence's first
   * coordinate, which stands in the middles of equal shares, runs along the outcome's slope, so
   * that a few dozen cases give its 10, 50 and 90 % points as well as hundreds would. Source: Imai
   * and Tan 2006, J. Comput. Finance 10:129, the linear transformation (recalled); here by one
   * reflection.
   *
   * @param count how many, at least 1
   * @param slopes how the outcome changes with each of the parts of {@link #steps}, a standard
   *     deviation each; finite and not all 0
   * @return independent standard normal parts, a row a case, always the same for the same arguments
   */
  public double[][] points(int count, double[] slopes) {
    double[] mirror = mirror(slopes);
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(COUNT);
    double[][] points = Stream.generate(sobol::nextVector).limit(count).toArray(double[][]::new);
    double[] firsts = Arrays.stream(points).mapToDouble(point -> point[0]).sorted().toArray();
    NormalDistribution normal = new NormalDistribution(null, 0, 1);
    for (double[] z : points) {
      for (int k = 0; k < COUNT; k++) {
        double share =
            k == 0 ? (Arrays.binarySearch(firsts, z[0]) + 0.5) / count : (z[k] + k * SHIFT) % 1;
        z[k] = normal.inverseCumulativeProbability(Math.min(1 - 1e-9, Math.max(1e-9, share)));
      }
    }
    if (count > COUNT + 1) {
      matchMoments(points);
    }
    for (double[] z : points) {
      double across = MathArrays.linearCombination(z, mirror);
      for (int k = 0; k < COUNT; k++) {
        z[k] -= 2 * across * mirror[k];
      }
    }
    return points;
  }

  /**
   * Gives each part but the first the mean 0, the variance 1 and no correlation with those before,
   * so that what lies across the slope shifts no quantile to one side: without it a range takes
   * twice the cases (tried with 24 and 48). Source: moment matching, Barraquand 1995, Management
   * Science 41:1882 (recalled); here by Gram and Schmidt's steps.
   */
  private static void matchMoments(double[][] points) {
    for (int k = 1; k < COUNT; k++) {
      int part = k;
      double mean = Arrays.stream(points).mapToDouble(z -> z[part]).average().orElseThrow();
      for (double[] z : points) {
        z[k] -= mean;
      }
      for (int before = 0; before < k; before++) {
        double share = product(points, before, k) / product(points, before, before);
        for (double[] z : points) {
          z[k] -= share * z[before];
        }
      }
      double scale = Math.sqrt(points.length / product(points, k, k));
      for (double[] z : points) {
        z[k] *= scale;
      }
    }
  }

  private static double product(double[][] points, int one, int other) {
    double sum = 0;
    for (double[] z : points) {
      sum += z[one] * z[other];
    }
    return sum;
  }

  /**
   * The normal of the plane that mirrors the first axis onto a direction; 0 where it lies there.
   */
  private static double[] mirror(double[] direction) {
    double length = norm(direction);
    double[] mirror = new double[COUNT];
    for (int k = 0; k < COUNT; k++) {
      mirror[k] = (k == 0 ? 1 : 0) - direction[k] / length;
    }
    double across = norm(mirror);
    for (int k = 0; k < COUNT && across > 0; k++) {
      mirror[k] /= across;
    }
    return mirror;
  }

  private static double norm(double[] vector) {
    double sum = 0;
    for (double part : vector) {
      sum += part * part;
    }
    return Math.sqrt(sum);
  }

  /**
   * One case.
   *
   * @param z independent standard normal parts
   * @return the case there
   */
  public ParameterSample at(double[] z) {
    double[] values = mean.clone();
    for (int i = 0; i < COUNT; i++) {
      for (int k = 0; k <= i; k++) {
        values[i] += lower[i][k] * z[k];
      }
    }
    return ParameterSample.of(values);
  }
}
