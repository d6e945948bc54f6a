package starchfilm.numerics.diffusion;

/**
 * The Kirchhoff transform of a flux coefficient, as a table: {@code P(u, s) = integral of K(w, s)
 * dw from 0 to u}, so that the flux between two nodes is a difference of two values of P.
 *
 * <p>The table lies over {@code r = u/(u + c)}, which spreads the small values of u, where K
 * changes by orders of magnitude, and reaches every u with one division. Between its nodes P is a
 * cubic that takes the exact K at both ends; the integral over an interval is Simpson's. Below 0
 * the coefficient stays as it is at 0, above the largest tabulated u the last cubic goes on, so
 * that a stage of the integrator that oversteps meets neither a jump nor the pole of r at -c.
 * Immutable; safe to share between threads. A {@link PotentialReader} is one thread's.
 *
 * <p>Limit: within an interval K du/dr is a parabola, which stays positive as long as K du/dr
 * changes less than thirtyfold from node to node.
 *
 * <p>Source of the transform: Carslaw and Jaeger 1959, Conduction of Heat in Solids, 2nd ed.,
 * section 1.6, equation 7 (recalled).
 */
public final class FluxPotential {
  private final Layers layers;
  private final double half;
  private final double inverseStep;

  /** For every interval the four coefficients of P within it, one layer after the other. */
  private final double[][] cubics;

  private FluxPotential(Layers layers, double half, double step, double[][] cubics) {
    this.layers = layers;
    this.half = half;
    this.inverseStep = 1 / step;
    this.cubics = cubics;
  }

  /**
   * Tabulates the transform of a coefficient.
   *
   * @param coefficient the flux coefficient
   * @param layers how it is interpolated over the lumped state
   * @param largest the largest value of the unknown that will be met; above 0
   * @param half the value c of the unknown that lies in the middle of {@code r = u/(u + c)}; above
   *     0
   * @param intervals number of table intervals, at least 2
   * @return the table
   */
  public static FluxPotential tabulate(
      FluxCoefficient coefficient, Layers layers, double largest, double half, int intervals) {
    int count = layers.count();
    double step = largest / (largest + half) / intervals;
    double[][] cubics = new double[intervals][count * 4];
    double[] potential = new double[count];
    double[] atLeft = new double[count];
    double[] atMiddle = new double[count];
    double[] atRight = new double[count];
    fillPerRatio(coefficient, 0, half, atLeft);
    for (int i = 0; i < intervals; i++) {
      fillPerRatio(coefficient, (i + 0.5) * step, half, atMiddle);
      fillPerRatio(coefficient, (i + 1) * step, half, atRight);
      for (int layer = 0; layer < count; layer++) {
        double left = atLeft[layer] * step;
        double right = atRight[layer] * step;
        double rise = (left + 4 * atMiddle[layer] * step + right) / 6;
        double bend = left + right - 2 * rise;
        int at = layer * 4;
        cubics[i][at] = potential[layer];
        cubics[i][at + 1] = left;
        cubics[i][at + 2] = rise - left - bend;
        cubics[i][at + 3] = bend;
        potential[layer] += rise;
      }
      System.arraycopy(atRight, 0, atLeft, 0, count);
    }
    return new FluxPotential(layers, half, step, cubics);
  }

  /** K du/dr at a place of the table. */
  private static void fillPerRatio(
      FluxCoefficient coefficient, double ratio, double half, double[] out) {
    double rest = 1 - ratio;
    coefficient.fill(half * ratio / rest, out);
    double perRatio = half / (rest * rest);
    for (int layer = 0; layer < out.length; layer++) {
      out[layer] *= perRatio;
    }
  }

  /**
   * A reader of this table for one thread.
   *
   * @return a new reader
   */
  public PotentialReader reader() {
    return new PotentialReader(this);
  }

  /** Reads a table at one value of the lumped state after the other. */
  public static final class PotentialReader {
    private FluxPotential table;
    private final double[] weights;
    private final double[] weightSlopes;

    PotentialReader(FluxPotential table) {
      this.table = table;
      this.weights = new double[table.layers.count()];
      this.weightSlopes = new double[table.layers.count()];
    }

    /**
     * Reads another table from now on.
     *
     * @param other a table of as many layers
     */
    public void switchTo(FluxPotential other) {
      if (other.layers.count() != table.layers.count()) {
        throw new IllegalArgumentException("a reader takes tables of one number of layers only");
      }
      table = other;
    }

    /**
     * Goes to a value of the lumped state, for {@link #potential} and {@link #coefficient}.
     *
     * @param border the lumped state
     */
    public void goTo(double border) {
      table.layers.weights(border, weights);
    }

    /**
     * Goes to a value of the lumped state, for {@link #borderSlope}.
     *
     * @param border the lumped state
     */
    public void goToSlopes(double border) {
      table.layers.weightSlopes(border, weightSlopes);
    }

    /**
     * The potential P.
     *
     * @param u the unknown
     * @return P where the reader has gone to
     */
    public double potential(double u) {
      return table.potential(u, weights);
    }

    /**
     * The flux coefficient: the exact derivative dP/du of the tabulated potential.
     *
     * @param u the unknown
     * @return dP/du where the reader has gone to
     */
    public double coefficient(double u) {
      return table.coefficient(u, weights);
    }

    /**
     * How the potential changes with the lumped state.
     *
     * @param u the unknown
     * @return dP/ds where the reader has gone to the slopes
     */
    public double borderSlope(double u) {
      return table.potential(u, weightSlopes);
    }
  }

  private double potential(double u, double[] weights) {
    if (u < 0) {
      return u * coefficient(0, weights);
    }
    double place = u / (u + half) * inverseStep;
    int at = Math.min((int) place, cubics.length - 1);
    double x = place - at;
    double[] cubic = cubics[at];
    double sum = 0;
    for (int layer = 0; layer < weights.length; layer++) {
      int c = layer * 4;
      double bent = cubic[c + 2] + x * cubic[c + 3];
      sum += weights[layer] * (cubic[c] + x * (cubic[c + 1] + x * bent));
    }
    return sum;
  }

  private double coefficient(double u, double[] weights) {
    if (u < 0) {
      return coefficient(0, weights);
    }
    double inverse = 1 / (u + half);
    double place = u * inverse * inverseStep;
    int at = Math.min((int) place, cubics.length - 1);
    double x = place - at;
    double[] cubic = cubics[at];
    double perPlace = 0;
    for (int layer = 0; layer < weights.length; layer++) {
      int c = layer * 4;
      double bent = 2 * cubic[c + 2] + 3 * x * cubic[c + 3];
      perPlace += weights[layer] * (cubic[c + 1] + x * bent);
    }
    return perPlace * half * inverseStep * inverse * inverse;
  }
}
