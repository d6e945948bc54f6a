package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Source;

/**
 * One property of the dry film, as one source gives it. To add a rule, write one class and put it
 * into the list of {@link FilmRules}.
 */
abstract class FilmRule extends Basis {
  private final FilmProperty property;
  private final RuleScatter scatter;

  /**
   * A rule.
   *
   * @param property the property it gives; the value is in that property's unit
   * @param scatter how far a new laboratory lies from it
   * @param limits every range it holds for
   */
  FilmRule(
      FilmProperty property, RuleScatter scatter, List<RuleLimit> limits, List<Source> sources) {
    super(property.tradeName(), limits, sources);
    this.property = property;
    this.scatter = scatter;
  }

  final FilmProperty property() {
    return property;
  }

  final RuleScatter scatter() {
    return scatter;
  }

  /**
   * The middle of what laboratories report for smooth, bubble-free film.
   *
   * @param film the film at rest with its air
   * @return the value, in the unit of the property; never NaN, 0 or more
   */
  abstract double predict(FilmState film);

  /**
   * How much further down the band reaches where the rule is known to be too high for some films.
   *
   * @param film the film at rest with its air
   * @return what the low end is divided by (ratio, 1 or more)
   */
  double lowEndDividedBy(FilmState film) {
    return 1;
  }
}
