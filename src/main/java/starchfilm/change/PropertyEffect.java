package starchfilm.change;

import java.util.Optional;
import starchfilm.film.FilmProperty;

/**
 * The effect of more of one ingredient on one property of the film.
 *
 * @param property the property
 * @param from middle of the forecast as it is, in the property's unit
 * @param to middle of the forecast with more of the ingredient
 * @param unmoved why the property does not move visibly; empty if it does
 */
public record PropertyEffect(
    FilmProperty property, double from, double to, Optional<NoEffectReason> unmoved) {}
