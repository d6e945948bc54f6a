package starchfilm.numerics.diffusion;

/**
 * Values drawn to a curve in time, weakly or stiffly: {@code u' = -stiffness (u - cos t) - sin t},
 * exact solution {@code cos t}. The lumped state does the same, the tally adds up the unknown.
 *
 * <p>Source: Prothero and Robinson 1974, Mathematics of Computation 28:145 (recalled).
 */
record ProtheroRobinson(double stiffness) implements BorderedSystem {
  private static final int NODES = 3;

  static double[] start() {
    return new double[] {1, 1, 1, 1, 0};
  }

  @Override
  public int nodes() {
    return NODES;
  }

  @Override
  public void rates(double time, double[] state, double[] rates) {
    for (int i = 0; i <= NODES; i++) {
      rates[i] = -stiffness * (state[i] - Math.cos(time)) - Math.sin(time);
    }
    rates[NODES + 1] = state[0];
  }

  @Override
  public void linearise(
      double time, double[] state, BorderedTridiagonal jacobian, double[] timeSlope) {
    for (int i = 0; i <= NODES; i++) {
      timeSlope[i] = -stiffness * Math.sin(time) - Math.cos(time);
    }
    for (int i = 0; i < NODES; i++) {
      jacobian.diagonal[i] = -stiffness;
    }
    jacobian.corner = -stiffness;
    jacobian.tallyLower = 1;
  }
}
