package starchfilm.material.recipe;

import starchfilm.numerics.evidence.Estimate;

/**
 * Vinegar as weighed.
 *
 * @param massKg vinegar (kg)
 * @param acidityFraction acetic acid (kg per kg vinegar, 0 to 1), as the label's percentage
 */
public record VinegarPortion(Estimate massKg, Estimate acidityFraction) {
  /**
   * Rise of density per mass fraction of acetic acid in dilute vinegar (kg/m3): about 1.4 kg/m3 a
   * per cent. Source: CRC Handbook of Chemistry and Physics, concentrative properties of aqueous
   * solutions, acetic acid (recalled, rounded).
   */
  private static final double ACETIC_ACID_SLOPE_KG_PER_M3 = 140;

  /** Checks both figures. */
  public VinegarPortion {
    Amounts.requireMass("vinegar", massKg);
    Amounts.requireFraction("acidity of the vinegar", acidityFraction, 1);
  }

  /**
   * Density of vinegar.
   *
   * @param acidity acetic acid (kg per kg); above 0.2 it rises no more
   * @return kg/m3
   */
  public static double kgPerM3(double acidity) {
    return Composition.WATER_KG_PER_M3 + ACETIC_ACID_SLOPE_KG_PER_M3 * Math.min(acidity, 0.2);
  }
}
