package starchfilm.film;

import java.util.Optional;
import starchfilm.material.recipe.Ingredient;

/**
 * What more of one ingredient does to one property.
 *
 * @param ingredient the ingredient
 * @param property the property
 * @param from middle of the forecast as it is, in the property's unit
 * @param to middle of the forecast with more of the ingredient
 * @param unmoved why the property does not move visibly; empty if it does
 */
public record IngredientEffect(
    Ingredient ingredient,
    FilmProperty property,
    double from,
    double to,
    Optional<Unmoved> unmoved) {}
