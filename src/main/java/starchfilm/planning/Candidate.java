package starchfilm.planning;

import java.util.Collections;
import java.util.Comparator;
import java.util.Map;
import starchfilm.film.FilmForecast;

/**
 * One point of the recipe space, as far as the search needs to know it.
 *
 * @param gap 0 where the recipe can be made; else how far (log of wet thickness) its thinnest
 *     allowed pour is above its thickest
 * @param ceilings thickest pour (m) that each limit allows
 * @param floorM thinnest pour allowed (m)
 * @param readyS when the thick spot is ready, in the middle of the likely cases (s)
 * @param timeSlope how the logarithm of that time rises with that of the wet thickness
 * @param chance share of the likely cases in which it is ready by the date, or without one at all
 * @param filmKg film from all plates, at rest with the air of use (kg)
 */
record Candidate(
    Design design,
    FilmForecast film,
    double gap,
    Map<Limit, Double> ceilings,
    double floorM,
    double readyS,
    double timeSlope,
    double chance,
    double wishChance,
    double filmKg) {
  boolean isPossible() {
    return gap == 0;
  }

  /**
   * Dry thickness (m): the film was forecast for another pour, and its thickness goes with that.
   */
  double dryThicknessM() {
    return film.dryThicknessM().middle() * design.wetThicknessM() / RecipeSpace.ANY_THICKNESS_M;
  }

  /** Which limit allows least; of equals the thickness of the film. */
  Limit ceiling() {
    double lowestM = ceilingM();
    return ceilings.keySet().stream()
        .filter(limit -> ceilingM(limit) == lowestM)
        .max(Comparator.comparing(limit -> limit == Limit.THICKEST_FILM))
        .orElseThrow();
  }

  /** The thickest pour (m) that all limits allow. */
  double ceilingM() {
    return Collections.min(ceilings.values());
  }

  /** The thickest pour (m) that one limit allows. */
  double ceilingM(Limit limit) {
    return ceilings.getOrDefault(limit, Double.POSITIVE_INFINITY);
  }
}
