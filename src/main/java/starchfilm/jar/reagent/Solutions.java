package starchfilm.jar.reagent;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

/** Density of dilute solutions, straight in the strength. */
final class Solutions {
  private static final double WATER_KG_PER_M3 = 998;

  private Solutions() {}

  static double kgPerM3(double risePerPercent, double strength) {
    return WATER_KG_PER_M3 * (1 + risePerPercent * PERCENT_PER_UNIT * strength);
  }
}
