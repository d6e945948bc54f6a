package starchfilm.film;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import starchfilm.numerics.evidence.Extrapolation;
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

  /**
   * Says where a film lies outside.
   *
   * @param rule what the rule gives, in the trade's words
   * @param limits the ranges of the rule
   * @param film the film
   * @return one entry per range that does not hold the film
   */
  static Stream<Extrapolation> outside(String rule, List<RuleLimit> limits, FilmState film) {
    return limits.stream()
        .filter(limit -> !limit.holds(film))
        .map(limit -> new Extrapolation(rule, limit.range, limit.reading.applyAsDouble(film)));
  }

  private boolean holds(FilmState film) {
    double value = reading.applyAsDouble(film);
    double slack = ROUNDING * Math.max(Math.abs(range.min()), Math.abs(range.max()));
    return value >= range.min() - slack && value <= range.max() + slack;
  }
}
