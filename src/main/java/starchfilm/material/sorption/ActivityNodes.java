package starchfilm.material.sorption;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import starchfilm.material.ingredient.FittedGlycerolActivity;
import starchfilm.material.ingredient.StarchKind;

/**
 * The moisture of each part of a film, tabulated once at fixed activities, so that the table of a
 * composition is only a weighted sum.
 *
 * <p>The nodes are even in the logarithm of {@code q = a/(1 - a)}, plus one at 0: fine at both ends
 * of the activity scale. Moisture is nearly straight in q at the wet end, where in a it rises
 * without bound.
 */
final class ActivityNodes {
  static final int COUNT = 112;

  /** q of the first node above 0; up to there every isotherm is as good as a cubic. */
  private static final double LOWEST = 4e-3;

  /**
   * q of the last node: at 0.001 kg per unit of q a film without glycerol holds 100 kg/kg there.
   */
  private static final double HIGHEST = 1e5;

  private static final double DIFFERENCE_STEP = 1e-5;

  private static final double[] Q = positions();

  /** The water that glycerol holds (kg/kg), and its slope in q. */
  private static final MoistureColumn GLYCEROL = glycerol();

  private static final Map<StarchKind, MoistureColumn> STARCH = starches();

  private ActivityNodes() {}

  /** Moisture at the nodes and its slope in q; never written to after it is made. */
  private static final class MoistureColumn {
    private final double[] moisture;
    private final double[] slope;

    MoistureColumn(double[] moisture, double[] slope) {
      this.moisture = moisture;
      this.slope = slope;
    }

    void addTo(double[] moistureSum, double[] slopeSum, double weight) {
      for (int i = 0; i < COUNT; i++) {
        moistureSum[i] += weight * moisture[i];
        slopeSum[i] += weight * slope[i];
      }
    }
  }

  /**
   * The place of a node.
   *
   * @param node 0 to {@link #COUNT} - 1
   * @return q = a/(1 - a)
   */
  static double q(int node) {
    return Q[node];
  }

  /**
   * Adds a starch.
   *
   * @param kind the starch
   * @param weight its part in the film (kg/kg, with the interaction)
   * @param moisture sum of moistures, changed
   * @param slope sum of slopes in q, changed
   */
  static void addStarch(StarchKind kind, double weight, double[] moisture, double[] slope) {
    MoistureColumn column = STARCH.get(kind);
    if (column == null) {
      throw new IllegalStateException("no isotherm for " + kind);
    }
    column.addTo(moisture, slope, weight);
  }

  /**
   * Adds glycerol.
   *
   * @param weight its part in the film (kg/kg, with the interaction)
   * @param moisture sum of moistures, changed
   * @param slope sum of slopes in q, changed
   */
  static void addGlycerol(double weight, double[] moisture, double[] slope) {
    GLYCEROL.addTo(moisture, slope, weight);
  }

  private static double[] positions() {
    double[] q = new double[COUNT];
    double ratio = Math.pow(HIGHEST / LOWEST, 1.0 / (COUNT - 2));
    for (int i = 1; i < COUNT; i++) {
      q[i] = LOWEST * Math.pow(ratio, i - 1);
    }
    return q;
  }

  private static MoistureColumn glycerol() {
    FittedGlycerolActivity mixture = new FittedGlycerolActivity();
    DoubleUnaryOperator held = q -> mixture.waterKgPerKgGlycerol(q / (1 + q));
    double[] moisture = new double[COUNT];
    double[] slope = new double[COUNT];
    // Nothing lies below q = 0, hence a one-sided difference; it is off by 1e-5 of the slope.
    slope[0] = held.applyAsDouble(DIFFERENCE_STEP) / DIFFERENCE_STEP;
    for (int i = 1; i < COUNT; i++) {
      double step = DIFFERENCE_STEP * Q[i];
      moisture[i] = held.applyAsDouble(Q[i]);
      slope[i] = (held.applyAsDouble(Q[i] + step) - held.applyAsDouble(Q[i] - step)) / (2 * step);
    }
    return new MoistureColumn(moisture, slope);
  }

  private static Map<StarchKind, MoistureColumn> starches() {
    Map<StarchKind, MoistureColumn> columns = new EnumMap<>(StarchKind.class);
    for (StarchKind kind : StarchKind.values()) {
      GabIsotherm isotherm = StarchIsotherms.of(kind);
      double[] moisture = new double[COUNT];
      double[] slope = new double[COUNT];
      for (int i = 0; i < COUNT; i++) {
        double activity = Q[i] / (1 + Q[i]);
        double dryness = 1 / (1 + Q[i]);
        moisture[i] = isotherm.moisture(activity);
        slope[i] = isotherm.slope(activity) * dryness * dryness;
      }
      columns.put(kind, new MoistureColumn(moisture, slope));
    }
    return columns;
  }
}
