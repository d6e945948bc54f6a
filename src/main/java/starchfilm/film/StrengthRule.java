package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Tensile strength of fresh laboratory film.
 *
 * <p>{@code TS = exp(0.80 (A - 0.25)) [42/(1 + exp((x + 24.6)/17.2)) + 1.3]} MPa
 *
 * <p>x = T - Tg (K) by {@link CouchmanKaraszTransition}; A: amylose fraction of the starch.
 *
 * <p>Valid for: x from -145 to 55 K, up to 60 g glycerol per 100 g dry starch, any amylose, 20 to
 * 27 °C. Outside: extrapolated and flagged. Far below the glass transition the rule runs level,
 * while films break at their flaws: corn was half as strong at 20 % humidity as at 50 % (Shogren
 * and Jasberg 1994), tapioca strongest at 4 to 8 % water (Chang et al. 2000). So from x = -100 K
 * down the low end of the band is lowered, by half from -120 K on; no term for antiplasticisation
 * is supported by the rows.
 *
 * <p>Source: fitted on logarithms to 39 films of 18 publications, listed in the test fixture. Band:
 * times or divided by 1.9 for a publication left out of the fit.
 */
final class StrengthRule extends GlassDistanceRule {
  private static final double GLASS_MPA = 42;
  private static final double RUBBER_MPA = 1.3;
  private static final double MIDDLE_K = -24.6;
  private static final double WIDTH_K = 17.2;
  private static final double PER_AMYLOSE = 0.80;
  private static final double AMYLOSE_OF_NORMAL_STARCH = 0.25;

  /** Where films begin to break at their flaws (K above the glass transition). */
  static final double FLAWS_FROM_K = -100;

  private static final double FLAWS_FULLY_AT_K = -120;

  StrengthRule() {
    super(
        FilmProperty.TENSILE_STRENGTH,
        1.9,
        -145,
        55,
        List.of(
            new Source(
                "our fit to 39 tensile strengths of starch films by their distance to the glass"
                    + " transition, 18 publications, 1951 to 2022 (half of them read, half"
                    + " recalled)",
                Check.COMPUTED),
            new Source(
                "Shogren and Jasberg 1994, J. Environ. Polym. Degrad. 2:99, strength at 20, 50 and"
                    + " 80 % relative humidity: weaker again in dry air",
                Check.READ)));
  }

  @Override
  double at(double aboveGlassK, double amyloseFraction) {
    double normal = GLASS_MPA * glassy(aboveGlassK, MIDDLE_K, WIDTH_K) + RUBBER_MPA;
    return pa(Math.exp(PER_AMYLOSE * (amyloseFraction - AMYLOSE_OF_NORMAL_STARCH)) * normal);
  }

  @Override
  public double lowEndDividedBy(FilmState film) {
    double share = (film.aboveGlassK() - FLAWS_FROM_K) / (FLAWS_FULLY_AT_K - FLAWS_FROM_K);
    return 1 + Math.min(1, Math.max(0, share));
  }
}
