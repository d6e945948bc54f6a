package starchfilm.film;

import java.util.List;
import org.apache.commons.math3.special.Erf;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * A film stored above its glass transition stiffens and loses stretch as its starch crystallises.
 *
 * <p>{@code x = 1 - exp(-t/t0); TS (1 + 1.3 x), E (1 + 6 x), EB (1 - 0.5 x)}
 *
 * <p>t: age (s); t0: 30 days at 50 % relative humidity and 10 days at 75 %, its logarithm linear in
 * humidity between and beyond; x times 0.2 above 50 % amylose, whose films are stable.
 *
 * <p>Below the glass transition nothing ages. The transition is known to 15 K only, so x is
 * multiplied by the chance that the film is above it, {@code Phi((T - Tg)/15 K)}: the mean of x
 * over that uncertainty, without a step.
 *
 * <p>Valid for: 50 to 90 % relative humidity. Outside: extrapolated and flagged.
 *
 * <p>Source: van Soest et al. 1996, Carbohydr. Polym. 29:225, potato: strength times 2.3, modulus
 * times 7, elongation times 0.52 within two weeks at 60 to 90 % humidity (read); little change of
 * high-amylose film: Shogren and Jasberg 1994 (read). t0 is judged, so one standard deviation is
 * half the logarithm of the factor. Limits: barley film with 41 g glycerol at 50 % humidity gained
 * strength fourfold to sixfold from week 1 to 5 (J. Macromol. Sci. A33:703, 1996); this rule gives
 * one and a half.
 */
final class Ageing implements FilmInfluence {
  private static final double STRENGTH_GAIN = 1.3;
  private static final double MODULUS_GAIN = 6;
  private static final double STRETCH_LOSS = 0.5;
  private static final double SECONDS_PER_DAY = 86_400;
  private static final double T0_AT_50_PERCENT_S = 30 * SECONDS_PER_DAY;
  private static final double T0_AT_75_PERCENT_S = 10 * SECONDS_PER_DAY;
  private static final double HIGH_AMYLOSE = 0.5;
  private static final double HIGH_AMYLOSE_SHARE = 0.2;

  private static final List<Source> SOURCES =
      List.of(
          new Source(
              "van Soest et al. 1996, Carbohydr. Polym. 29:225, ageing of potato film; Shogren and"
                  + " Jasberg 1994, J. Environ. Polym. Degrad. 2:99, stable high-amylose film",
              Check.READ),
          new Source("pace of ageing, 30 days at 50 % and 10 days at 75 %: assumed", Check.JUDGED));

  private final double ageS;
  private final FilmRule glassTransition;

  /**
   * Ageing over a time.
   *
   * @param ageS time since the film was dry (s, 0 or more)
   * @param glassTransition the rule that says when the film is a glass
   */
  Ageing(double ageS, FilmRule glassTransition) {
    this.ageS = ageS;
    this.glassTransition = glassTransition;
  }

  @Override
  public Effect on(FilmProperty property, FilmState film) {
    return switch (property) {
      case TENSILE_STRENGTH -> effect(1 + STRENGTH_GAIN * progress(film));
      case YOUNGS_MODULUS -> effect(1 + MODULUS_GAIN * progress(film));
      case ELONGATION -> effect(1 - STRETCH_LOSS * progress(film));
      default -> Effect.NONE;
    };
  }

  /**
   * How far ageing went.
   *
   * @param film the film at rest with its air
   * @return x, 0 when fresh to 1 when it has ended
   */
  double progress(FilmState film) {
    double t0 =
        T0_AT_50_PERCENT_S
            * Math.pow(
                T0_AT_75_PERCENT_S / T0_AT_50_PERCENT_S, (film.relativeHumidity() - 0.5) / 0.25);
    double share = film.amyloseFraction() > HIGH_AMYLOSE ? HIGH_AMYLOSE_SHARE : 1;
    return share * chanceAboveGlass(film) * -Math.expm1(-ageS / t0);
  }

  private double chanceAboveGlass(FilmState film) {
    double above = film.temperatureK() - glassTransition.predict(film);
    double sigma = glassTransition.scatter().oneSigma();
    return (1 + Erf.erf(above / (sigma * Math.sqrt(2)))) / 2;
  }

  private static Effect effect(double factor) {
    return new Effect(factor, Math.abs(Math.log(factor)) / 2);
  }

  @Override
  public String name() {
    return "ageing";
  }

  @Override
  public List<Limit> limits() {
    return List.of(FilmState.humidity(50, 90));
  }

  @Override
  public List<Source> sources() {
    return SOURCES;
  }
}
