/**
 * The risks of a plate while it dries, their causes, and which change would help most.
 *
 * <p>A film stuck to its plate builds up stress as it shrinks: it <em>cracks</em> where a crack
 * sets more energy free than it takes up, and <em>lets go</em> where that energy passes the
 * adhesion, to shrink in its plane and curl. It <em>moulds</em> where it stays wet for too long.
 * All are read from the course of the plate's drying, and every change is made and the plate solved
 * again. Start from {@link starchfilm.film.risk.PlateRisks}.
 */
@NullMarked
package starchfilm.film.risk;

import org.jspecify.annotations.NullMarked;
