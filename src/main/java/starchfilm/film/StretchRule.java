package starchfilm.film;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Elongation at break of fresh laboratory film.
 *
 * <p>{@code EB = 5.2 + 70/(1 + exp(-(x - 12.8)/8))} %
 *
 * <p>x = T - Tg (K) by {@link CouchmanKaraszTransition}.
 *
 * <p>Valid for: x from -145 to 55 K, up to 60 g glycerol per 100 g dry starch, 20 to 27 °C.
 * Outside: extrapolated and flagged. No effect of amylose is supported by the rows.
 *
 * <p>Source: fitted on logarithms to 28 films of 13 publications, listed in the test fixture. Band:
 * times or divided by 2.2 for a publication left out of the fit.
 *
 * <p>Deviation: the width of 8 K is set (judged); the rows would take a step, because hardly any
 * film near the glass transition was measured.
 */
final class StretchRule extends GlassDistanceRule {
  private static final double GLASS_PERCENT = 5.2;
  private static final double GAIN_PERCENT = 70;
  private static final double MIDDLE_K = 12.8;
  private static final double WIDTH_K = 8;

  StretchRule() {
    super(
        FilmProperty.ELONGATION,
        2.2,
        -145,
        55,
        List.of(
            new Source(
                "our fit to 28 elongations at break of starch films by their distance to the glass"
                    + " transition, 13 publications, 1994 to 2022 (most of them read)",
                Check.COMPUTED),
            new Source("width of the step in elongation, 8 K: assumed, no source", Check.JUDGED)));
  }

  @Override
  double at(double aboveGlassK, double amyloseFraction) {
    double rubbery = 1 - glassy(aboveGlassK, MIDDLE_K, WIDTH_K);
    return (GLASS_PERCENT + GAIN_PERCENT * rubbery) / PERCENT_PER_UNIT;
  }
}
