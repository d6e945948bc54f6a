package starchfilm.film;

import java.util.List;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;

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
   * The paste with the lever pulled.
   *
   * @param paste the paste the lever was made for
   * @return the changed paste, per kilogram
   */
  public Composition pulled(Composition paste) {
    return paste.with(ingredient, toKgPerKgPaste);
  }

  /**
   * What it does to one property.
   *
   * @param property the property
   * @return its effect
   */
  public IngredientEffect on(FilmProperty property) {
    return effects.stream()
        .filter(effect -> effect.property() == property)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no effect on " + property.tradeName()));
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
