package starchfilm.film;

import java.util.function.ToDoubleFunction;
import starchfilm.numerics.evidence.ValidRange;

/**
 * One range a rule holds for, and how to read the quantity off a film.
 *
 * @param range the range, in the unit it is shown in
 * @param reading the film's value, in the range's unit
 */
record RuleLimit(ValidRange range, ToDoubleFunction<FilmState> reading) {
  /** Rounding of a quantity that sits on the range's end; no rule is that sharp. */
  private static final double ROUNDING = 1e-9;

  /** Whether a film lies inside, ends included. */
  boolean holds(FilmState film) {
    double value = reading.applyAsDouble(film);
    double slack = ROUNDING * Math.max(Math.abs(range.min()), Math.abs(range.max()));
    return value >= range.min() - slack && value <= range.max() + slack;
  }
}
