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
   * @param most how many values it reads at once, at most
   * @return a new reader
   */
  public PotentialReader reader(int most) {
    return new PotentialReader(this, most);
  }

  /**
   * Reads a table at many values of the unknown and one of the lumped state at once: first the
   * layers are summed for the intervals that the values lie in, then each value is one cubic.
   */
  public static final class PotentialReader {
    private FluxPotential table;
    private final double[] weights;
    private final double[] summedValues;
    private final double[] summedSlopes;
    private final int[] intervals;
    private final double[] places;
    private final double[] inverses;
    private final double[] potentials;
    private final double[] coefficients;
    private final double[] borderSlopes;
    private int lowestInterval;
    private int highestInterval;
    private boolean anyBelowZero;

    PotentialReader(FluxPotential table, int most) {
      this.table = table;
      this.weights = new double[table.layers.count()];
      this.summedValues = new double[table.intervals + 1];
      this.summedSlopes = new double[table.intervals + 1];
      this.intervals = new int[most];
      this.places = new double[most];
      this.inverses = new double[most];
      this.potentials = new double[most];
      this.coefficients = new double[most];
      this.borderSlopes = new double[most];
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
    }

    /**
     * Reads the potentials.
     *
     * @param values the unknown at every place
     * @param count how many of them
     * @param border the lumped state
     * @return P at every place; overwritten by the next reading
     */
    public double[] potentials(double[] values, int count, double border) {
      locate(values, count);
      table.layers.weights(border, weights);
      sum(lowestInterval, highestInterval);
      readCubics(values, count, potentials);
      return potentials;
    }

    /**
     * Reads the derivatives of the potential, exact ones of the tabulated P, where {@link
     * #potentials} was read last.
     *
     * @param values the unknown at every place, as given then
     * @param count how many of them
     * @param border the lumped state given then
     */
    public void readSlopes(double[] values, int count, double border) {
      double perRatio = table.half / table.step;
      for (int i = 0; i < count; i++) {
        int at = intervals[i];
        double x = places[i];
        double rise = summedValues[at + 1] - summedValues[at];
        double left = summedSlopes[at];
        double right = summedSlopes[at + 1];
        double bend = left + right - 2 * rise;
        double perPlace = left + x * (2 * (rise - left - bend) + 3 * x * bend);
        coefficients[i] = perPlace * perRatio * inverses[i] * inverses[i];
      }
      if (anyBelowZero) {
        stayBelowZero(values, count, coefficients);
      }
      table.layers.weightSlopes(border, weights);
      sum(lowestInterval, highestInterval);
      readCubics(values, count, borderSlopes);
    }

    /**
     * The flux coefficient dP/du of the last {@link #readSlopes}.
     *
     * @return one a place; overwritten by the next reading
     */
    public double[] coefficients() {
      return coefficients;
    }

    /**
     * How the potential changes with the lumped state, dP/ds, of the last {@link #readSlopes}.
     *
     * @return one a place; overwritten by the next reading
     */
    public double[] borderSlopes() {
      return borderSlopes;
    }

    /** Evaluates the summed cubics at the located places, and straight lines below zero. */
    private void readCubics(double[] values, int count, double[] out) {
      for (int i = 0; i < count; i++) {
        int at = intervals[i];
        double x = places[i];
        double from = summedValues[at];
        double rise = summedValues[at + 1] - from;
        double left = summedSlopes[at];
        double right = summedSlopes[at + 1];
        double bend = left + right - 2 * rise;
        out[i] = from + x * (left + x * (rise - left - bend + x * bend));
      }
      if (anyBelowZero) {
        double slope = summedSlopes[0] / (table.step * table.half);
        for (int i = 0; i < count; i++) {
          out[i] = values[i] < 0 ? slope * values[i] : out[i];
        }
      }
    }

    private void stayBelowZero(double[] values, int count, double[] out) {
      double slope = summedSlopes[0] / (table.step * table.half);
      for (int i = 0; i < count; i++) {
        out[i] = values[i] < 0 ? slope : out[i];
      }
    }

    /** Finds the interval of every value, and the lowest and highest of them. */
    private void locate(double[] values, int count) {
      double half = table.half;
      double inverseStep = 1 / table.step;
      int last = table.intervals - 1;
      boolean anyBelow = false;
      int lowest = last;
      int highest = 0;
      for (int i = 0; i < count; i++) {
        double inverse = 1 / (values[i] + half);
        double place = values[i] * inverse * inverseStep;
        boolean below = values[i] < 0;
        int at = below ? 0 : Math.min((int) place, last);
        inverses[i] = inverse;
        intervals[i] = at;
        places[i] = place - at;
        lowest = Math.min(at, lowest);
        highest = Math.max(at, highest);
        anyBelow |= below;
      }
      lowestInterval = lowest;
      highestInterval = highest;
      anyBelowZero = anyBelow;
    }

    /** Sums the layers over the nodes of some intervals. */
    private void sum(int first, int last) {
      int nodes = table.intervals + 1;
      int end = last + 2;
      double weight = weights[0];
      for (int i = first; i < end; i++) {
        summedValues[i] = weight * table.values[i];
        summedSlopes[i] = weight * table.slopes[i];
      }
      for (int layer = 1; layer < weights.length; layer++) {
        double next = weights[layer];
        int start = layer * nodes;
        for (int i = first; i < end; i++) {
          summedValues[i] += next * table.values[start + i];
          summedSlopes[i] += next * table.slopes[start + i];
        }
      }
    }
  }
}
