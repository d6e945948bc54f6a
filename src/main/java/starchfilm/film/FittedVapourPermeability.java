package starchfilm.film;

import static starchfilm.numerics.units.Units.KG_PER_G;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Water-vapour permeability of a film with the air of use on one side and bone-dry air on the
 * other, as a jar of drying agent under a lid of film in that air measures it.
 *
 * <p>{@code P = 2.6e-10 exp(7 (g - 0.2)^2) 2^((RH/2 - 40)/20)} g/(m s Pa)
 *
 * <p>g: kg glycerol per kg dry starch; RH: relative humidity of the air of use (%), RH/2 the mean
 * of both sides. Not monotone in glycerol: least near 20 g per 100 g. It doubles per 20 points of
 * mean humidity, for water softens the film.
 *
 * <p>Valid for: up to 50 g glycerol per 100 g dry starch, a damp side of 50 to 75 % relative
 * humidity. Outside: flagged; past 50 g the value at 50 g is kept, because the square would run
 * away.
 *
 * <p>Source: mean over 11 published films of 4 laboratories, whose tests had a mean humidity of
 * about 40 % (0 or 33 % against 58 to 75 %); curvature set by hand from the reported minimum (Mali
 * et al. 2004, J. Agric. Food Chem. 52:7720: 20 g; 15 to 30 g elsewhere); doubling per 20 points
 * recalled. Band: times or divided by 3.5; a laboratory left out is missed by 3.1, and rows of
 * papers in no fit lie wider.
 */
final class FittedVapourPermeability extends FilmRule {
  private static final double LEAST_G_PER_M_S_PA = 2.6e-10;
  private static final double CURVATURE = 7;
  private static final double LEAST_AT = 0.2;
  private static final double LAST_G = 0.5;
  private static final double MEAN_HUMIDITY = 0.40;
  private static final double DOUBLES_PER_HUMIDITY = 0.20;
  private static final double BAND_FACTOR = 3.5;

  private static final List<Source> SOURCES =
      List.of(
          new Source(
              "our mean over 11 water-vapour permeabilities of starch films from 4 laboratories,"
                  + " 2000 to 2018 (5 read, 6 recalled)",
              Check.COMPUTED),
          new Source(
              "Mali et al. 2004, J. Agric. Food Chem. 52:7720, least permeable near 20 g glycerol"
                  + " per 100 g starch; curvature judged",
              Check.READ),
          new Source(
              "permeability doubles per 20 points of mean relative humidity: recalled, rounded",
              Check.RECALLED));

  FittedVapourPermeability() {
    super(
        FilmProperty.VAPOUR_PERMEABILITY,
        RuleScatter.factor(BAND_FACTOR),
        List.of(FilmState.plasticiser(0, 50), FilmState.humidity(50, 75)),
        SOURCES);
  }

  @Override
  double predict(FilmState film) {
    double distance = Math.min(film.glycerolPerDryStarch(), LAST_G) - LEAST_AT;
    double damper = (film.relativeHumidity() / 2 - MEAN_HUMIDITY) / DOUBLES_PER_HUMIDITY;
    return KG_PER_G
        * LEAST_G_PER_M_S_PA
        * Math.exp(CURVATURE * distance * distance + Math.log(2) * damper);
  }
}
