package starchfilm.learning;

import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmProperty;

/** How far plates lie apart that are meant to be the same, before anything is learnt. */
public final class OwnScatter {
  private OwnScatter() {}

  /** Each plate's own part of the factors of its drying, its pour weighed. */
  public static ParameterDistribution drying() {
    return PlateModel.ownShare(true);
  }

  /**
   * Scatter of what a plate's strips show.
   *
   * @param property tensile strength or elongation at break
   * @param strips strips pulled of each plate, at least 1
   * @return standard deviation of the natural logarithm of their mean
   */
  public static double logSd(FilmProperty property, int strips) {
    return Math.hypot(
        SharedStrips.filmLogSd(property),
        StripLikelihoods.stripLogSd(property) / Math.sqrt(strips));
  }
}
