package starchfilm.numerics.diffusion;

import starchfilm.numerics.diffusion.LinearExchange.Face;

/**
 * A sheet held at two values until nothing changes, with the coefficient {@code K = 1 + a u}: what
 * is linear is not the unknown but {@code u + a u^2/2}.
 *
 * <p>Source: Crank 1975, The Mathematics of Diffusion, 2nd ed., chapter 9, steady state with a
 * coefficient that depends on concentration (recalled).
 *
 * @param increase a
 */
record SteadyMembrane(double increase) implements ExactProblem {
  private static final double HIGH = 2;
  private static final double LOW = 0.1;
  private static final double SIZE = 0.3;

  /** As nearly held as an exchange can: the faces are off by the flux over this. */
  private static final double HOLD = 1e9;

  @Override
  public BorderedSystem system(Grid grid) {
    FluxPotential potential =
        FluxPotential.tabulate(
            (u, k) -> k[0] = 1 + increase * u, new SingleLayer(), 1.1 * HIGH, 1, 400);
    LinearExchange faces = new LinearExchange(new Face(HOLD, HIGH), new Face(HOLD, LOW));
    return new DiffusionSystem(grid, potential.reader(), faces, SIZE);
  }

  @Override
  public double value(double position, double time) {
    double transformed = integral(HIGH) + position * (integral(LOW) - integral(HIGH));
    return (Math.sqrt(1 + 2 * increase * transformed) - 1) / increase;
  }

  private double integral(double u) {
    return u + increase * u * u / 2;
  }

  @Override
  public double border(double time) {
    return 0;
  }
}
