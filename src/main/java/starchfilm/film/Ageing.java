package starchfilm.film;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * A film stored above its glass transition stiffens and loses stretch as its starch crystallises:
 * the crystals raise the glass transition, so ageing moves the film back along the same state x.
 *
 * <p>{@code x_aged = min(x, (s/4) ln(1 + exp(4 (x - s)/s))), s = 24 K u (1 - exp(-t/t0))}
 *
 * <p>x = T - Tg (K) of the fresh film, above 0 (at and below 0 nothing ages, and {@code x_aged}
 * never falls below 0: no film ages into a glass); t: age (s); t0: 30 days at 50 % relative
 * humidity and 10 days at 75 %, its logarithm linear in humidity between and beyond; u: 1 up to 30
 * % amylose, 0.2 from 70 % on, straight between, for high-amylose films are stable.
 *
 * <p>Valid for: 50 to 90 % relative humidity. Outside: extrapolated and flagged.
 *
 * <p>Source: 24 K from potato film that aged for two weeks at 60 to 90 % humidity, van Soest et al.
 * 1996, Carbohydr. Polym. 29:225 (read): strength times 2.3, modulus times 7 and elongation times
 * 0.52 ask the rules for 20 to 27 K. That crystals raise the transition: Mizuno et al. 1998, J.
 * Agric. Food Chem. 46:98 (abstract read). Little change of high-amylose film: Shogren and Jasberg
 * 1994 (read); u judged. t0 is judged, so one standard deviation is half the logarithm of each
 * factor. Limits: barley film with 41 g glycerol at 50 % humidity gained strength fourfold to
 * sixfold from week 1 to 5 (J. Macromol. Sci. A33:703, 1996); this rule gives a third more.
 */
final class Ageing extends FilmInfluence {
  private static final double MOST_K = 24;

  /** How sharply the shift ends above the glass: in this share of it. */
  private static final double BENDS = 4;

  private static final double T0_AT_50_PERCENT_S = 30 * DAY_S;
  private static final double T0_AT_75_PERCENT_S = 10 * DAY_S;
  private static final double ORDINARY_AMYLOSE = 0.3;
  private static final double STABLE_AMYLOSE = 0.7;
  private static final double STABLE_SHARE = 0.2;

  private static final List<Source> SOURCES =
      List.of(
          new Source(
              "van Soest et al. 1996, Carbohydr. Polym. 29:225, ageing of potato film; Mizuno et"
                  + " al. 1998, J. Agric. Food Chem. 46:98, crystals raise the glass transition of"
                  + " stored starch; Shogren and Jasberg 1994, J. Environ. Polym. Degrad. 2:99,"
                  + " stable high-amylose film",
              Check.READ),
          new Source("pace of ageing, 30 days at 50 % and 10 days at 75 %: assumed", Check.JUDGED));

  private final double ageS;
  private final FilmRules rules;

  /**
   * Ageing over a time.
   *
   * @param ageS time since the film was dry (s, 0 or more)
   * @param rules the rules that read the state
   */
  Ageing(double ageS, FilmRules rules) {
    super("ageing", List.of(FilmState.humidity(50, 90)), SOURCES);
    this.ageS = ageS;
    this.rules = rules;
  }

  @Override
  Effect on(FilmProperty property, FilmState film) {
    if (ageS == 0
        || !Withholding.MECHANICAL.contains(property)
        || !(rules.of(property) instanceof GlassDistanceRule rule)) {
      return Effect.NONE;
    }
    double fresh = film.aboveGlassK();
    if (fresh <= 0) {
      return Effect.NONE;
    }
    double amylose = film.amyloseFraction();
    double factor = rule.at(aged(fresh, mostK(film)), amylose) / rule.at(fresh, amylose);
    return new Effect(factor, Math.abs(Math.log(factor)) / 2);
  }

  /**
   * Where ageing leaves a film.
   *
   * @param freshK x of the fresh film (K)
   * @param mostK s, how far a film far above its glass transition has moved (K)
   * @return x of the aged film (K), rising with x of the fresh one
   */
  static double aged(double freshK, double mostK) {
    if (freshK <= 0 || mostK <= 0) {
      return freshK;
    }
    double bendK = mostK / BENDS;
    return Math.min(freshK, bendK * Math.log1p(Math.exp((freshK - mostK) / bendK)));
  }

  /** s: how far a film far above its glass transition has moved (K). */
  double mostK(FilmState film) {
    double t0 =
        T0_AT_50_PERCENT_S
            * Math.pow(
                T0_AT_75_PERCENT_S / T0_AT_50_PERCENT_S, (film.relativeHumidity() - 0.5) / 0.25);
    double stable =
        (film.amyloseFraction() - ORDINARY_AMYLOSE) / (STABLE_AMYLOSE - ORDINARY_AMYLOSE);
    double share = 1 - (1 - STABLE_SHARE) * Math.min(1, Math.max(0, stable));
    return MOST_K * share * -Math.expm1(-ageS / t0);
  }
}
