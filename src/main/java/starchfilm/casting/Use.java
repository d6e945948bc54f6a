package starchfilm.casting;

/**
 * Where a film will be used.
 *
 * @param relativeHumidity of the air there (ratio, 0 to 1)
 * @param temperatureK of the air there (K)
 * @param ageS time between dry-through and use (s, 0 or more)
 */
public record Use(double relativeHumidity, double temperatureK, double ageS) {}
