package starchfilm.learning;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.StatUtils;

/**
 * The evidence of one plate's weighings on the deviations it shares with others: a normal
 * likelihood, {@code exp(-s' S s/2 + s' eta)}, with what is the plate's own averaged out.
 *
 * <p>With the information I of the weighings on the plate's deviations theta, their slope b at the
 * best fit, and the plate's own covariance V: {@code S = (1 + I V)^-1 I}, {@code eta = (1 + I V)^-1
 * (b + I theta)}. This is Laplace's approximation and the sum of two independent normal variables.
 * Source: MacKay 2003, Information Theory, Inference, and Learning Algorithms, chapter 27
 * (recalled).
 *
 * @param file the trial's file, from the folder of the workshop file
 * @param precision S, symmetric
 */
record PlateLikelihood(
    String file, PlateKey plate, int weighings, RealMatrix precision, RealVector pull) {
  /** How far below 0, over the largest eigenvalue, twelve figures can leave one that is 0. */
  private static final double ROUNDING = 1e-9;

  /**
   * How far one plate alone can pull the shared deviations, in the textbook's standard deviations;
   * the fit of a plate stops at 8 of its prior.
   */
  private static final double FARTHEST = 12;

  /**
   * The most that weighings can bind a deviation, over the inverse of the textbook's variance. A
   * plate's own part is averaged out, and is never less than a sixteenth.
   */
  private static final double MOST_BOUND = 100;

  PlateLikelihood {
    if (weighings < 1
        || pull.getDimension() != VarianceShares.COUNT
        || precision.getRowDimension() != VarianceShares.COUNT) {
      throw new IllegalArgumentException("a plate teaches every parameter by its weighings");
    }
  }

  static PlateLikelihood of(
      String file, PlateKey plate, int weighings, PlateFit fit, double[] own) {
    RealMatrix information = fit.information();
    RealMatrix mixed =
        MatrixUtils.createRealIdentityMatrix(VarianceShares.COUNT)
            .add(information.multiply(MatrixUtils.createRealDiagonalMatrix(own)));
    RealMatrix inverse = new LUDecomposition(mixed).getSolver().getInverse();
    RealMatrix precision = Normal.symmetric(inverse.multiply(information));
    RealVector pull = inverse.operate(fit.slope().add(information.operate(fit.deviations())));
    return new PlateLikelihood(file, plate, weighings, precision, pull);
  }

  /**
   * Whether weighings can have taught this; with anything else a forecast would end in a matrix
   * that cannot be inverted, or in a plate of less than no thickness.
   */
  boolean isTeachable() {
    RealMatrix spreads =
        MatrixUtils.createRealDiagonalMatrix(
            IntStream.range(0, VarianceShares.COUNT)
                .mapToDouble(i -> VarianceShares.factor(i).spread())
                .toArray());
    RealMatrix scaled = Normal.symmetric(spreads.multiply(precision).multiply(spreads));
    double[] eigenvalues = new EigenDecomposition(scaled).getRealEigenvalues();
    double least = StatUtils.min(eigenvalues);
    double most = StatUtils.max(eigenvalues);
    if (least < -ROUNDING * Math.max(1, most) || most > MOST_BOUND) {
      return false;
    }
    Normal alone = SharedParameters.after(List.of(this)).of(plate);
    return IntStream.range(0, VarianceShares.COUNT)
        .allMatch(
            i ->
                Math.abs(alone.mean().getEntry(i)) <= FARTHEST * VarianceShares.factor(i).spread());
  }
}
