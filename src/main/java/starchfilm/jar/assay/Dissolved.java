package starchfilm.jar.assay;

/**
 * What a jar holds beside glycerol and water, as far as it changes a reading (kg per kg jar).
 *
 * @param salt salt
 * @param fatty soap and fatty acid
 * @param alcohol methanol or ethanol
 */
record Dissolved(double salt, double fatty, double alcohol) {
  /** Nothing beside glycerol and water. */
  static final Dissolved NOTHING = new Dissolved(0, 0, 0);

  /** All that stays in a film. */
  double stays() {
    return salt + fatty;
  }

  /** All of it. */
  double all() {
    return salt + fatty + alcohol;
  }
}
