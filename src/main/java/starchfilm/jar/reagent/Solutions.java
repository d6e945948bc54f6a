package starchfilm.jar.reagent;

/** Density of dilute solutions, straight in the strength. */
final class Solutions {
  private static final double WATER_KG_PER_M3 = 998;
  private static final double PERCENT = 100;

  private Solutions() {}

  static double kgPerM3(double risePerPercent, double strength) {
    return WATER_KG_PER_M3 * (1 + risePerPercent * PERCENT * strength);
  }
}
