package starchfilm.film;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * How far the skin of a drying film can stretch before it breaks, at the moisture and temperature
 * it has at that moment.
 *
 * <p>{@code EB = 3.7 + 71/(1 + exp(-(T - Tg - 3 K)/8.4 K))} %, times 0.7 for home film
 *
 * <p>T: temperature (K); Tg: glass transition of starch, glycerol and the moisture held (K), by
 * {@link CouchmanKaraszTransition}.
 *
 * <p>This is the elongation rule with its plasticiser level replaced by the distance from the glass
 * transition: at rest with 50 % relative humidity and 23 °C the level of 26 g per 100 g lies 3 K
 * above the transition, and the width of 4 g is 8.4 K there, so both rules agree within 17 % for
 * corn. Written so, water plasticises as glycerol does, and a starch that holds more of it
 * stretches more: at rest wheat and tapioca up to 1.5 times the elongation rule, potato up to 2.1
 * times, as far as that rule's own factor between laboratories. It rises with moisture and with
 * temperature and is smooth.
 *
 * <p>Valid for: skins about as dry as a film at rest, up to about 0.35 kg water per kg dry solids,
 * at room temperature. Limits: a wetter skin is a gel, whose stretch nobody measured here and which
 * relaxes while it dries; the rule then gives its upper end and the skin should not be called at
 * risk. The ends are those of slow pull tests on dry film.
 *
 * <p>Source: rewritten by us (judged) from the elongation rule and the glass-transition rule.
 */
public final class SkinStretch {
  /** What the rule rests on. */
  public static final Source SOURCE =
      new Source(
          "stretch of a drying skin from its distance to the glass transition, set equal to the"
              + " elongation rule at 50 % relative humidity and 23 °C: assumed, no source",
          Check.JUDGED);

  private static final double MIDDLE_K = 3;
  private static final double WIDTH_K = 8.4;

  private final FilmRule glassTransition = new CouchmanKaraszTransition();
  private final FilmState dry;
  private final double workmanship;

  private SkinStretch(Composition composition, Workmanship workmanship) {
    // Air and temperature of this film are not looked at: the skin has its own.
    this.dry = FilmState.of(composition, 0, 0, 0);
    this.workmanship = workmanship.on(FilmProperty.ELONGATION);
  }

  /**
   * The skin of home film.
   *
   * @param composition the paste
   * @return its rule; cheap to evaluate, safe to share between threads
   */
  public static SkinStretch of(Composition composition) {
    return new SkinStretch(composition, Workmanship.HOME);
  }

  /**
   * The skin of film made by a certain hand.
   *
   * @param composition the paste
   * @param workmanship home or laboratory
   * @return its rule; cheap to evaluate, safe to share between threads
   */
  public static SkinStretch of(Composition composition, Workmanship workmanship) {
    return new SkinStretch(composition, workmanship);
  }

  /**
   * Stretch at which the skin breaks, middle of the band; the band is that of the elongation rule.
   *
   * @param waterKgPerKgDry moisture of the skin (kg per kg dry solids, 0 or more)
   * @param temperatureK its temperature (K)
   * @return stretch over length (ratio, above 0)
   */
  public double stretchAtBreak(double waterKgPerKgDry, double temperatureK) {
    double above = temperatureK - glassTransitionK(waterKgPerKgDry) - MIDDLE_K;
    double share = 1 / (1 + Math.exp(-above / WIDTH_K));
    return workmanship
        * (FittedElongation.BRITTLE_PERCENT + FittedElongation.GAIN_PERCENT * share)
        / PERCENT_PER_UNIT;
  }

  /**
   * Glass transition of the skin.
   *
   * @param waterKgPerKgDry moisture of the skin (kg per kg dry solids, 0 or more)
   * @return temperature (K)
   */
  public double glassTransitionK(double waterKgPerKgDry) {
    if (!(waterKgPerKgDry >= 0)) {
      throw new IllegalArgumentException(
          "moisture of the skin: " + waterKgPerKgDry + " given, allowed 0 kg per kg dry or more");
    }
    return glassTransition.predict(
        new FilmState(
            dry.glycerolFraction(),
            dry.amyloseFraction(),
            dry.saltFractionOfDry(),
            waterKgPerKgDry,
            dry.relativeHumidity(),
            dry.temperatureK()));
  }
}
