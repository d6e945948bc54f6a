package starchfilm.learning;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The most likely deviations of one plate, from its weighings and from what was known before.
 *
 * @param information J'WJ: how sharply the weighings alone bind the deviations
 * @param slope J'W(m - f): where the weighings alone would still move them
 * @param weights what each reading counts for, about 1 where it fits
 * @param residualsKg noted less expected mass (kg)
 */
record PlateFit(
    RealVector deviations,
    RealMatrix information,
    RealVector slope,
    RealVector weights,
    RealVector residualsKg) {
  /** A reading that counts for less than this is doubted: it lies 3.6 sigmas off or more. */
  static final double DOUBTED_BELOW = 0.3;

  /**
   * Fits a plate from the start.
   *
   * @param prior what is known of its deviations without them
   * @throws starchfilm.numerics.diffusion.IntegrationFailure where a case cannot be solved
   */
  static PlateFit of(PlateReadings readings, Normal prior) {
    RealVector even = new ArrayRealVector(readings.count(), 1);
    return new PlateSearch(readings, prior).from(prior.mean(), even);
  }

  /** Fits a plate again after its prior has changed. */
  PlateFit again(PlateReadings readings, Normal prior) {
    return new PlateSearch(readings, prior).from(deviations, weights);
  }

  /** Deviations after the weighings: Laplace's approximation at the best fit. */
  Normal posterior(Normal prior) {
    RealMatrix lower = prior.lower();
    RealMatrix bound =
        MatrixUtils.createRealIdentityMatrix(VarianceShares.COUNT)
            .add(lower.transpose().multiply(information).multiply(lower));
    RealMatrix inverse = new LUDecomposition(Normal.symmetric(bound)).getSolver().getInverse();
    return new Normal(
        deviations, Normal.symmetric(lower.multiply(inverse).multiply(lower.transpose())));
  }

  /** The readings that hardly count. */
  List<Integer> doubted() {
    return IntStream.range(0, weights.getDimension())
        .filter(i -> weights.getEntry(i) < DOUBTED_BELOW)
        .boxed()
        .toList();
  }
}
