package starchfilm.numerics.diffusion;

/** The power of the spacing or the step with which an error falls. */
final class ObservedOrder {
  private ObservedOrder() {}

  /** From an error and the one at half the spacing or step. */
  static double of(double error, double errorAtHalf) {
    return Math.log(error / errorAtHalf) / Math.log(2);
  }
}
