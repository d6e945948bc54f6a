package starchfilm.material.ingredient;

import starchfilm.numerics.evidence.Refusal;

/** The rule every mixture of glycerol and water obeys. */
final class Mixtures {
  private Mixtures() {}

  static void requireFraction(double glycerolFraction) {
    Refusal.unless(
        glycerolFraction >= 0 && glycerolFraction <= 1,
        "glycerol in glycerol and water",
        glycerolFraction,
        "0 to 1 (85 % is 0.85)");
  }
}
