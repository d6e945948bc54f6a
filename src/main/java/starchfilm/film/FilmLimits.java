package starchfilm.film;

import starchfilm.casting.Casting;
import starchfilm.numerics.evidence.Refusal;

/** The limits of the film rules; outside, the forecast refuses with a sentence. */
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
    requireFinite(
        "relative uncertainty of the plasticiser",
        casting.paste().plasticiserRelativeSd(),
        "0 or more; give 0.1 for 10 %");
    requireFinite(
        "relative uncertainty of the solids content",
        casting.paste().solidsRelativeSd(),
        "0 or more; give 0.03 for 3 %");
    double wetM = casting.wetThicknessM();
    require(wetM > 0, "wet thickness", wetM, "above 0 m; give the thickness poured");
    double humidity = casting.use().relativeHumidity();
    require(
        humidity >= 0 && humidity < 1,
        "relative humidity where the film is used",
        humidity,
        "0 to below 1; film never comes to rest in saturated air, give a drier room");
    double kelvin = casting.use().temperatureK();
    require(
        kelvin >= COLDEST_K && kelvin <= HOTTEST_K,
        "temperature where the film is used",
        kelvin,
        "233 to 373 K (-40 to 100 °C); give the temperature of the room");
    requireFinite("age", casting.use().ageS(), "0 s or more; give 0 for a fresh film");
  }

  private static void requireFinite(String quantity, double given, String allowed) {
    require(given >= 0 && Double.isFinite(given), quantity, given, allowed);
  }

  private static void require(boolean holds, String quantity, double given, String allowed) {
    Refusal.unless(holds, "film forecast, " + quantity, given, allowed);
  }
}
