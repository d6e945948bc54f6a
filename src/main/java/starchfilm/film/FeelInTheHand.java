package starchfilm.film;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * What a film is like in the hand, from its glass transition, its stretch and its plasticiser.
 *
 * <p>With d = temperature of use less glass transition:
 *
 * <ul>
 *   <li>sticky: more plasticiser than {@link PlasticiserWindow#tackyAbove};
 *   <li>brittle: d below -10 K, or a glass (d below 0) that stretches less than a tenth;
 *   <li>stiff: any other glass;
 *   <li>stretchy: d of 20 K or more, which is about 36 g glycerol per 100 g at 50 % relative
 *       humidity and 23 °C, and a stretch of 0.35 or more;
 *   <li>flexible: everything else.
 * </ul>
 *
 * <p>Source: windows of brittle below 20 g and pleasantly flexible from 25 to 40 g per 100 g at 50
 * % humidity, read off the published elongations; put into terms of the glass transition by us,
 * because that follows humidity and temperature too (judged).
 */
final class FeelInTheHand {
  /** What the feel rests on. */
  static final Source SOURCE =
      new Source(
          "feel from the distance between temperature of use and glass transition, set to the"
              + " published windows of 20, 25 and 40 g glycerol per 100 g starch at 50 % relative"
              + " humidity: judged",
          Check.JUDGED);

  private static final double DEEP_IN_GLASS_K = -10;
  private static final double FAR_ABOVE_GLASS_K = 20;
  private static final double LEAST_STRETCH = 0.10;
  private static final double MUCH_STRETCH = 0.35;

  private FeelInTheHand() {}

  /**
   * The feel.
   *
   * @param film the film at rest with its air
   * @param glassTransitionK middle of its glass transition (K)
   * @param elongation middle of its elongation at break (ratio)
   * @return the word for it
   */
  static Feel of(FilmState film, double glassTransitionK, double elongation) {
    double aboveGlassK = film.temperatureK() - glassTransitionK;
    if (film.glycerolPerDryStarch() > PlasticiserWindow.tackyAbove(film.relativeHumidity())) {
      return Feel.STICKY;
    }
    if (aboveGlassK < DEEP_IN_GLASS_K || (aboveGlassK < 0 && elongation < LEAST_STRETCH)) {
      return Feel.BRITTLE;
    }
    if (aboveGlassK < 0) {
      return Feel.STIFF;
    }
    return aboveGlassK >= FAR_ABOVE_GLASS_K && elongation >= MUCH_STRETCH
        ? Feel.STRETCHY
        : Feel.FLEXIBLE;
  }
}
