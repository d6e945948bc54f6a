/**
 * The properties of the dry film: glass transition, strength, elongation, stiffness, permeability,
 * thickness and feel.
 *
 * <p>A {@link starchfilm.film.FilmProperty} of fresh, clean laboratory film is given by one rule:
 * one class with its formula, its band (a factor between laboratories, one standard deviation of
 * the logarithm), its valid ranges and its sources. What acid, salt, age and workmanship do to it
 * are influences: factors, each with its own uncertainty and source. The bands are wide; they rank
 * recipes and do not promise megapascals.
 *
 * <p>Start from {@link starchfilm.film.FilmForecaster}. {@link starchfilm.film.DryingMechanics}
 * says how stiff and tough a drying film is.
 */
@NullMarked
package starchfilm.film;

import org.jspecify.annotations.NullMarked;
