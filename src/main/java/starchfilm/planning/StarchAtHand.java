package starchfilm.planning;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.OptionalDouble;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Estimate;

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
    GRAM.requireSome(
        kind + " starch at hand",
        massKg.orElse(1),
        "write the grams in the bag, or leave them out if you have plenty");
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
