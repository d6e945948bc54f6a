package starchfilm.learning;

import java.util.Arrays;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;

/** A normal distribution of the fitted factors' deviations. */
record Normal(RealVector mean, RealMatrix covariance) {
  /** Added in squares to every deviation, so that one known exactly does not stop the factoring. */
  private static final double TINY_SD = 1e-7;

  /** From a precision and the pull on the mean. */
  static Normal of(RealMatrix precision, RealVector pull) {
    RealMatrix inverse = new CholeskyDecomposition(symmetric(precision)).getSolver().getInverse();
    return new Normal(inverse.operate(pull), inverse);
  }

  /** This distribution with independent variances added. */
  Normal widened(double[] variances) {
    return new Normal(mean, covariance.add(MatrixUtils.createRealDiagonalMatrix(variances)));
  }

  double sd(int index) {
    return Math.sqrt(Math.max(0, covariance.getEntry(index, index)));
  }

  /** The lower triangle whose product with its transpose is the covariance. */
  RealMatrix lower() {
    double[] tiny = new double[mean.getDimension()];
    Arrays.fill(tiny, TINY_SD * TINY_SD);
    return new CholeskyDecomposition(symmetric(widened(tiny).covariance), 1e-9, 0).getL();
  }

  /**
   * As the forecast takes it.
   *
   * @param unfittedVariances of the factors that are not fitted, which are independent of the rest
   */
  ParameterDistribution model(double... unfittedVariances) {
    int all = UncertainParameter.values().length;
    RealMatrix matrix = MatrixUtils.createRealMatrix(all, all);
    matrix.setSubMatrix(symmetric(covariance).getData(), 0, 0);
    for (int i = 0; i < unfittedVariances.length; i++) {
      int unfitted = mean.getDimension() + i;
      matrix.setEntry(unfitted, unfitted, unfittedVariances[i]);
    }
    return ParameterDistribution.learnt(Arrays.copyOf(mean.toArray(), all), matrix.getData());
  }

  /** A matrix without the unevenness that rounding leaves between its halves. */
  static RealMatrix symmetric(RealMatrix matrix) {
    return matrix.add(matrix.transpose()).scalarMultiply(0.5);
  }
}
