package starchfilm.material.recipe;

import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Figures;

/** The rules every amount of a recipe obeys, each refused in one sentence. */
final class Amounts {
  private Amounts() {}

  static void requireMass(String what, Estimate massKg) {
    if (massKg.value() < 0) {
      throw new IllegalArgumentException(
          what
              + ": "
              + Figures.grams(massKg.value())
              + " g given, allowed 0 g or more; write the grams weighed");
    }
  }

  static void requireFraction(String what, Estimate fraction, double most) {
    if (fraction.value() < 0 || fraction.value() > most) {
      throw new IllegalArgumentException(
          what
              + ": "
              + Figures.percent(fraction.value())
              + " % given, allowed 0 to "
              + Figures.percent(most)
              + " %; write the share of the mass as weighed");
    }
  }
}
