package starchfilm.film;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Young's modulus of fresh laboratory film; the weakest of the mechanical rules, good for an order
 * of magnitude.
 *
 * <p>{@code E = 2000/(1 + exp((g - 0.12)/0.055)) + 12} MPa
 *
 * <p>g: kg glycerol per kg dry starch; 2000 MPa: glass; 12 MPa: rubber.
 *
 * <p>Valid for: up to 60 g glycerol per 100 g dry starch, 43 to 60 % relative humidity, 20 to 27
 * °C. Outside: extrapolated and flagged.
 *
 * <p>Source: form of Peleg 1993, written in concentration, with a floor because his form falls to
 * zero too fast above the glass transition; fit to 15 published films, listed in the test fixture;
 * glass of 2000 MPa fixed at the middle of 1 to 3 GPa (recalled). Band: times or divided by 3.1 for
 * a laboratory left out of the fit.
 */
final class PelegModulus implements FilmRule {
  private static final double GLASS_MPA = 2000;
  private static final double RUBBER_MPA = 12;
  private static final double MIDDLE = 0.12;
  private static final double WIDTH = 0.055;
  private static final double BAND_FACTOR = 3.1;
  private static final double PA_PER_MPA = 1e6;

  private static final List<Source> SOURCES =
      List.of(
          new Source(
              "Peleg 1993, stiffness falls with plasticiser as 1/(1 + exp((x - x_c)/a))",
              Check.READ),
          new Source(
              "our fit to 15 Young's moduli of starch films, 1996 to 2021 (half of them read); glass 2 GPa"
                  + " recalled",
              Check.COMPUTED));

  @Override
  public FilmProperty property() {
    return FilmProperty.YOUNGS_MODULUS;
  }

  @Override
  public double predict(FilmState film) {
    double glassy = 1 / (1 + Math.exp((film.glycerolPerDryStarch() - MIDDLE) / WIDTH));
    return PA_PER_MPA * (GLASS_MPA * glassy + RUBBER_MPA);
  }

  @Override
  public Scatter scatter() {
    return Scatter.factor(BAND_FACTOR);
  }

  @Override
  public List<Limit> limits() {
    return List.of(
        FilmState.plasticiser(0, 60), FilmState.humidity(43, 60), FilmState.celsius(20, 27));
  }

  @Override
  public List<Source> sources() {
    return SOURCES;
  }
}
