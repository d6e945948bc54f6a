package starchfilm.material.ingredient;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import starchfilm.numerics.evidence.ValidRange;

/**
 * How a starch is cooked to a paste.
 *
 * @param topCelsius the temperature to bring the whole pot to (C)
 * @param holdMinutes how long to hold it there, stirring (min)
 * @param openPanWorks false where an open pan does not get hot enough to gelatinise it
 * @param remark one sentence for the cook
 */
public record CookGuide(
    ValidRange topCelsius, ValidRange holdMinutes, boolean openPanWorks, String remark) {
  private static final double SECONDS_PER_MINUTE = 60;

  static CookGuide openPan(
      double topFrom, double topTo, double minutesFrom, double minutesTo, String remark) {
    return new CookGuide(
        new ValidRange("top temperature", topFrom, topTo, "°C"),
        new ValidRange("time at the top temperature", minutesFrom, minutesTo, "min"),
        true,
        remark);
  }

  /**
   * The middle of the top temperatures.
   *
   * @return temperature (K)
   */
  public double topTemperatureK() {
    return (topCelsius.min() + topCelsius.max()) / 2 + ZERO_CELSIUS_K;
  }

  /**
   * The middle of the holding times.
   *
   * @return time (s)
   */
  public double holdS() {
    return (holdMinutes.min() + holdMinutes.max()) / 2 * SECONDS_PER_MINUTE;
  }
}
