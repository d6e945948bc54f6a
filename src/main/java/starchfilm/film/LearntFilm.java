package starchfilm.film;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import starchfilm.numerics.evidence.Estimate;

/**
 * The evidence of strips pulled from one maker's films on the film rules.
 *
 * <p>A factor's logarithm is added to the logarithm of the rule's figure for the same hand, and its
 * standard uncertainty takes the place of the rule's scatter between laboratories: the maker's own
 * strips are one laboratory, and the only one that counts for the next film.
 *
 * @param logFactors natural logarithm of what a property is multiplied by, with its standard
 *     uncertainty; only for properties that strips measure
 */
public record LearntFilm(Map<FilmProperty, Estimate> logFactors) {
  /** Nothing was pulled yet. */
  public static final LearntFilm NOTHING = new LearntFilm(Map.of());

  public LearntFilm {
    logFactors = Collections.unmodifiableMap(new TreeMap<>(logFactors));
  }

  /** What the middle of a property is multiplied by. */
  double on(FilmProperty property) {
    Estimate learnt = logFactors.get(property);
    return learnt == null ? 1 : Math.exp(learnt.value());
  }

  /** The scatter that is left. */
  RuleScatter left(FilmProperty property, RuleScatter untaught) {
    Estimate learnt = logFactors.get(property);
    return learnt == null ? untaught : RuleScatter.factor(Math.exp(learnt.sd()));
  }
}
