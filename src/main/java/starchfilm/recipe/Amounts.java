package starchfilm.recipe;

import starchfilm.evidence.Estimate;

/** The rules every amount of a recipe obeys, each refused in one sentence. */
final class Amounts {
  private static final double GRAMS_PER_KG = 1000;
  private static final double PERCENT = 100;

  private Amounts() {}

  static void requireMass(String what, Estimate massKg) {
    if (massKg.value() < 0) {
      throw new IllegalArgumentException(
          what
              + ": "
              + massKg.value() * GRAMS_PER_KG
              + " g given, allowed 0 g or more; write the grams weighed");
    }
  }

  static void requireFraction(String what, Estimate fraction, double most) {
    if (fraction.value() < 0 || fraction.value() > most) {
      throw new IllegalArgumentException(
          what
              + ": "
              + fraction.value() * PERCENT
              + " % given, allowed 0 to "
              + most * PERCENT
              + " %; write the share of the mass as weighed");
    }
  }
}
