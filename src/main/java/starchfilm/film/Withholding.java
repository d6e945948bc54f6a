package starchfilm.film;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * The figures of a film that are not stated, and why; where several reasons hold, the first counts.
 *
 * <p>The limits are judged: published tensile tests end at 80 % relative humidity, all but three of
 * them at 60 %; the isotherms end at 90 %; the plasticiser levels at 60 g per 100 g dry starch.
 */
final class Withholding {
  /** What a pull test measures. */
  static final Set<FilmProperty> MECHANICAL =
      EnumSet.of(
          FilmProperty.TENSILE_STRENGTH, FilmProperty.ELONGATION, FilmProperty.YOUNGS_MODULUS);

  private static final Set<FilmProperty> DRY_FILM =
      EnumSet.range(FilmProperty.EQUILIBRIUM_MOISTURE, FilmProperty.VAPOUR_PERMEABILITY);

  private static final double WORDS_ABOVE = 0.75;
  private static final double NO_MOISTURE_ABOVE = 0.90;
  private static final double MOST_GLYCEROL = 1.0;
  private static final double COLDEST_K = ZERO_CELSIUS_K - 20;
  private static final double WARMEST_K = ZERO_CELSIUS_K + 60;
  private static final double UNCOOKED = 0.5;

  private Withholding() {}

  /**
   * The figures that are not stated.
   *
   * @param film the film at rest with its air
   * @param uncooked starch that has not gelatinised (mass fraction)
   * @param scorched whether the paste was noted as scorched, which only its maker knows
   * @return why, by property
   */
  static Map<FilmProperty, Withheld> of(FilmState film, double uncooked, boolean scorched) {
    Map<FilmProperty, Withheld> withheld = new EnumMap<>(FilmProperty.class);
    if (film.glycerolFraction() == 1) {
      DRY_FILM.forEach(property -> withheld.put(property, Withheld.NO_STARCH));
    }
    if (film.relativeHumidity() > NO_MOISTURE_ABOVE) {
      DRY_FILM.forEach(property -> withheld.putIfAbsent(property, Withheld.NEARLY_SATURATED_AIR));
    }
    if (uncooked >= UNCOOKED) {
      mechanical(withheld, Withheld.UNDERCOOKED);
    }
    if (film.glycerolPerDryStarch() > MOST_GLYCEROL) {
      mechanical(withheld, Withheld.TOO_MUCH_GLYCEROL);
    }
    if (film.temperatureK() < COLDEST_K || film.temperatureK() > WARMEST_K) {
      mechanical(withheld, Withheld.OUTSIDE_TESTED_TEMPERATURES);
      withheld.putIfAbsent(FilmProperty.VAPOUR_PERMEABILITY, Withheld.OUTSIDE_TESTED_TEMPERATURES);
    }
    if (film.relativeHumidity() > WORDS_ABOVE) {
      mechanical(
          withheld,
          film.aboveGlassK() > 0 ? Withheld.LIMP_IN_DAMP_AIR : Withheld.LEATHERY_IN_DAMP_AIR);
    }
    if (scorched) {
      mechanical(withheld, Withheld.SCORCHED);
    }
    return withheld;
  }

  private static void mechanical(Map<FilmProperty, Withheld> withheld, Withheld why) {
    MECHANICAL.forEach(property -> withheld.putIfAbsent(property, why));
  }
}
