package starchfilm.film;

import java.util.List;

/**
 * What more of one ingredient does to every property, all other amounts and the wet thickness kept.
 *
 * @param ingredient the ingredient; vinegar is counted by its acetic acid
 * @param fromKgPerKgPaste how much a kilogram of paste holds (kg)
 * @param toKgPerKgPaste how much it is changed to, on the same kilogram (kg)
 * @param effects one entry per property, in their order
 */
public record Lever(
    Ingredient ingredient,
    double fromKgPerKgPaste,
    double toKgPerKgPaste,
    List<IngredientEffect> effects) {
  /** Copies the list. */
  public Lever {
    effects = List.copyOf(effects);
  }

  /**
   * The properties that move visibly.
   *
   * @return their effects, in order
   */
  public List<IngredientEffect> moved() {
    return effects.stream().filter(effect -> effect.unmoved().isEmpty()).toList();
  }
}
