package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Source;

/**
 * One property of the dry film, as one source gives it. To add a rule, write one class and put it
 * into the list of {@link FilmRules}.
 */
interface FilmRule {
  /** The property it gives; the value is in that property's unit. */
  FilmProperty property();

  /**
   * The middle of what laboratories report for smooth, bubble-free film.
   *
   * @param film the film at rest with its air
   * @return the value, in the unit of {@link #property()}; never NaN, 0 or more
   */
  double predict(FilmState film);

  /** How far a new laboratory lies from it. */
  Scatter scatter();

  /**
   * How much further down the band reaches where the rule is known to be too high for some films.
   *
   * @param film the film at rest with its air
   * @return what the low end is divided by (ratio, 1 or more)
   */
  default double lowEndDividedBy(FilmState film) {
    return 1;
  }

  /** Every range it holds for; outside, the value is an extrapolation. */
  List<Limit> limits();

  /** Where it comes from. */
  List<Source> sources();
}
