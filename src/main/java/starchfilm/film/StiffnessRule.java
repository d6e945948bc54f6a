package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Young's modulus of fresh laboratory film; the weakest of the mechanical rules, good for an order
 * of magnitude.
 *
 * <p>{@code E = 2000/(1 + exp((x + 19)/11.7)) + 9.9} MPa
 *
 * <p>x = T - Tg (K) by {@link CouchmanKaraszTransition}; 2000 MPa: glass; 9.9 MPa: rubber.
 *
 * <p>Valid for: x from -25 to 55 K, up to 60 g glycerol per 100 g dry starch, 20 to 27 °C. Outside:
 * extrapolated and flagged; further below the transition it runs level at the glass.
 *
 * <p>Source: form of Peleg 1993, with a floor because his form falls to zero too fast above the
 * glass transition; fitted to 14 published films of 7 sources (the test fixture); glass of 2000 MPa
 * fixed at the middle of 1 to 3 GPa (recalled). Band: times or divided by 2.9 for a source left out
 * of the fit.
 */
final class StiffnessRule extends GlassDistanceRule {
  /** Stiffness of a glass (MPa). */
  static final double GLASS_MPA = 2000;

  private static final double RUBBER_MPA = 9.9;
  private static final double MIDDLE_K = -19;
  private static final double WIDTH_K = 11.7;

  StiffnessRule() {
    super(
        FilmProperty.YOUNGS_MODULUS,
        2.9,
        -25,
        55,
        List.of(
            new Source(
                "Peleg 1993, stiffness falls through the glass transition as 1/(1 + exp((x -"
                    + " x_c)/a))",
                Check.READ),
            new Source(
                "our fit to 14 Young's moduli of starch films by their distance to the glass"
                    + " transition, 7 publications, 1996 to 2021 (half of them read); glass 2 GPa"
                    + " recalled",
                Check.COMPUTED)));
  }

  @Override
  double at(double aboveGlassK, double amyloseFraction) {
    return pa(GLASS_MPA * glassy(aboveGlassK, MIDDLE_K, WIDTH_K) + RUBBER_MPA);
  }
}
