package starchfilm.film;

import java.util.ArrayList;
import java.util.List;
import starchfilm.material.sorption.FilmIsotherm;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.Source;

/**
 * Moisture the film holds in the air of use: the figure of {@code sorption}, which here gets its
 * band.
 *
 * <p>Band: times or divided by 1.15 (judged), its logarithm widened as the isotherm says for damp
 * air and for salt. Ranges and sources are the isotherm's own.
 *
 * @param isotherm of the paste it comes from
 * @param film the film at rest
 */
record EquilibriumMoisture(FilmIsotherm isotherm, FilmState film) {
  private static final double BAND_FACTOR = 1.15;

  private static final Source BAND_SOURCE =
      new Source("band of 15 % on the equilibrium moisture content: assumed", Check.JUDGED);

  /**
   * The band.
   *
   * @param below moisture with one standard deviation less plasticiser (kg per kg dry solids)
   * @param above moisture with one standard deviation more
   * @return 10, 50 and 90 % points (kg per kg dry solids)
   */
  Band band(double below, double above) {
    double widened = Math.pow(BAND_FACTOR, isotherm.bandFactor(film.relativeHumidity()));
    return RuleScatter.factor(widened).band(film.waterKgPerKgDry(), below, above, 0);
  }

  /** What of the isotherm's ranges the film does not meet. */
  List<Extrapolation> extrapolations() {
    return isotherm.extrapolations(film.relativeHumidity(), film.temperatureK());
  }

  /** What the figure rests on. */
  List<Source> sources() {
    List<Source> sources = new ArrayList<>(isotherm.sources());
    sources.add(BAND_SOURCE);
    return sources;
  }
}
