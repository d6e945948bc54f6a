package starchfilm.film;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Elongation at break of fresh laboratory film.
 *
 * <p>{@code EB = 3.7 + 71/(1 + exp(-(g - 0.26)/0.04))} %
 *
 * <p>g: kg glycerol per kg dry starch.
 *
 * <p>Valid for: up to 45 g glycerol per 100 g dry starch, 43 to 60 % relative humidity, 20 to 27
 * °C. Outside: extrapolated and flagged; above 45 g elongation often falls again. No effect of
 * amylose is supported by the data.
 *
 * <p>Source: fit to 21 published films of 11 sources, listed in the test fixture. Band: times or
 * divided by 2.0 for a laboratory left out of the fit.
 *
 * <p>Deviation: the fit's width 0.025 became 0.04 (judged), because hardly any film between 20 and
 * 25 g was measured and the step is not known to be that sharp.
 */
final class FittedElongation implements FilmRule {
  /** Stretch of film without plasticiser. */
  static final double BRITTLE_PERCENT = 3.7;

  /** What plasticiser adds. */
  static final double GAIN_PERCENT = 71;

  private static final double MIDDLE = 0.26;
  private static final double WIDTH = 0.04;
  private static final double BAND_FACTOR = 2.0;

  private static final List<Source> SOURCES =
      List.of(
          new Source(
              "our fit to 21 elongations at break of starch films from 11 publications, 1994 to"
                  + " 2022 (most of them read)",
              Check.COMPUTED),
          new Source(
              "width of the step in elongation, 0.04 instead of the fitted 0.025: assumed, no"
                  + " source",
              Check.JUDGED));

  @Override
  public FilmProperty property() {
    return FilmProperty.ELONGATION;
  }

  @Override
  public double predict(FilmState film) {
    double share = 1 / (1 + Math.exp(-(film.glycerolPerDryStarch() - MIDDLE) / WIDTH));
    return (BRITTLE_PERCENT + GAIN_PERCENT * share) / PERCENT_PER_UNIT;
  }

  @Override
  public Scatter scatter() {
    return Scatter.factor(BAND_FACTOR);
  }

  @Override
  public List<Limit> limits() {
    return List.of(
        FilmState.plasticiser(0, 45), FilmState.humidity(43, 60), FilmState.celsius(20, 27));
  }

  @Override
  public List<Source> sources() {
    return SOURCES;
  }
}
