/**
 * What may go wrong with a plate while it dries, why, and which change would help most.
 *
 * <p>A film <em>cracks</em> where a firm part must stretch more than it can; it <em>moulds</em>
 * where it stays wet for too long. Both are read from the course of the plate's drying, and every
 * change is made and the plate solved again. Start from {@link
 * starchfilm.film.risk.RiskForecaster}.
 */
@NullMarked
package starchfilm.film.risk;

import org.jspecify.annotations.NullMarked;
