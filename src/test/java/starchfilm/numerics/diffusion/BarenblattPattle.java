package starchfilm.numerics.diffusion;

import starchfilm.numerics.diffusion.LinearExchange.Face;

/**
 * What spreads from a point when the diffusion coefficient is {@code u^n}: it keeps its shape and
 * has an edge that moves at a finite speed.
 *
 * <p>{@code u = t^-q (1 - n q x^2 t^(-2q) / 2)^(1/n)}, {@code q = 1/(n + 2)}, 0 beyond the edge.
 * Source: Barenblatt 1952; Pattle 1959, Quarterly Journal of Mechanics and Applied Mathematics
 * 12:407 (recalled; it satisfies the equation, as one can check by inserting it). The interval is
 * as long as the edge is far at {@link #end}, times 1.25, and its faces are sealed.
 */
record BarenblattPattle(int exponent) implements ExactProblem {
  static final double START = 1;

  private double rate() {
    return 1.0 / (exponent + 2);
  }

  /** When the edge is twice as far as at the start. */
  double end() {
    return Math.pow(2, exponent + 2);
  }

  /** How far the edge is, as a share of the interval. */
  double edge(double time) {
    return 0.8 * Math.pow(time / end(), rate());
  }

  double size() {
    return Math.sqrt(2 / (exponent * rate())) * Math.pow(end(), rate()) / 0.8;
  }

  @Override
  public BorderedSystem system(Grid grid) {
    FluxPotential potential =
        FluxPotential.tabulate(
            (u, k) -> k[0] = Math.pow(u, exponent), new SingleLayer(), 1.1, 1, 400);
    return new DiffusionSystem(
        grid, potential.reader(), new LinearExchange(Face.SEALED, Face.SEALED), size());
  }

  @Override
  public double value(double position, double time) {
    double place = position / edge(time);
    return place < 1 ? Math.pow(time, -rate()) * Math.pow(1 - place * place, 1.0 / exponent) : 0;
  }

  @Override
  public double border(double time) {
    return 0;
  }
}
