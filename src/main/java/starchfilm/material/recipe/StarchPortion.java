package starchfilm.material.recipe;

import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

/**
 * Starch powder as weighed.
 *
 * @param kind the kind of starch
 * @param massKg powder with its own moisture (kg)
 * @param moistureFraction water in the powder (kg per kg powder, wet basis, 0 to 0.3)
 * @param inertFraction what of the powder is neither starch nor water, such as protein and fibre of
 *     a flour (kg per kg powder, 0 to 0.5)
 */
public record StarchPortion(
    StarchKind kind, Estimate massKg, Estimate moistureFraction, Estimate inertFraction) {
  private static final double MOST_INERT = 0.5;

  /** The powder is a flour from here on. */
  private static final double FLOUR = 0.04;

  private static final double MOST_MOISTURE = 0.3;
  private static final String POWDER = " starch";

  /** Checks both figures. */
  public StarchPortion {
    Amounts.requireMass(kind.tradeName() + POWDER, massKg);
    Amounts.requireFraction(
        "moisture of " + kind.tradeName() + POWDER, moistureFraction, MOST_MOISTURE);
    Amounts.requireFraction("other solids in " + kind.tradeName(), inertFraction, MOST_INERT);
  }

  /** A starch that is all starch and water. */
  public StarchPortion(StarchKind kind, Estimate massKg, Estimate moistureFraction) {
    this(kind, massKg, moistureFraction, Estimate.exact(0));
  }

  /** Returns the name on the bag, such as {@code potato starch} or {@code wheat flour}. */
  public String powder() {
    return kind.tradeName() + (inertFraction.value() > FLOUR ? " flour" : POWDER);
  }

  /**
   * Dry starch in the portion.
   *
   * @return kg
   */
  public double dryKg() {
    return massKg.value() * (1 - moistureFraction.value() - inertFraction.value());
  }
}
