package starchfilm.film;

import starchfilm.material.recipe.Composition;

/**
 * A paste with more of one ingredient and the same of all others, again counted per kilogram.
 *
 * @param ingredient what is changed
 * @param fromKg how much was in one kilogram of the first paste (kg)
 * @param toKg how much there is then, with the other ingredients of that kilogram unchanged (kg)
 */
record PasteChange(Ingredient ingredient, double fromKg, double toKg) {
  /** The change that multiplies an ingredient by a factor (above 0). */
  static PasteChange times(double factor, Ingredient ingredient, Composition paste) {
    double from = amount(ingredient, paste);
    return new PasteChange(ingredient, from, from * factor);
  }

  /** How much of an ingredient a kilogram of paste holds (kg). */
  static double amount(Ingredient ingredient, Composition paste) {
    return switch (ingredient) {
      case STARCH -> paste.dryStarch();
      case GLYCEROL -> paste.glycerol();
      case VINEGAR -> paste.aceticAcid();
      case WATER -> paste.water();
    };
  }

  /**
   * Applies the change.
   *
   * @param paste the paste it was made for
   * @return the changed paste, per kilogram
   */
  Composition appliedTo(Composition paste) {
    double starch = ingredient == Ingredient.STARCH ? toKg : paste.dryStarch();
    double glycerol = ingredient == Ingredient.GLYCEROL ? toKg : paste.glycerol();
    double acid = ingredient == Ingredient.VINEGAR ? toKg : paste.aceticAcid();
    double water = ingredient == Ingredient.WATER ? toKg : paste.water();
    double total = starch + glycerol + paste.salt() + acid + water;
    return new Composition(
        paste.starchShares(),
        starch / total,
        glycerol / total,
        paste.salt() / total,
        acid / total,
        water / total);
  }
}
