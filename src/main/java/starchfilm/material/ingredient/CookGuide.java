package starchfilm.material.ingredient;

import starchfilm.numerics.evidence.ValidRange;

/**
 * How a starch is cooked to a paste; the remark is common practice, no source.
 *
 * @param topCelsius the temperature to bring the whole pot to (C)
 * @param holdMinutes how long to hold it there, stirring (min)
 * @param openPanWorks false where an open pan does not get hot enough to gelatinise it
 * @param remark one sentence for the cook
 */
public record CookGuide(
    ValidRange topCelsius, ValidRange holdMinutes, boolean openPanWorks, String remark) {
  static CookGuide openPan(
      double topFrom, double topTo, double minutesFrom, double minutesTo, String remark) {
    return new CookGuide(
        new ValidRange("top temperature", topFrom, topTo, "°C"),
        new ValidRange("time at the top temperature", minutesFrom, minutesTo, "min"),
        true,
        remark);
  }
}
