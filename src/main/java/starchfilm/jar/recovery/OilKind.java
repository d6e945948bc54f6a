package starchfilm.jar.recovery;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;
import starchfilm.numerics.units.Named;

/**
 * Oils and fats with their saponification value and density.
 *
 * <p>The saponification value is the potassium hydroxide that one gram of oil takes up when all of
 * it is turned to soap (mg/g); it counts the fatty acids and so the glycerol. Relative density is
 * that at the temperature in brackets to water at 20 C.
 *
 * <p>Source: Codex Alimentarius CXS 210-1999, Standard for Named Vegetable Oils, table 2; CXS
 * 33-1981 (olive); CXS 211-1999 (lard, tallow); recalled, but for sunflower, read as amended in
 * 2022. The row of mixed used oil is judged.
 */
public enum OilKind implements Named {
  /** Rapeseed of low erucic acid, canola. */
  RAPESEED(182, 193, 914, 920),
  /** Sunflower. */
  SUNFLOWER(187, 194, 916, 923),
  /** Soya bean. */
  SOYBEAN(189, 195, 919, 925),
  /** Corn (maize) germ. */
  CORN(187, 195, 917, 925),
  /** Olive. */
  OLIVE(184, 196, 910, 916),
  /** Peanut, groundnut. */
  PEANUT(187, 196, 912, 920),
  /** Cottonseed. */
  COTTONSEED(189, 198, 918, 926),
  /** Safflower. */
  SAFFLOWER(186, 198, 922, 927),
  /** Palm (50 C). */
  PALM(190, 209, 891, 899),
  /** Palm kernel (40 C). */
  PALM_KERNEL(230, 254, 899, 914),
  /** Coconut (40 C). */
  COCONUT(248, 265, 908, 921),
  /** Lard (40 C). */
  LARD(192, 203, 896, 904),
  /** Beef tallow (40 C). */
  TALLOW(190, 202, 894, 904),
  /** Used frying oil of unknown kind; judged, no source. */
  USED_FRYING_OIL(180, 205, 905, 930);

  /** Where the figures come from. */
  public static final Source SOURCE =
      new Source(
          "Codex Alimentarius CXS 210-1999 table 2, CXS 33-1981, CXS 211-1999: saponification"
              + " value and relative density",
          Check.RECALLED);

  private static final double WATER_AT_20C_KG_PER_L = 0.9982;

  private final ValidRange saponificationMgPerG;
  private final ValidRange densityKgPerM3;

  OilKind(
      double saponificationFrom,
      double saponificationTo,
      double relativeDensityFrom,
      double relativeDensityTo) {
    this.saponificationMgPerG =
        new ValidRange("saponification value", saponificationFrom, saponificationTo, "mg KOH/g");
    this.densityKgPerM3 =
        new ValidRange(
            "density",
            relativeDensityFrom * WATER_AT_20C_KG_PER_L,
            relativeDensityTo * WATER_AT_20C_KG_PER_L,
            "kg/m3");
  }

  /**
   * Potassium hydroxide that one gram of oil takes up.
   *
   * @return the standard's range (mg/g)
   */
  public ValidRange saponificationMgPerG() {
    return saponificationMgPerG;
  }

  /**
   * Density at the temperature the standard states.
   *
   * @return the standard's range (kg/m3)
   */
  public ValidRange densityKgPerM3() {
    return densityKgPerM3;
  }
}
