package starchfilm.film;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The rules in use, one a property. To add a rule with its source: write a class that extends
 * {@link FilmRule}, and put it into {@link #published()}.
 */
final class FilmRules {
  private final Map<FilmProperty, FilmRule> byProperty;

  /** One rule a property; a second for one of them is refused. */
  private FilmRules(FilmRule... rules) {
    byProperty =
        new EnumMap<>(
            Arrays.stream(rules)
                .collect(Collectors.toMap(FilmRule::property, Function.identity())));
  }

  /** The rules the program forecasts with. */
  static FilmRules published() {
    return new FilmRules(
        new CouchmanKaraszTransition(),
        new StrengthRule(),
        new StretchRule(),
        new StiffnessRule(),
        new FittedVapourPermeability());
  }

  /**
   * The rule for a property.
   *
   * @throws IllegalArgumentException if no rule gives it
   */
  FilmRule of(FilmProperty property) {
    return Optional.ofNullable(byProperty.get(property))
        .orElseThrow(
            () -> new IllegalArgumentException("no rule gives the " + property.tradeName()));
  }

  /** All rules, in the order of the properties. */
  List<FilmRule> all() {
    return List.copyOf(byProperty.values());
  }
}
