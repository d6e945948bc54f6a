package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Source;

/** Something that multiplies what the rules give for fresh, clean laboratory film. */
abstract class FilmInfluence extends Basis {
  FilmInfluence(String name, List<RuleLimit> limits, List<Source> sources) {
    super(name, limits, sources);
  }

  /**
   * What it does to one property.
   *
   * @param property the property
   * @param film the film at rest with its air
   * @return the factor and its uncertainty; {@link Effect#NONE} where it does not act
   */
  abstract Effect on(FilmProperty property, FilmState film);

  /**
   * A factor on a property.
   *
   * @param factor what the middle is multiplied by; above 0
   * @param logSd standard deviation of the factor's logarithm; at least 0
   */
  record Effect(double factor, double logSd) {
    /** Leaves the property as it is. */
    static final Effect NONE = new Effect(1, 0);
  }
}
