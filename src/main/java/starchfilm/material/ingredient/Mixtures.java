package starchfilm.material.ingredient;

/** The rule every mixture of glycerol and water obeys. */
final class Mixtures {
  private Mixtures() {}

  static void requireFraction(double glycerolFraction) {
    if (!(glycerolFraction >= 0 && glycerolFraction <= 1)) {
      throw new IllegalArgumentException(
          "glycerol in glycerol and water: "
              + glycerolFraction
              + " given, allowed 0 to 1 (85 % is 0.85)");
    }
  }
}
