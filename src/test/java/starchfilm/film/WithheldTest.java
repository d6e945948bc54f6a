package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Use;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Band;

/** Where a figure of the film is not stated, and why. */
class WithheldTest {
  private final FilmForecaster forecaster = new FilmForecaster();

  @ParameterizedTest
  @CsvSource({
    "30, 75, 23, 95, ",
    "30, 76, 23, 95, LIMP_IN_DAMP_AIR",
    "0, 76, 23, 95, LEATHERY_IN_DAMP_AIR",
    "30, 91, 23, 95, NEARLY_SATURATED_AIR",
    "110, 50, 23, 95, TOO_MUCH_GLYCEROL",
    "30, 50, 70, 95, OUTSIDE_TESTED_TEMPERATURES",
    "30, 50, -25, 95, OUTSIDE_TESTED_TEMPERATURES",
    "30, 50, 23, 65, UNDERCOOKED",
    "30, 80, 23, 65, UNDERCOOKED",
    "30, 50, 23, 76, "
  })
  void whatAPullTestMeasuresIsWithheld(
      double glycerol, double humidity, double celsius, double cookC, Withheld why) {
    FilmForecast film =
        forecaster.forecast(
            film(
                Castings.paste(StarchKind.CORN, 0.04, glycerol / 100),
                humidity / 100,
                celsius,
                cookC));

    assertThat(film.withheld(FilmProperty.TENSILE_STRENGTH).orElse(null)).isEqualTo(why);
    assertThat(film.withheld(FilmProperty.ELONGATION).orElse(null)).isEqualTo(why);
    assertThat(film.withheld(FilmProperty.YOUNGS_MODULUS).orElse(null)).isEqualTo(why);
  }

  /** A pull test is no test of film where half of the starch is raw. */
  @Test
  void halfOfTheStarchRawIsTooMuch() {
    FilmState film = FilmState.atRest(paste(), 0.5, Castings.ROOM_K);
    assertThat(Withholding.of(film, 0.49, false)).isEmpty();
    assertThat(Withholding.of(film, 0.5, false).values()).containsOnly(Withheld.UNDERCOOKED);
    assertThat(Withholding.of(film, 0.9, false).values()).containsOnly(Withheld.UNDERCOOKED);
  }

  @ParameterizedTest
  @CsvSource({"90, ", "90.1, NEARLY_SATURATED_AIR"})
  void noMoistureIsStatedAboveNinetyPercent(double humidity, Withheld why) {
    FilmForecast film = forecaster.forecast(Castings.filmIn(humidity / 100, paste()));

    assertThat(film.withheld(FilmProperty.EQUILIBRIUM_MOISTURE).orElse(null)).isEqualTo(why);
    assertThat(film.withheld(FilmProperty.DRY_THICKNESS).orElse(null)).isEqualTo(why);
  }

  @ParameterizedTest
  @CsvSource({"60, ", "61, OUTSIDE_TESTED_TEMPERATURES", "90, OUTSIDE_TESTED_TEMPERATURES"})
  void noPermeabilityIsStatedFarFromTheTestedRooms(double celsius, Withheld why) {
    FilmForecast film = forecaster.forecast(film(paste(), 0.5, celsius, 95));

    assertThat(film.withheld(FilmProperty.VAPOUR_PERMEABILITY).orElse(null)).isEqualTo(why);
    assertThat(film.withheld(FilmProperty.EQUILIBRIUM_MOISTURE)).isEmpty();
  }

  @Test
  void glycerolAloneIsNoFilm() {
    Composition syrup = new Composition(Map.of(), 0, 0.05, 0, 0, 0.95, 0);
    FilmForecast film = forecaster.forecast(Castings.film(syrup));

    assertThat(film.withheld().values()).containsOnly(Withheld.NO_STARCH);
    assertThat(film.withheld(FilmProperty.TENSILE_STRENGTH)).contains(Withheld.NO_STARCH);
    assertThat(film.withheld(FilmProperty.PASTE_PH)).isEmpty();
  }

  /** Corn gelatinises fastest at 69 and ends at 75 °C, glycerol of a thin paste a kelvin later. */
  @Test
  void aCookShortOfTheEndLowersTheLowEndAlone() {
    Band done = forecaster.forecast(film(paste(), 0.5, 23, 95)).tensileStrengthPa();
    Band shorter = forecaster.forecast(film(paste(), 0.5, 23, 74)).tensileStrengthPa();

    assertThat(shorter.low()).isLessThan(0.8 * done.low());
    // 12 g glycerol in 948 + 12 g of liquid delay the end by half a kelvin a per cent, so at 74 °C
    // it is 1.625 of 6 K short, and the low end falls by 1 + 2 x 0.271.
    assertThat(done.low() / shorter.low()).isCloseTo(1 + 2 * 1.625 / 6, within(1e-3));
    assertThat(shorter.middle()).isEqualTo(done.middle());
    assertThat(shorter.high()).isEqualTo(done.high());
  }

  @Test
  void aReasonOfTheMakersKeepsThoseThatAreThere() {
    FilmForecast damp = forecaster.forecast(Castings.filmIn(0.8, paste()), true);
    FilmForecast sound = forecaster.forecast(Castings.film(paste()), true);

    assertThat(damp.withheld(FilmProperty.ELONGATION)).contains(Withheld.LIMP_IN_DAMP_AIR);
    assertThat(sound.withheld(FilmProperty.ELONGATION)).contains(Withheld.SCORCHED);
    assertThat(sound.withheld(FilmProperty.DRY_THICKNESS)).isEmpty();
  }

  @Test
  void feelsOfAHundredFilmsAddUp() {
    FilmForecast film = forecaster.forecast(Castings.film(paste()));

    assertThat(film.feelChances().ofHundred().values().stream().mapToInt(each -> each).sum())
        .isEqualTo(100);
    assertThat(film.feelChances().ofHundred()).containsKeys(Feel.BRITTLE, film.feel());
    assertThat(new FeelChances(12, 20, 0, true).ofHundred()).isEqualTo(Map.of(Feel.STICKY, 100));
  }

  private static Composition paste() {
    return Castings.paste(StarchKind.CORN, 0.04, 0.3);
  }

  private static Casting film(Composition paste, double humidity, double celsius, double cookC) {
    return Castings.film(paste)
        .with(Castings.cook(15, cookC))
        .with(new Use(humidity, celsius + ZERO_CELSIUS_K, 0));
  }
}
