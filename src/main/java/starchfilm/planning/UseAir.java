package starchfilm.planning;

/**
 * Where the film will be used.
 *
 * @param relativeHumidity of the air there (ratio, 0 to 0.95)
 * @param temperatureK of the air there (K)
 * @param ageS time between dry-through and use (s, 0 or more)
 */
public record UseAir(double relativeHumidity, double temperatureK, double ageS) {
  private static final double DAMPEST = 0.95;
  private static final double COLDEST_K = 253.15;
  private static final double WARMEST_K = 353.15;

  /** Checks every figure. */
  public UseAir {
    if (!(relativeHumidity >= 0 && relativeHumidity <= DAMPEST)) {
      throw new UnworkableRequestException(
          Sentence.of(
              "relative humidity where the film is used",
              Sentence.percent(relativeHumidity),
              "0 to 95 %",
              "starch film in damper air turns to gel"));
    }
    if (!(temperatureK >= COLDEST_K && temperatureK <= WARMEST_K)) {
      throw new UnworkableRequestException(
          Sentence.of(
              "temperature where the film is used",
              Sentence.number(temperatureK - 273.15) + " °C",
              "-20 to 80 °C",
              "write the temperature of the room"));
    }
    if (!(ageS >= 0) || Double.isInfinite(ageS)) {
      throw new UnworkableRequestException(
          Sentence.of("time before use", Sentence.days(ageS), "0 days or more", "write 7d"));
    }
  }
}
