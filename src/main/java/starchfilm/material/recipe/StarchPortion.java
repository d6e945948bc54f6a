package starchfilm.material.recipe;

import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/**
 * Starch powder as weighed.
 *
 * @param kind the kind of starch
 * @param massKg powder with its own moisture (kg)
 * @param moistureFraction water in the powder (kg per kg powder, wet basis, 0 to 0.3)
 */
public record StarchPortion(StarchKind kind, Estimate massKg, Estimate moistureFraction) {
  private static final double MOST_MOISTURE = 0.3;
  private static final String POWDER = " starch";

  /** Checks both figures. */
  public StarchPortion {
    Amounts.requireMass(kind.tradeName() + POWDER, massKg);
    Amounts.requireFraction(
        "moisture of " + kind.tradeName() + POWDER, moistureFraction, MOST_MOISTURE);
  }

  /** What the bag says, such as {@code potato starch}. */
  public String powder() {
    return kind.tradeName() + POWDER;
  }

  /**
   * Dry starch in the portion.
   *
   * @return kg
   */
  public double dryKg() {
    return massKg.value() * (1 - moistureFraction.value());
  }
}
