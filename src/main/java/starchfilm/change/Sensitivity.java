package starchfilm.change;

import java.util.List;
import starchfilm.film.FilmProperty;
import starchfilm.material.recipe.Ingredient;

/**
 * The effect of more of one ingredient on film and drying, all other amounts and the wet thickness
 * kept.
 *
 * @param ingredient the ingredient; vinegar is counted by its acetic acid
 * @param fromKgPerKgPaste how much a kilogram of paste holds (kg)
 * @param toKgPerKgPaste how much it is changed to, on the same kilogram (kg)
 * @param dryThroughBeforeS dry-through of the thick spot as it is, in the middle case (s)
 * @param dryThroughAfterS the same with more of the ingredient (s)
 * @param effects one entry per property, in their order
 */
public record Sensitivity(
    Ingredient ingredient,
    double fromKgPerKgPaste,
    double toKgPerKgPaste,
    double dryThroughBeforeS,
    double dryThroughAfterS,
    List<PropertyEffect> effects) {
  /** The effect on one property. */
  public PropertyEffect on(FilmProperty property) {
    return effects.get(property.ordinal());
  }
}
