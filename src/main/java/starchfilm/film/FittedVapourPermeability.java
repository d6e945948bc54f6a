package starchfilm.film;

import static starchfilm.numerics.units.Units.KG_PER_G;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Water-vapour permeability between dry or half-damp and damp air.
 *
 * <p>{@code P = 2.6e-10 exp(7 (g - 0.2)^2)} g/(m s Pa)
 *
 * <p>g: kg glycerol per kg dry starch. Not monotone: least near 20 g glycerol per 100 g.
 *
 * <p>Valid for: up to 50 g glycerol per 100 g dry starch, a damp side of at most 75 % relative
 * humidity (the films were tested between 0 or 33 % and 50 to 75 %). Outside: flagged; past 50 g
 * the value at 50 g is kept, because the square would run away; permeability about doubles from a
 * mean humidity of 50 to 70 % (recalled), which the rule does not follow.
 *
 * <p>Source: mean over 11 published films of 4 laboratories; curvature set by hand from the
 * reported minimum (Mali et al. 2004, J. Agric. Food Chem. 52:7720: 20 g; 15 to 30 g elsewhere).
 * Band: times or divided by 2.7 between laboratories.
 */
final class FittedVapourPermeability implements FilmRule {
  private static final double LEAST_G_PER_M_S_PA = 2.6e-10;
  private static final double CURVATURE = 7;
  private static final double LEAST_AT = 0.2;
  private static final double LAST_G = 0.5;
  private static final double BAND_FACTOR = 2.7;

  private static final List<Source> SOURCES =
      List.of(
          new Source(
              "our mean over 11 water-vapour permeabilities of starch films from 4 laboratories,"
                  + " 2000 to 2018 (5 read, 6 recalled)",
              Check.COMPUTED),
          new Source(
              "Mali et al. 2004, J. Agric. Food Chem. 52:7720, least permeable near 20 g glycerol"
                  + " per 100 g starch; curvature judged",
              Check.READ));

  @Override
  public FilmProperty property() {
    return FilmProperty.VAPOUR_PERMEABILITY;
  }

  @Override
  public double predict(FilmState film) {
    double distance = Math.min(film.glycerolPerDryStarch(), LAST_G) - LEAST_AT;
    return KG_PER_G * LEAST_G_PER_M_S_PA * Math.exp(CURVATURE * distance * distance);
  }

  @Override
  public Scatter scatter() {
    return Scatter.factor(BAND_FACTOR);
  }

  @Override
  public List<Limit> limits() {
    return List.of(FilmState.plasticiser(0, 50), FilmState.humidity(0, 75));
  }

  @Override
  public List<Source> sources() {
    return SOURCES;
  }
}
