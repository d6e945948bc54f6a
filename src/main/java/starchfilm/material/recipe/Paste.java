package starchfilm.material.recipe;

/**
 * The content of the pot after the cook.
 *
 * @param composition the paste per kilogram
 * @param massKg all of it (kg)
 * @param solidsRelativeSd relative standard uncertainty of the dry solids per kg paste that the
 *     weighing of the ingredients leaves; joins the model's own 3 %
 * @param plasticiserRelativeSd relative standard uncertainty of glycerol per dry starch that the
 *     weighing and the jar leave; 0 without glycerol
 */
public record Paste(
    Composition composition, double massKg, double solidsRelativeSd, double plasticiserRelativeSd) {
  /**
   * The paste that a recipe gives.
   *
   * <p>Water of the powders, the jar and the vinegar counts as water, and the water lost in the pot
   * is gone. All acetic acid is taken to stay (assumed, no source): the steam over a dilute
   * solution is poorer in acid than the liquid, so the share of acid lost is below the share of
   * water lost.
   *
   * @param recipe what went into the pot and how it was cooked
   * @return what is in the pot, its mass equal to all that went in less the steam, to rounding
   * @throws IllegalArgumentException if more water is lost than there is, or no dry starch is left
   */
  public static Paste cooked(Recipe recipe) {
    return new MassBalance(recipe).paste();
  }

  /**
   * A kilogram of a paste that is known exactly.
   *
   * @param composition the paste
   */
  public static Paste exactly(Composition composition) {
    return new Paste(composition, 1, 0, 0);
  }

  /** The same mass of another paste, known as well as this. */
  public Paste with(Composition other) {
    return new Paste(other, massKg, solidsRelativeSd, plasticiserRelativeSd);
  }

  /** How much of an ingredient is in the pot (kg). */
  public double kg(Ingredient ingredient) {
    return massKg * composition.amount(ingredient);
  }
}
