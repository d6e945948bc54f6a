package starchfilm.planning;

import starchfilm.film.FilmForecast;

/**
 * One point of the recipe space, as far as the search needs to know it.
 *
 * @param gap 0 where the recipe can be made; else how far (log of wet thickness) its thinnest
 *     allowed pour is above its thickest
 * @param ceilingM that thickness (m)
 * @param otherCeilingM thickest pour (m) that all limits but the date allow
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
    Limit ceiling,
    double ceilingM,
    double otherCeilingM,
    double floorM,
    double readyS,
    double timeSlope,
    double chance,
    double wishChance,
    double filmKg) {
  boolean isPossible() {
    return gap == 0;
  }
}
