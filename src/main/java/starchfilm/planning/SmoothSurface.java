package starchfilm.planning;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;

/**
 * A polynomial in three variables, fitted to scattered values by least squares.
 *
 * <p>All products of powers up to a total degree of three, in which the first two variables stand
 * at most squared; each variable is scaled to -1 to 1 over its range. Immutable.
 */
final class SmoothSurface {
  private static final int DEGREE = 3;

  /** Highest power of the first two variables. */
  private static final int SQUARE = 2;

  private static final int TERMS = 18;

  private final double[] coefficients;

  private SmoothSurface(double[] coefficients) {
    this.coefficients = coefficients;
  }

  /**
   * Fits a surface.
   *
   * @param points scaled variables, three a point; at least 18 points in general position
   */
  static SmoothSurface fit(double[][] points, double[] values) {
    double[][] rows = new double[points.length][];
    for (int i = 0; i < rows.length; i++) {
      rows[i] = terms(points[i][0], points[i][1], points[i][2]);
    }
    return new SmoothSurface(
        new QRDecomposition(new Array2DRowRealMatrix(rows, false))
            .getSolver()
            .solve(new ArrayRealVector(values, false))
            .toArray());
  }

  double at(double x, double y, double z) {
    double[] terms = terms(x, y, z);
    double sum = 0;
    for (int i = 0; i < TERMS; i++) {
      sum += coefficients[i] * terms[i];
    }
    return sum;
  }

  private static double[] terms(double x, double y, double z) {
    double[] terms = new double[TERMS];
    int term = 0;
    double powerX = 1;
    for (int i = 0; i <= SQUARE; i++) {
      double powerXy = powerX;
      for (int j = 0; j <= Math.min(SQUARE, DEGREE - i); j++) {
        double power = powerXy;
        for (int k = 0; i + j + k <= DEGREE; k++) {
          terms[term++] = power;
          power *= z;
        }
        powerXy *= y;
      }
      powerX *= x;
    }
    return terms;
  }
}
