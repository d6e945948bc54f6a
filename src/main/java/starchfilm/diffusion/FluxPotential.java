package starchfilm.diffusion;

/**
 * The Kirchhoff transform of a flux coefficient, as a table: {@code P(u, s) = integral of K(w, s)
 * dw from 0 to u}, so that the flux between two nodes is a difference of two values of P.
 *
 * <p>The table lies over {@code r = u/(u + c)}, which spreads the small values of u, where K
 * changes by orders of magnitude, and reaches every u with one division. Between its nodes P is a
 * cubic that takes the exact K at both ends; the integral over an interval is Simpson's. Outside 0
 * to the largest tabulated u the end cubic goes on, so that a stage of the integrator that
 * oversteps meets a smooth function. Immutable; safe to share between threads. A {@link Reader} is
 * one thread's.
 *
 * <p>Source of the transform: Carslaw and Jaeger 1959, Conduction of Heat in Solids, 2nd ed.,
 * section 1.6, equation 7 (recalled).
 */
public final class FluxPotential {
  private final Layers layers;
  private final double half;
  private final double step;
  private final int intervals;

  /** P at the nodes, layer after layer. */
  private final double[] values;

  /** dP/dr times the spacing at the nodes, layer after layer. */
  private final double[] slopes;

  private FluxPotential(
      Layers layers, double half, double step, int intervals, double[] values, double[] slopes) {
    this.layers = layers;
    this.half = half;
    this.step = step;
    this.intervals = intervals;
    this.values = values;
    this.slopes = slopes;
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
    int nodes = intervals + 1;
    double step = largest / (largest + half) / intervals;
    double[] values = new double[count * nodes];
    double[] slopes = new double[count * nodes];
    double[] atLeft = new double[count];
    double[] atMiddle = new double[count];
    double[] atRight = new double[count];
    fillPerRatio(coefficient, 0, half, atLeft);
    for (int layer = 0; layer < count; layer++) {
      slopes[layer * nodes] = atLeft[layer] * step;
    }
    for (int i = 0; i < intervals; i++) {
      fillPerRatio(coefficient, (i + 0.5) * step, half, atMiddle);
      fillPerRatio(coefficient, (i + 1) * step, half, atRight);
      for (int layer = 0; layer < count; layer++) {
        int at = layer * nodes + i;
        values[at + 1] =
            values[at] + step / 6 * (atLeft[layer] + 4 * atMiddle[layer] + atRight[layer]);
        slopes[at + 1] = atRight[layer] * step;
      }
      double[] swap = atLeft;
      atLeft = atRight;
      atRight = swap;
    }
    return new FluxPotential(layers, half, step, intervals, values, slopes);
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
  public Reader reader() {
    return new Reader(this);
  }

  /**
   * Reads a table at one value of the lumped state after another: {@link #moveTo} sums the layers
   * once for all nodes, then each look-up is one cubic.
   */
  public static final class Reader {
    private FluxPotential table;
    private double[] weights;
    private double[] summedValues;
    private double[] summedSlopes;
    private double[] borderValues;
    private double[] borderSlopes;
    private double border = Double.NaN;

    Reader(FluxPotential table) {
      this.table = table;
      this.weights = new double[table.layers.count()];
      this.summedValues = new double[table.intervals + 1];
      this.summedSlopes = new double[table.intervals + 1];
      this.borderValues = new double[table.intervals + 1];
      this.borderSlopes = new double[table.intervals + 1];
    }

    /**
     * Reads another table from now on.
     *
     * @param other a table of as many layers and intervals
     */
    public void switchTo(FluxPotential other) {
      if (other.intervals != table.intervals || other.layers.count() != table.layers.count()) {
        throw new IllegalArgumentException("a reader takes tables of one size only");
      }
      table = other;
      border = Double.NaN;
    }

    /**
     * Sums the layers for a value of the lumped state.
     *
     * @param newBorder the lumped state
     */
    public void moveTo(double newBorder) {
      if (newBorder == border) {
        return;
      }
      border = newBorder;
      table.layers.weights(newBorder, weights);
      sum(table.values, summedValues);
      sum(table.slopes, summedSlopes);
    }

    /** Sums the layers for {@link #borderSlope} at the present value of the lumped state. */
    public void prepareBorderSlope() {
      table.layers.weightSlopes(border, weights);
      sum(table.values, borderValues);
      sum(table.slopes, borderSlopes);
    }

    private void sum(double[] layered, double[] out) {
      int nodes = out.length;
      double first = weights[0];
      for (int i = 0; i < nodes; i++) {
        out[i] = first * layered[i];
      }
      for (int layer = 1; layer < weights.length; layer++) {
        double weight = weights[layer];
        int start = layer * nodes;
        for (int i = 0; i < nodes; i++) {
          out[i] += weight * layered[start + i];
        }
      }
    }

    /**
     * The potential P.
     *
     * @param value the unknown u; above {@code -c/2}
     * @return P(u, s)
     */
    public double potential(double value) {
      double place = value / (value + table.half) / table.step;
      int i = interval(place);
      double x = place - i;
      return cubic(summedValues, summedSlopes, i, x);
    }

    /**
     * The flux coefficient that belongs to the tabulated P, its exact derivative.
     *
     * @param value the unknown u; above {@code -c/2}
     * @return dP/du
     */
    public double coefficient(double value) {
      double shifted = value + table.half;
      double place = value / shifted / table.step;
      int i = interval(place);
      double x = place - i;
      double rise = summedValues[i + 1] - summedValues[i];
      double left = summedSlopes[i];
      double right = summedSlopes[i + 1];
      double perPlace =
          left + x * (2 * (3 * rise - 2 * left - right) + x * 3 * (left + right - 2 * rise));
      return perPlace * table.half / (shifted * shifted * table.step);
    }

    /**
     * How the potential changes with the lumped state; {@link #prepareBorderSlope} first.
     *
     * @param value the unknown u; above {@code -c/2}
     * @return dP/ds
     */
    public double borderSlope(double value) {
      double place = value / (value + table.half) / table.step;
      int i = interval(place);
      return cubic(borderValues, borderSlopes, i, place - i);
    }

    private int interval(double place) {
      int i = (int) place;
      return i < 0 ? 0 : Math.min(i, table.intervals - 1);
    }

    private static double cubic(double[] values, double[] slopes, int i, double x) {
      double rise = values[i + 1] - values[i];
      double left = slopes[i];
      double right = slopes[i + 1];
      return values[i]
          + x * (left + x * (3 * rise - 2 * left - right + x * (left + right - 2 * rise)));
    }
  }
}
