package starchfilm.numerics.diffusion;

import java.util.Arrays;

/**
 * A problem shaped like the drying of a film, without an exact solution: the coefficient falls a
 * hundredfold from its peak as the film dries, changes with the lumped state, and the open faces
 * lose by a saturating law that cools the lumped state.
 *
 * @param humidity the level the faces come to rest at, from 0 to 1
 * @param swing how far humidity and air swing with time; 0 makes the problem autonomous
 * @param bothFacesOpen whether the lower face is open too
 */
record DryingLikeFilm(double humidity, double swing, boolean bothFacesOpen) {
  static final double SIZE = 0.6;
  static final double WET = 6;
  private static final double COEFFICIENT_FACTOR = 1.3;
  private static final double HALF_SATURATION = 0.2;

  static DryingLikeFilm inASteadyRoom() {
    return new DryingLikeFilm(0.4, 0, false);
  }

  static DryingLikeFilm inASwingingRoom() {
    return new DryingLikeFilm(0.4, 0.2, true);
  }

  DiffusionSystem system(Grid grid) {
    DiffusionSystem system = new DiffusionSystem(grid, potential().reader(), new Exchange(), SIZE);
    system.setSize(SIZE, COEFFICIENT_FACTOR);
    return system;
  }

  static FluxPotential potential() {
    PolynomialLayers layers = new PolynomialLayers(-0.5, 0, 0.5);
    FluxCoefficient coefficient =
        (u, k) -> {
          for (int i = 0; i < k.length; i++) {
            k[i] = coefficient(u, layers.places()[i]);
          }
        };
    return FluxPotential.tabulate(coefficient, layers, 1.1 * WET, 1, 100);
  }

  private static double coefficient(double u, double s) {
    return Math.exp(-4 / (u + 0.37) + (1.5 - 0.1 * u) * s) / ((1 + u) * (1 + u));
  }

  /** Evenly wet. */
  double[] start(Grid grid) {
    double[] state = new double[grid.nodes() + 2];
    Arrays.fill(state, 0, grid.nodes(), WET);
    return state;
  }

  /** Where an open face comes to rest in a steady room. */
  double equilibrium() {
    return HALF_SATURATION * humidity / (1 - humidity);
  }

  /** What does not change: everything inside and everything that has left. */
  static double total(Grid grid, double[] state) {
    double sum = state[grid.nodes() + 1];
    double[] shares = grid.shares();
    for (int i = 0; i < grid.nodes(); i++) {
      sum += SIZE * shares[i] * state[i];
    }
    return sum;
  }

  private final class Exchange implements FaceExchange {
    private static final double RATE = 0.8;
    private static final double WARMING = 3;
    private static final double COOLING = 2;
    private static final double ROUNDS_PER_TIME = 2 * Math.PI / 5;

    private final double[] lowerSlopes = new double[Argument.values().length];
    private final double[] upperSlopes = new double[Argument.values().length];
    private final double[] borderSlopes = new double[Argument.values().length];
    private double lowerOutflow;
    private double upperOutflow;
    private double borderRate;

    @Override
    public void evaluate(double time, double lower, double upper, double mean, double border) {
      lowerOutflow = bothFacesOpen ? outflow(time, lower, border) : 0;
      upperOutflow = outflow(time, upper, border);
      double air = 0.2 + swing * Math.cos(ROUNDS_PER_TIME * time);
      borderRate =
          (WARMING * (air - border) - COOLING * (lowerOutflow + upperOutflow)) / (1 + mean);
    }

    private double outflow(double time, double value, double border) {
      double outside = humidity + swing * Math.sin(ROUNDS_PER_TIME * time);
      return RATE * Math.exp(border) * (level(value) - outside);
    }

    /** Goes on straight below 0, where the law has a pole that a coarse step might cross. */
    private static double level(double value) {
      return value / (Math.max(0, value) + HALF_SATURATION);
    }

    @Override
    public void linearise(double time, double lower, double upper, double mean, double border) {
      if (bothFacesOpen) {
        fill(lowerSlopes, Argument.LOWER, time, lower, lowerOutflow, border);
      }
      fill(upperSlopes, Argument.UPPER, time, upper, upperOutflow, border);
      for (int i = 0; i < borderSlopes.length; i++) {
        borderSlopes[i] = -COOLING * (lowerSlopes[i] + upperSlopes[i]) / (1 + mean);
      }
      borderSlopes[Argument.MEAN.ordinal()] -= borderRate / (1 + mean);
      borderSlopes[Argument.BORDER.ordinal()] -= WARMING / (1 + mean);
      borderSlopes[Argument.TIME.ordinal()] -=
          WARMING * swing * ROUNDS_PER_TIME * Math.sin(ROUNDS_PER_TIME * time) / (1 + mean);
    }

    private void fill(
        double[] slopes, Argument own, double time, double value, double outflow, double border) {
      double shifted = Math.max(0, value) + HALF_SATURATION;
      double factor = RATE * Math.exp(border);
      slopes[own.ordinal()] = factor * HALF_SATURATION / (shifted * shifted);
      slopes[Argument.BORDER.ordinal()] = outflow;
      slopes[Argument.TIME.ordinal()] =
          -factor * swing * ROUNDS_PER_TIME * Math.cos(ROUNDS_PER_TIME * time);
    }

    @Override
    public double lowerOutflow() {
      return lowerOutflow;
    }

    @Override
    public double upperOutflow() {
      return upperOutflow;
    }

    @Override
    public double borderRate() {
      return borderRate;
    }

    @Override
    public double slope(Result of, Argument by) {
      double[] slopes =
          of == Result.LOWER_OUTFLOW
              ? lowerSlopes
              : of == Result.UPPER_OUTFLOW ? upperSlopes : borderSlopes;
      return slopes[by.ordinal()];
    }
  }
}
