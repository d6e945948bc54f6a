package starchfilm.film;

import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * How far the skin of a drying film can stretch before it breaks, at the moisture and temperature
 * it has at that moment.
 *
 * <p>The elongation rule {@link StretchRule} at the skin's own distance from the glass transition,
 * times 0.7 for home film: what holds for the dry film holds for its skin.
 *
 * <p>Limits: a skin wetter than about 0.35 kg water per kg dry solids is a gel, whose stretch
 * nobody measured here and which relaxes while it dries; the rule then gives its upper end and the
 * skin should not be called at risk.
 */
public final class SkinStretch {
  /** What the rule rests on. */
  public static final Source SOURCE =
      new Source(
          "stretch of a drying skin by the elongation rule of the dry film: assumed, no source",
          Check.JUDGED);

  private static final StretchRule STRETCH = new StretchRule();

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
    return workmanship
        * STRETCH.at(temperatureK - glassTransitionK(waterKgPerKgDry), dry.amyloseFraction());
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
