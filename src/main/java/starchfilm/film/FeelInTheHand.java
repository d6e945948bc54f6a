package starchfilm.film;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * The feel of a film in the hand, from its plasticiser and its distance from the glass transition.
 *
 * <p>With x = T - Tg of the film, aged as it is:
 *
 * <ul>
 *   <li>sticky: more plasticiser than {@link PlasticiserWindow#tackyAbove};
 *   <li>brittle: x below -5 K, which is below 20 g glycerol per 100 g at 50 % relative humidity;
 *   <li>stiff: x below 6 K, up to 25 g there;
 *   <li>stretchy: x of 26 K or more, from 36 g there;
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

  private static final double BRITTLE_BELOW_K = -5;
  private static final double STIFF_BELOW_K = 6;
  private static final double STRETCHY_FROM_K = 26;

  private FeelInTheHand() {}

  /** Whether the plasticiser alone makes a film tacky. */
  static boolean sticky(FilmState film) {
    return film.glycerolPerDryStarch() > PlasticiserWindow.tackyAbove(film.relativeHumidity());
  }

  /**
   * The feel.
   *
   * @param aboveGlassK x of the film, aged as it is (K)
   * @param sticky whether the plasticiser alone makes it tacky
   * @return the word for it
   */
  static Feel of(double aboveGlassK, boolean sticky) {
    if (sticky) {
      return Feel.STICKY;
    }
    if (aboveGlassK < STIFF_BELOW_K) {
      return aboveGlassK < BRITTLE_BELOW_K ? Feel.BRITTLE : Feel.STIFF;
    }
    return aboveGlassK >= STRETCHY_FROM_K ? Feel.STRETCHY : Feel.FLEXIBLE;
  }
}
