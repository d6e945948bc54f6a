package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.Source;

/**
 * What the dry film will be like, each figure with its band.
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
    List<FilmCaution> cautions,
    List<Extrapolation> extrapolations,
    List<Source> sources) {
  /** Copies the lists. */
  public FilmForecast {
    cautions = List.copyOf(cautions);
    extrapolations = List.copyOf(extrapolations);
    sources = List.copyOf(sources);
  }
}
