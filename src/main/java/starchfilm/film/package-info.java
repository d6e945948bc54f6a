/**
 * What the dry film will be like: glass transition, strength, elongation, stiffness, permeability,
 * thickness and feel.
 *
 * <p>Each rule is one class with its formula, its band (a factor between laboratories, one standard
 * deviation of the logarithm), its valid range and its source. The bands are wide; they rank
 * recipes and do not promise megapascals. Start from {@code FilmForecaster}.
 */
@NullMarked
package starchfilm.film;

import org.jspecify.annotations.NullMarked;
