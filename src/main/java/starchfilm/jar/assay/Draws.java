package starchfilm.jar.assay;

import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import starchfilm.numerics.evidence.Estimate;

/** Values of uncertain quantities, drawn alike in every run. */
final class Draws {
  private static final long SEED = 20_260_411L;
  private static final double HALF_WIDTH = Math.sqrt(3);

  private final RandomGenerator random = new SplittableRandom(SEED);

  /** From a normal distribution, for what was measured. */
  double normal(Estimate estimate) {
    return estimate.sd() == 0
        ? estimate.value()
        : estimate.value() + estimate.sd() * random.nextGaussian();
  }

  /** From the rectangle of the same uncertainty, for what is only known to lie between bounds. */
  double rectangle(Estimate estimate) {
    double half = HALF_WIDTH * estimate.sd();
    return between(estimate.value() - half, estimate.value() + half);
  }

  double between(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }
}
