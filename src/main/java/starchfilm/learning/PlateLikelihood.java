package starchfilm.learning;

import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What the weighings of one plate teach about the deviations it shares with others: a normal
 * likelihood, {@code exp(-s' S s/2 + s' eta)}, with what is the plate's own averaged out.
 *
 * <p>With the information I of the weighings on the plate's deviations theta, their slope b at the
 * best fit, and the plate's own covariance V: {@code S = (1 + I V)^-1 I}, {@code eta = (1 + I V)^-1
 * (b + I theta)}. This is Laplace's approximation and the sum of two independent normal variables.
 * Source: MacKay 2003, Information Theory, Inference, and Learning Algorithms, chapter 27
 * (recalled).
 *
 * @param file the trial's file, from the folder of the workshop file
 * @param plate its room and starch
 * @param weighings how many weighings taught it
 * @param precision S, symmetric
 * @param pull eta
 */
record PlateLikelihood(
    String file, PlateKey plate, int weighings, RealMatrix precision, RealVector pull) {
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
}
