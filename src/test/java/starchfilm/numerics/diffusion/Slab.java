package starchfilm.numerics.diffusion;

import java.util.Arrays;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import starchfilm.numerics.diffusion.LinearExchange.Face;

/**
 * A sheet with one sealed and one open face and a constant diffusion coefficient, filled evenly
 * with 1 at the start, losing to an empty room in proportion to the value at the open face.
 *
 * <p>Series over the roots b of {@code b tan b = Bi}: Crank 1975, The Mathematics of Diffusion, 2nd
 * ed., section 4.3.6 (recalled). The sizes are those of a film in metres and seconds, so that the
 * solver meets numbers far from 1.
 */
final class Slab implements ExactProblem {
  private static final double THICKNESS_M = 1.5e-3;
  private static final double DIFFUSIVITY_M2_PER_S = 2.5e-10;
  private static final int TERMS = 400;

  private final double biotNumber;
  private final double[] roots;

  Slab(double biotNumber) {
    this.biotNumber = biotNumber;
    this.roots = new double[TERMS];
    for (int n = 0; n < TERMS; n++) {
      roots[n] =
          new BrentSolver(1e-15, 1e-14)
              .solve(
                  1000,
                  b -> b * Math.sin(b) - biotNumber * Math.cos(b),
                  n * Math.PI,
                  (n + 0.5) * Math.PI);
    }
  }

  /**
   * A face held at 0, as nearly as an exchange can: the first root is pi/2 (1 - 1/Bi), so times are
   * 2/Bi too long, 2e-8 of themselves.
   */
  static Slab withHeldSurface() {
    return new Slab(1e8);
  }

  static double timeS(double fourierNumber) {
    return fourierNumber * THICKNESS_M * THICKNESS_M / DIFFUSIVITY_M2_PER_S;
  }

  static double fourierNumber(double timeS) {
    return timeS * DIFFUSIVITY_M2_PER_S / (THICKNESS_M * THICKNESS_M);
  }

  double[] roots(int count) {
    return Arrays.copyOf(roots, count);
  }

  /** The share lost, from the tally of a state. */
  static double lossFraction(double tally) {
    return tally / THICKNESS_M;
  }

  @Override
  public BorderedSystem system(Grid grid) {
    return system(grid, Face.SEALED, THICKNESS_M);
  }

  /** Twice the sheet with both faces open, whose upper half is the sheet. */
  BorderedSystem mirrored(Grid grid) {
    return system(grid, open(), 2 * THICKNESS_M);
  }

  private Face open() {
    return new Face(biotNumber * DIFFUSIVITY_M2_PER_S / THICKNESS_M, 0);
  }

  private BorderedSystem system(Grid grid, Face lower, double sizeM) {
    FluxPotential potential =
        FluxPotential.tabulate((u, k) -> k[0] = 1, new SingleLayer(), 1.2, 1, 400);
    LinearExchange faces = new LinearExchange(lower, open());
    DiffusionSystem system = new DiffusionSystem(grid, potential.reader(), faces, sizeM);
    system.setSize(sizeM, DIFFUSIVITY_M2_PER_S);
    return system;
  }

  @Override
  public double value(double position, double timeS) {
    if (timeS == 0) {
      return 1;
    }
    double sum = 0;
    for (double b : roots) {
      double start = 4 * Math.sin(b) / (2 * b + Math.sin(2 * b));
      sum += start * Math.exp(-b * b * fourierNumber(timeS)) * Math.cos(b * position);
    }
    return sum;
  }

  /** The exact share lost. */
  double lossFractionAt(double timeS) {
    double left = 0;
    for (double b : roots) {
      double weight =
          2 * biotNumber * biotNumber / (b * b * (b * b + biotNumber * biotNumber + biotNumber));
      left += weight * Math.exp(-b * b * fourierNumber(timeS));
    }
    return 1 - left;
  }

  @Override
  public double border(double timeS) {
    return 0;
  }
}
