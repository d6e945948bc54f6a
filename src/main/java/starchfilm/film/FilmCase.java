package starchfilm.film;

import starchfilm.evidence.Estimate;
import starchfilm.recipe.Composition;
import starchfilm.recipe.Cook;

/**
 * Everything a film forecast needs to know.
 *
 * @param composition the paste
 * @param plasticiserRelativeSd relative standard uncertainty of glycerol per dry starch
 * @param cook how the paste was cooked; with the acid it decides the chain cuts
 * @param wetThicknessM wet thickness of the pour (m)
 * @param relativeHumidity of the air where the film is used (ratio, 0 to 1)
 * @param temperatureK of the air where the film is used (K)
 * @param ageS time between dry-through and use (s)
 */
public record FilmCase(
    Composition composition,
    double plasticiserRelativeSd,
    Cook cook,
    Estimate wetThicknessM,
    double relativeHumidity,
    double temperatureK,
    double ageS) {}
