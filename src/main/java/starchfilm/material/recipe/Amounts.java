package starchfilm.material.recipe;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import starchfilm.numerics.evidence.Estimate;

/** The rules every amount of a recipe obeys, each refused in one sentence. */
final class Amounts {
  private Amounts() {}

  static void requireMass(String what, Estimate massKg) {
    GRAM.requireNoneOrMore(what, massKg.value(), "write the grams weighed");
  }

  static void requireFraction(String what, Estimate fraction, double most) {
    PERCENT.require(
        what, fraction.value(), 0, 100 * most, "write the share of the mass as weighed");
  }
}
