package starchfilm.planning;

import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.OptionalDouble;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.figures.Figures;

/**
 * Starch in the cupboard.
 *
 * @param kind the kind
 * @param massKg powder at hand (kg, above 0); empty for plenty
 * @param moistureFraction water in the powder (kg per kg powder, 0 to 0.3)
 */
public record StarchAtHand(StarchKind kind, OptionalDouble massKg, Estimate moistureFraction) {

  /** Checks both figures. */
  public StarchAtHand {
    Refusal.unless(
        massKg.orElse(1) > 0,
        kind + " starch at hand",
        Figures.grams(massKg.orElse(1)) + " g",
        "more than 0 g; write the grams in the bag, or leave them out if you have plenty");
    PERCENT.require(
        "moisture of " + kind + " starch",
        moistureFraction.value(),
        0,
        30,
        "leave it out for what " + kind + " starch usually holds");
  }

  /**
   * Dry starch at hand.
   *
   * @return kg; positive infinity for plenty
   */
  double dryKg() {
    return massKg.orElse(Double.POSITIVE_INFINITY) * (1 - moistureFraction.value());
  }

  /** The same starch, multiplied; unlimited where the factor is infinite. */
  StarchAtHand times(double factor) {
    return new StarchAtHand(
        kind,
        massKg.isPresent() && Double.isFinite(factor)
            ? OptionalDouble.of(massKg.getAsDouble() * factor)
            : OptionalDouble.empty(),
        moistureFraction);
  }
}
