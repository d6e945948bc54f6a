package starchfilm.film;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.Source;

/**
 * The forecast of the dry film, each figure with its band.
 *
 * @param equilibriumMoisture kg water per kg dry solids
 * @param dryThicknessM thickness at that moisture (m)
 * @param glassTransitionK glass transition of the starch-rich phase (K)
 * @param tensileStrengthPa tensile strength (Pa)
 * @param elongationAtBreak stretch at break over length (ratio)
 * @param youngsModulusPa Young's modulus (Pa)
 * @param vapourPermeability water-vapour permeability (kg/(m s Pa))
 * @param acid what the vinegar did to paste and chains
 * @param feel what it is like in the hand
 * @param feelChances how likely each feel is
 * @param withheld figures that are not to be stated, and why; their bands are what the rules give
 * @param cautions what the film rules warn of, such as salt or phase separation
 * @param extrapolations rules used outside their range
 * @param sources where the rules come from
 */
public record FilmForecast(
    Band equilibriumMoisture,
    Band dryThicknessM,
    Band glassTransitionK,
    Band tensileStrengthPa,
    Band elongationAtBreak,
    Band youngsModulusPa,
    Band vapourPermeability,
    AcidEffect acid,
    Feel feel,
    FeelChances feelChances,
    Map<FilmProperty, Withheld> withheld,
    List<FilmCaution> cautions,
    List<Extrapolation> extrapolations,
    List<Source> sources) {
  /** Copies map and lists. */
  public FilmForecast {
    withheld = Collections.unmodifiableMap(new TreeMap<>(withheld));
    cautions = List.copyOf(cautions);
    extrapolations = List.copyOf(extrapolations);
    sources = List.copyOf(sources);
  }

  /**
   * Tells whether a figure is not to be stated.
   *
   * @param property the figure
   * @return why; empty where it may be stated
   */
  public Optional<Withheld> withheld(FilmProperty property) {
    return Optional.ofNullable(withheld.get(property));
  }

  /** The middle of a figure, in its SI unit; not a number where it is not to be stated. */
  public double stated(FilmProperty property) {
    return withheld(property).isPresent() ? Double.NaN : property.of(this).middle();
  }
}
