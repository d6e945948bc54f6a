package starchfilm.learning;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;

/** A normal distribution of the fitted factors' deviations. */
record Normal(RealVector mean, RealMatrix covariance) {
  /** Added in squares to every deviation, so that one known exactly does not stop the factoring. */
  private static final double TINY_SD = 1e-7;

  /** This distribution with independent variances added. */
  Normal widened(double[] variances) {
    RealMatrix wider = covariance.copy();
    for (int i = 0; i < variances.length; i++) {
      wider.addToEntry(i, i, variances[i]);
    }
    return new Normal(mean, wider);
  }

  double sd(int index) {
    return Math.sqrt(Math.max(0, covariance.getEntry(index, index)));
  }

  /** The lower triangle whose product with its transpose is the covariance. */
  RealMatrix lower() {
    RealMatrix padded = symmetric(covariance);
    for (int i = 0; i < padded.getRowDimension(); i++) {
      padded.addToEntry(i, i, TINY_SD * TINY_SD);
    }
    return new CholeskyDecomposition(padded, 1e-9, 0).getL();
  }

  /**
   * As the forecast takes it.
   *
   * @param unfittedVariances of the factors that are not fitted, which are independent of the rest
   */
  ParameterDistribution model(double... unfittedVariances) {
    int all = UncertainParameter.values().length;
    double[] deviations = new double[all];
    double[][] matrix = new double[all][all];
    for (int i = 0; i < mean.getDimension(); i++) {
      deviations[i] = mean.getEntry(i);
      for (int j = 0; j < mean.getDimension(); j++) {
        matrix[i][j] = (covariance.getEntry(i, j) + covariance.getEntry(j, i)) / 2;
      }
    }
    for (int i = 0; i < unfittedVariances.length; i++) {
      int unfitted = mean.getDimension() + i;
      matrix[unfitted][unfitted] = unfittedVariances[i];
    }
    return ParameterDistribution.learnt(deviations, matrix);
  }

  /** A matrix without the unevenness that rounding leaves between its halves. */
  static RealMatrix symmetric(RealMatrix matrix) {
    return new Array2DRowRealMatrix(
        matrix.add(matrix.transpose()).scalarMultiply(0.5).getData(), false);
  }
}
