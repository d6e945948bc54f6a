package starchfilm.material.sorption;

import java.util.Arrays;
import java.util.List;
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

  /** Nothing is held at q = 0, so that a step as small as this loses no digit there. */
  private static final double STEP_AT_0 = 1e-9;

  private static final double[] Q = positions();

  private static final MoistureColumn GLYCEROL =
      new MoistureColumn(new FittedGlycerolActivity()::waterKgPerKgGlycerol);

  private static final List<MoistureColumn> STARCHES =
      Arrays.stream(StarchKind.values())
          .map(kind -> new MoistureColumn(StarchIsotherms.of(kind)::moisture))
          .toList();

  private ActivityNodes() {}

  /** Moisture at the nodes (kg/kg) and its slope in q; never written to after it is made. */
  static final class MoistureColumn {
    private final double[] moisture = new double[COUNT];
    private final double[] slope = new double[COUNT];

    MoistureColumn(DoubleUnaryOperator moistureAtActivity) {
      DoubleUnaryOperator held = q -> moistureAtActivity.applyAsDouble(q / (1 + q));
      slope[0] = held.applyAsDouble(STEP_AT_0) / STEP_AT_0;
      for (int i = 1; i < COUNT; i++) {
        double step = DIFFERENCE_STEP * Q[i];
        moisture[i] = held.applyAsDouble(Q[i]);
        slope[i] = (held.applyAsDouble(Q[i] + step) - held.applyAsDouble(Q[i] - step)) / (2 * step);
      }
    }

    /**
     * Adds this to sums of moistures and of slopes.
     *
     * @param weight its part in the film (kg/kg, with the interaction)
     */
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

  /** The water that a starch holds. */
  static MoistureColumn starch(StarchKind kind) {
    return STARCHES.get(kind.ordinal());
  }

  /** The water that glycerol holds. */
  static MoistureColumn glycerol() {
    return GLYCEROL;
  }

  private static double[] positions() {
    double[] q = new double[COUNT];
    double ratio = Math.pow(HIGHEST / LOWEST, 1.0 / (COUNT - 2));
    for (int i = 1; i < COUNT; i++) {
      q[i] = LOWEST * Math.pow(ratio, i - 1);
    }
    return q;
  }
}
