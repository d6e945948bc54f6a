package starchfilm.film;

import starchfilm.casting.Casting;
import starchfilm.casting.Use;

/** What the film rules take at all; outside, the forecast refuses with a sentence. */
final class FilmLimits {
  private static final double COLDEST_K = 233;
  private static final double HOTTEST_K = 373;

  private FilmLimits() {}

  /**
   * Checks every figure that a film forecast uses.
   *
   * @throws IllegalArgumentException where one lies outside; the message is a sentence for the
   *     reader
   */
  static void require(Casting casting) {
    double plasticiserSd = casting.paste().plasticiserRelativeSd();
    require(
        plasticiserSd >= 0 && Double.isFinite(plasticiserSd),
        "relative uncertainty of the plasticiser",
        plasticiserSd,
        "0 or more; give 0.1 for 10 %");
    double solidsSd = casting.paste().solidsRelativeSd();
    require(
        solidsSd >= 0 && Double.isFinite(solidsSd),
        "relative uncertainty of the solids content",
        solidsSd,
        "0 or more; give 0.03 for 3 %");
    require(
        casting.wetThicknessM() > 0,
        "wet thickness",
        casting.wetThicknessM(),
        "above 0 m; give the thickness poured");
    Use use = casting.use();
    require(
        use.relativeHumidity() >= 0 && use.relativeHumidity() < 1,
        "relative humidity where the film is used",
        use.relativeHumidity(),
        "0 to below 1; film never comes to rest in saturated air, give a drier room");
    require(
        use.temperatureK() >= COLDEST_K && use.temperatureK() <= HOTTEST_K,
        "temperature where the film is used",
        use.temperatureK(),
        "233 to 373 K (-40 to 100 °C); give the temperature of the room");
    require(
        use.ageS() >= 0 && Double.isFinite(use.ageS()),
        "age",
        use.ageS(),
        "0 s or more; give 0 for a fresh film");
  }

  private static void require(boolean holds, String quantity, double given, String allowed) {
    if (!holds) {
      throw new IllegalArgumentException(
          "film forecast, " + quantity + ": " + given + " given, allowed " + allowed);
    }
  }
}
