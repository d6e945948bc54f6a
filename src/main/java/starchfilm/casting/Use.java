package starchfilm.casting;

/**
 * Where a film will be used.
 *
 * @param relativeHumidity of the air there (ratio, 0 to 1)
 * @param temperatureK of the air there (K)
 * @param ageS time between dry-through and use (s, 0 or more)
 */
public record Use(double relativeHumidity, double temperatureK, double ageS) {
  /** The coldest air a film is planned for (C): a freezer; judged. */
  public static final double COLDEST_C = -20;

  /** The warmest air a film is planned for (C); judged. */
  public static final double WARMEST_C = 80;
}
