package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Source;

/** Something that multiplies what the rules give for fresh, clean laboratory film. */
interface FilmInfluence {
  /**
   * What it does to one property.
   *
   * @param property the property
   * @param film the film at rest with its air
   * @return the factor and its uncertainty; {@link Effect#NONE} where it does not act
   */
  Effect on(FilmProperty property, FilmState film);

  /** What it is, in the trade's words, for the list of extrapolations. */
  String name();

  /** Every range it holds for. */
  List<Limit> limits();

  /** Where it comes from. */
  List<Source> sources();

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
