package starchfilm.film;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * The rules in use, one a property. To add a rule with its source: write a class that implements
 * {@link FilmRule}, and put it into {@link #published()}.
 */
final class FilmRules {
  private final Map<FilmProperty, FilmRule> byProperty = new EnumMap<>(FilmProperty.class);

  private FilmRules(List<FilmRule> rules) {
    for (FilmRule rule : rules) {
      FilmRule other = byProperty.put(rule.property(), rule);
      if (other != null) {
        throw new IllegalArgumentException("two rules give the " + rule.property().tradeName());
      }
    }
  }

  /** The rules the program forecasts with. */
  static FilmRules published() {
    return new FilmRules(
        List.of(
            new CouchmanKaraszTransition(),
            new StrengthRule(),
            new StretchRule(),
            new StiffnessRule(),
            new FittedVapourPermeability()));
  }

  /**
   * The rule for a property.
   *
   * @throws IllegalArgumentException if no rule gives it
   */
  FilmRule of(FilmProperty property) {
    FilmRule rule = byProperty.get(property);
    if (rule == null) {
      throw new IllegalArgumentException("no rule gives the " + property.tradeName());
    }
    return rule;
  }

  /** All rules, in the order of the properties. */
  List<FilmRule> all() {
    return List.copyOf(byProperty.values());
  }
}
