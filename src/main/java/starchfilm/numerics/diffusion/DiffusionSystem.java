package starchfilm.numerics.diffusion;

import starchfilm.numerics.diffusion.FluxPotential.PotentialReader;

/**
 * Nonlinear diffusion on a grid with exchange at its faces and one lumped state beside it.
 *
 * <p>{@code size omega_i du_i/dt = (P_{i+1} - P_i)/(size d_i) - (P_i - P_{i-1})/(size d_{i-1})} in
 * the interior; at the faces the outer difference is replaced by the outflow. P is the {@link
 * FluxPotential}, omega the grid's shares, d its spacings, size the length of the interval. What
 * leaves a node enters its neighbour or the tally, so the sum of {@code size omega_i u_i} and the
 * tally does not change.
 *
 * <p>One object serves one thread. Nothing is allocated after construction.
 */
public final class DiffusionSystem implements BorderedSystem {
  private final int nodes;
  private final double[] shares;
  private final double[] inverseShares;
  private final double[] inverseSpacings;
  private final PotentialReader potential;
  private final FaceExchange faces;
  private final double[] coefficients;
  private final double[] borderSlopes;
  private double size;
  private double coefficientFactor = 1;

  /**
   * A system.
   *
   * @param grid the grid
   * @param potential the flux potential, read by this system alone
   * @param faces the exchange at the faces, called by this system alone
   * @param size length of the interval, above 0
   */
  public DiffusionSystem(Grid grid, PotentialReader potential, FaceExchange faces, double size) {
    this.nodes = grid.nodes();
    this.shares = grid.shares();
    this.inverseShares = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      inverseShares[i] = 1 / shares[i];
    }
    double[] spacings = grid.spacings();
    this.inverseSpacings = new double[nodes - 1];
    for (int i = 0; i < nodes - 1; i++) {
      inverseSpacings[i] = 1 / spacings[i];
    }
    this.potential = potential;
    this.faces = faces;
    this.coefficients = new double[nodes];
    this.borderSlopes = new double[nodes];
    setSize(size, 1);
  }

  /**
   * Gives the interval another length and the flux coefficient another factor.
   *
   * @param newSize length of the interval, above 0
   * @param newCoefficientFactor what the tabulated coefficient is multiplied by, above 0
   */
  public void setSize(double newSize, double newCoefficientFactor) {
    if (!(newSize > 0) || !(newCoefficientFactor > 0)) {
      throw new IllegalArgumentException(
          "length and factor must be above 0, not " + newSize + " and " + newCoefficientFactor);
    }
    size = newSize;
    coefficientFactor = newCoefficientFactor;
  }

  @Override
  public int nodes() {
    return nodes;
  }

  /**
   * The unknown averaged over the interval.
   *
   * @param state a state
   * @return the average
   */
  public double mean(double[] state) {
    double sum = 0;
    for (int i = 0; i < nodes; i++) {
      sum += shares[i] * state[i];
    }
    return sum;
  }

  @Override
  public void rates(double time, double[] state, double[] rates) {
    double border = state[nodes];
    potential.goTo(border);
    faces.evaluate(time, state[0], state[nodes - 1], mean(state), border);
    double inverseSize = 1 / size;
    double scale = coefficientFactor * inverseSize * inverseSize;
    double inflow = -faces.lowerOutflow() * inverseSize;
    double here = potential.potential(state[0]);
    for (int i = 0; i < nodes - 1; i++) {
      double above = potential.potential(state[i + 1]);
      double fromAbove = scale * (above - here) * inverseSpacings[i];
      rates[i] = (inflow + fromAbove) * inverseShares[i];
      inflow = -fromAbove;
      here = above;
    }
    rates[nodes - 1] = (inflow - faces.upperOutflow() * inverseSize) * inverseShares[nodes - 1];
    rates[nodes] = faces.borderRate();
    rates[nodes + 1] = faces.lowerOutflow() + faces.upperOutflow();
  }

  @Override
  public void linearise(
      double time, double[] state, BorderedTridiagonal jacobian, double[] timeSlope) {
    double border = state[nodes];
    potential.goToSlopes(border);
    faces.linearise(time, state[0], state[nodes - 1], mean(state), border);
    fillInterior(state, jacobian);
    fillFaces(jacobian, timeSlope);
  }

  private void fillInterior(double[] state, BorderedTridiagonal jacobian) {
    double scale = coefficientFactor / (size * size);
    for (int i = 0; i < nodes; i++) {
      coefficients[i] = scale * potential.coefficient(state[i]);
      borderSlopes[i] = scale * potential.borderSlope(state[i]);
      jacobian.diagonal[i] = 0;
      jacobian.column[i] = 0;
    }
    for (int i = 0; i < nodes - 1; i++) {
      double here = inverseSpacings[i] * inverseShares[i];
      double there = inverseSpacings[i] * inverseShares[i + 1];
      double byBorder = borderSlopes[i + 1] - borderSlopes[i];
      jacobian.diagonal[i] -= coefficients[i] * here;
      jacobian.above[i] = coefficients[i + 1] * here;
      jacobian.column[i] += byBorder * here;
      jacobian.diagonal[i + 1] -= coefficients[i + 1] * there;
      jacobian.below[i + 1] = coefficients[i] * there;
      jacobian.column[i + 1] -= byBorder * there;
    }
  }

  private void fillFaces(BorderedTridiagonal jacobian, double[] timeSlope) {
    int top = nodes - 1;
    double lower = inverseShares[0] / size;
    double upper = inverseShares[top] / size;
    double lowerByLower =
        faces.slope(FaceExchange.Result.LOWER_OUTFLOW, FaceExchange.Argument.LOWER);
    double lowerByBorder =
        faces.slope(FaceExchange.Result.LOWER_OUTFLOW, FaceExchange.Argument.BORDER);
    double lowerByTime = faces.slope(FaceExchange.Result.LOWER_OUTFLOW, FaceExchange.Argument.TIME);
    double upperByUpper =
        faces.slope(FaceExchange.Result.UPPER_OUTFLOW, FaceExchange.Argument.UPPER);
    double upperByBorder =
        faces.slope(FaceExchange.Result.UPPER_OUTFLOW, FaceExchange.Argument.BORDER);
    double upperByTime = faces.slope(FaceExchange.Result.UPPER_OUTFLOW, FaceExchange.Argument.TIME);
    jacobian.diagonal[0] -= lowerByLower * lower;
    jacobian.column[0] -= lowerByBorder * lower;
    jacobian.diagonal[top] -= upperByUpper * upper;
    jacobian.column[top] -= upperByBorder * upper;
    double byMean = faces.slope(FaceExchange.Result.BORDER_RATE, FaceExchange.Argument.MEAN);
    for (int i = 0; i < nodes; i++) {
      jacobian.row[i] = byMean * shares[i];
      timeSlope[i] = 0;
    }
    jacobian.row[0] += faces.slope(FaceExchange.Result.BORDER_RATE, FaceExchange.Argument.LOWER);
    jacobian.row[top] += faces.slope(FaceExchange.Result.BORDER_RATE, FaceExchange.Argument.UPPER);
    jacobian.corner = faces.slope(FaceExchange.Result.BORDER_RATE, FaceExchange.Argument.BORDER);
    jacobian.tallyLower = lowerByLower;
    jacobian.tallyUpper = upperByUpper;
    jacobian.tallyBorder = lowerByBorder + upperByBorder;
    timeSlope[0] = -lowerByTime * lower;
    timeSlope[top] = -upperByTime * upper;
    timeSlope[nodes] = faces.slope(FaceExchange.Result.BORDER_RATE, FaceExchange.Argument.TIME);
    timeSlope[nodes + 1] = lowerByTime + upperByTime;
  }
}
