package starchfilm.material.recipe;

import starchfilm.numerics.evidence.Estimate;

/**
 * Vinegar as weighed.
 *
 * @param massKg vinegar (kg)
 * @param acidityFraction acetic acid (kg per kg vinegar, 0 to 1), as the label's percentage
 */
public record VinegarPortion(Estimate massKg, Estimate acidityFraction) {
  /** Checks both figures. */
  public VinegarPortion {
    Amounts.requireMass("vinegar", massKg);
    Amounts.requireFraction("acidity of the vinegar", acidityFraction, 1);
  }
}
