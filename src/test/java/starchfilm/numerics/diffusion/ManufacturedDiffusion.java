package starchfilm.numerics.diffusion;

import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;

/**
 * A made-up solution {@code u = 1 + 0.4 e^-t cos 2x + 0.2 x sin t}, {@code s = 0.5 + 0.3 sin 2t} of
 * nonlinear diffusion with {@code K = 0.2 + u + s u^2/2 + 0.3 s^2 e^-u}, so that K changes with the
 * unknown, with the lumped state and, through it, with time; a source makes up for the rest.
 *
 * <p>Both faces exchange in proportion to the distance from the solution, and with the lumped
 * state, on top of the exact flux. The lumped state is drawn to its solution and by the faces and
 * the mean. All derivatives come from the library's automatic differentiation.
 */
final class ManufacturedDiffusion implements ExactProblem {
  private static final double SIZE = 1.7;

  /** A quantity of place and time. */
  private interface Quantity {
    DerivativeStructure at(DerivativeStructure x, DerivativeStructure t);
  }

  @Override
  public double value(double position, double time) {
    return unknown(constant(position * SIZE), constant(time)).getValue();
  }

  @Override
  public double border(double time) {
    return lumped(constant(time)).getValue();
  }

  private static DerivativeStructure unknown(DerivativeStructure x, DerivativeStructure t) {
    return t.negate()
        .exp()
        .multiply(x.multiply(2).cos())
        .multiply(0.4)
        .add(x.multiply(t.sin()).multiply(0.2))
        .add(1);
  }

  private static DerivativeStructure slope(DerivativeStructure x, DerivativeStructure t) {
    return t.negate().exp().multiply(x.multiply(2).sin()).multiply(-0.8).add(t.sin().multiply(0.2));
  }

  private static DerivativeStructure lumped(DerivativeStructure t) {
    return t.multiply(2).sin().multiply(0.3).add(0.5);
  }

  private static DerivativeStructure mean(DerivativeStructure x, DerivativeStructure t) {
    return t.negate()
        .exp()
        .multiply(0.4 * Math.sin(2 * SIZE) / (2 * SIZE))
        .add(t.sin().multiply(0.1 * SIZE))
        .add(1);
  }

  private static DerivativeStructure coefficient(DerivativeStructure u, DerivativeStructure s) {
    return u.add(0.2)
        .add(s.multiply(u).multiply(u).multiply(0.5))
        .add(s.multiply(s).multiply(u.negate().exp()).multiply(0.3));
  }

  /** K du/dx. */
  private static DerivativeStructure gradient(DerivativeStructure x, DerivativeStructure t) {
    return coefficient(unknown(x, t), lumped(t)).multiply(slope(x, t));
  }

  private static DerivativeStructure constant(double value) {
    return new DerivativeStructure(2, 0, value);
  }

  /** A field's value and derivatives up to the second. */
  private static DerivativeStructure derive(Quantity field, double position, double time) {
    return field.at(
        new DerivativeStructure(2, 2, 0, position * SIZE), new DerivativeStructure(2, 2, 1, time));
  }

  @Override
  public BorderedSystem system(Grid grid) {
    PolynomialLayers layers = new PolynomialLayers(0.1, 0.5, 0.9);
    FluxCoefficient tabulated =
        (u, k) -> {
          for (int i = 0; i < k.length; i++) {
            k[i] = coefficient(constant(u), constant(layers.places()[i])).getValue();
          }
        };
    FluxPotential potential = FluxPotential.tabulate(tabulated, layers, 2.5, 1, 400);
    return new Sourced(
        new DiffusionSystem(grid, potential.reader(), new ManufacturedExchange(), SIZE),
        grid.positions());
  }

  /** The system plus {@code du/dt - d/dx(K du/dx)} of the solution. */
  private record Sourced(DiffusionSystem plain, double[] positions) implements BorderedSystem {
    @Override
    public int nodes() {
      return plain.nodes();
    }

    @Override
    public void rates(double time, double[] state, double[] rates) {
      plain.rates(time, state, rates);
      for (int i = 0; i < positions.length; i++) {
        DerivativeStructure u = derive(ManufacturedDiffusion::unknown, positions[i], time);
        DerivativeStructure flux = derive(ManufacturedDiffusion::gradient, positions[i], time);
        rates[i] += u.getPartialDerivative(0, 1) - flux.getPartialDerivative(1, 0);
      }
    }

    @Override
    public void linearise(
        double time, double[] state, BorderedTridiagonal jacobian, double[] timeSlope) {
      plain.linearise(time, state, jacobian, timeSlope);
      for (int i = 0; i < positions.length; i++) {
        DerivativeStructure u = derive(ManufacturedDiffusion::unknown, positions[i], time);
        DerivativeStructure flux = derive(ManufacturedDiffusion::gradient, positions[i], time);
        timeSlope[i] += u.getPartialDerivative(0, 2) - flux.getPartialDerivative(1, 1);
      }
    }
  }

  /** Each result is a linear function of its arguments plus one of time. */
  private static final class ManufacturedExchange implements FaceExchange {
    private static final double OF_FACE = 2;
    private static final double OF_BORDER = 0.7;
    private static final double BORDER_BY_LOWER = 0.3;
    private static final double BORDER_BY_UPPER = -0.4;
    private static final double BORDER_BY_MEAN = 0.5;
    private static final double BORDER_BY_ITSELF = -1.5;

    private double lowerOutflow;
    private double upperOutflow;
    private double borderRate;
    private double lowerByTime;
    private double upperByTime;
    private double borderByTime;

    @Override
    public void evaluate(double time, double lower, double upper, double mean, double border) {
      DerivativeStructure lowerValue = derive(ManufacturedDiffusion::unknown, 0, time);
      DerivativeStructure upperValue = derive(ManufacturedDiffusion::unknown, 1, time);
      DerivativeStructure meanValue = derive(ManufacturedDiffusion::mean, 0, time);
      DerivativeStructure borderValue = derive((x, t) -> lumped(t), 0, time);
      DerivativeStructure lowerFlux = derive(ManufacturedDiffusion::gradient, 0, time);
      DerivativeStructure upperFlux = derive(ManufacturedDiffusion::gradient, 1, time).negate();
      double byBorder = OF_BORDER * (border - borderValue.getValue());
      lowerOutflow = lowerFlux.getValue() + OF_FACE * (lower - lowerValue.getValue()) + byBorder;
      upperOutflow = upperFlux.getValue() + OF_FACE * (upper - upperValue.getValue()) + byBorder;
      borderRate =
          borderValue.getPartialDerivative(0, 1)
              + BORDER_BY_LOWER * (lower - lowerValue.getValue())
              + BORDER_BY_UPPER * (upper - upperValue.getValue())
              + BORDER_BY_MEAN * (mean - meanValue.getValue())
              + BORDER_BY_ITSELF * (border - borderValue.getValue());
      lowerByTime =
          byTime(lowerFlux) - OF_FACE * byTime(lowerValue) - OF_BORDER * byTime(borderValue);
      upperByTime =
          byTime(upperFlux) - OF_FACE * byTime(upperValue) - OF_BORDER * byTime(borderValue);
      borderByTime =
          borderValue.getPartialDerivative(0, 2)
              - BORDER_BY_LOWER * byTime(lowerValue)
              - BORDER_BY_UPPER * byTime(upperValue)
              - BORDER_BY_MEAN * byTime(meanValue)
              - BORDER_BY_ITSELF * byTime(borderValue);
    }

    private static double byTime(DerivativeStructure of) {
      return of.getPartialDerivative(0, 1);
    }

    @Override
    public void linearise(double time, double lower, double upper, double mean, double border) {
      // Evaluating has told the slopes by time; the others do not change.
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
      boolean lowerFace = of == Result.LOWER_OUTFLOW;
      if (of == Result.BORDER_RATE) {
        return switch (by) {
          case LOWER -> BORDER_BY_LOWER;
          case UPPER -> BORDER_BY_UPPER;
          case MEAN -> BORDER_BY_MEAN;
          case BORDER -> BORDER_BY_ITSELF;
          case TIME -> borderByTime;
        };
      }
      return switch (by) {
        case LOWER -> lowerFace ? OF_FACE : 0;
        case UPPER -> lowerFace ? 0 : OF_FACE;
        case MEAN -> 0;
        case BORDER -> OF_BORDER;
        case TIME -> lowerFace ? lowerByTime : upperByTime;
      };
    }
  }
}
