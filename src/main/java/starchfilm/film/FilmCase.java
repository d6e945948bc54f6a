package starchfilm.film;

import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.numerics.evidence.Estimate;

/**
 * Everything a film forecast needs to know.
 *
 * @param composition the paste
 * @param plasticiserRelativeSd relative standard uncertainty of glycerol per dry starch (0 or more)
 * @param solidsRelativeSd relative standard uncertainty of the dry solids per kg paste (0 or more)
 * @param cook how the paste was cooked; with the acid it decides the chain cuts
 * @param wetThicknessM wet thickness of the pour (m, above 0)
 * @param relativeHumidity of the air where the film is used (ratio, 0 to below 1)
 * @param temperatureK of the air where the film is used (K, 233 to 373)
 * @param ageS time between dry-through and use (s, 0 or more)
 */
public record FilmCase(
    Composition composition,
    double plasticiserRelativeSd,
    double solidsRelativeSd,
    Cook cook,
    Estimate wetThicknessM,
    double relativeHumidity,
    double temperatureK,
    double ageS) {
  private static final double COLDEST_K = 233;
  private static final double HOTTEST_K = 373;

  /** Checks every figure. */
  public FilmCase {
    require(
        plasticiserRelativeSd >= 0 && Double.isFinite(plasticiserRelativeSd),
        "relative uncertainty of the plasticiser",
        plasticiserRelativeSd,
        "0 or more; give 0.1 for 10 %");
    require(
        solidsRelativeSd >= 0 && Double.isFinite(solidsRelativeSd),
        "relative uncertainty of the solids content",
        solidsRelativeSd,
        "0 or more; give 0.03 for 3 %");
    require(
        wetThicknessM.value() > 0,
        "wet thickness",
        wetThicknessM.value(),
        "above 0 m; give the thickness poured");
    require(
        relativeHumidity >= 0 && relativeHumidity < 1,
        "relative humidity where the film is used",
        relativeHumidity,
        "0 to below 1; film never comes to rest in saturated air, give a drier room");
    require(
        temperatureK >= COLDEST_K && temperatureK <= HOTTEST_K,
        "temperature where the film is used",
        temperatureK,
        "233 to 373 K (-40 to 100 °C); give the temperature of the room");
    require(
        ageS >= 0 && Double.isFinite(ageS), "age", ageS, "0 s or more; give 0 for a fresh film");
  }

  /**
   * A case whose solids content is known exactly.
   *
   * @param composition the paste
   * @param plasticiserRelativeSd relative standard uncertainty of glycerol per dry starch
   * @param cook how the paste was cooked
   * @param wetThicknessM wet thickness of the pour (m)
   * @param relativeHumidity of the air where the film is used (ratio, 0 to below 1)
   * @param temperatureK of the air where the film is used (K)
   * @param ageS time between dry-through and use (s)
   */
  public FilmCase(
      Composition composition,
      double plasticiserRelativeSd,
      Cook cook,
      Estimate wetThicknessM,
      double relativeHumidity,
      double temperatureK,
      double ageS) {
    this(
        composition,
        plasticiserRelativeSd,
        0,
        cook,
        wetThicknessM,
        relativeHumidity,
        temperatureK,
        ageS);
  }

  /** The same case with another paste. */
  FilmCase with(Composition other) {
    return new FilmCase(
        other,
        plasticiserRelativeSd,
        solidsRelativeSd,
        cook,
        wetThicknessM,
        relativeHumidity,
        temperatureK,
        ageS);
  }

  private static void require(boolean holds, String quantity, double given, String allowed) {
    if (!holds) {
      throw new IllegalArgumentException(
          "film forecast, " + quantity + ": " + given + " given, allowed " + allowed);
    }
  }
}
