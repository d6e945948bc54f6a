package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Use;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Paste;

/** What no film, strip or hand can be, and the ends of what they can. */
class RefusedFilmTest {
  @ParameterizedTest
  @CsvSource({
    "-0.1, 0, 2e-3, 0.5, 296, 0, relative uncertainty of the plasticiser: -0.1",
    "Infinity, 0, 2e-3, 0.5, 296, 0, relative uncertainty of the plasticiser: Infinity",
    "0, -0.1, 2e-3, 0.5, 296, 0, relative uncertainty of the solids content: -0.1",
    "0, Infinity, 2e-3, 0.5, 296, 0, relative uncertainty of the solids content: Infinity",
    "0, 0, 0, 0.5, 296, 0, wet thickness: 0.0",
    "0, 0, 2e-3, -0.01, 296, 0, relative humidity where the film is used: -0.01",
    "0, 0, 2e-3, 1, 296, 0, relative humidity where the film is used: 1.0",
    "0, 0, 2e-3, 0.5, 232.9, 0, temperature where the film is used: 232.9",
    "0, 0, 2e-3, 0.5, 373.1, 0, temperature where the film is used: 373.1",
    "0, 0, 2e-3, 0.5, 296, -1, age: -1.0",
    "0, 0, 2e-3, 0.5, 296, Infinity, age: Infinity"
  })
  void refusesAFilm(
      double plasticiserSd,
      double solidsSd,
      double wetM,
      double humidity,
      double kelvin,
      double ageS,
      String words) {
    Casting film = film(plasticiserSd, solidsSd, wetM, humidity, kelvin, ageS);
    assertThatThrownBy(() -> FilmLimits.require(film))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("film forecast, " + words + " given, allowed ");
  }

  @Test
  void takesTheEndsOfAFilm() {
    assertThatCode(() -> FilmLimits.require(film(0, 0, 1e-9, 0, 233, 0)))
        .doesNotThrowAnyException();
    assertThatCode(() -> FilmLimits.require(film(0, 0, 1e-9, 0.999, 373, 0)))
        .doesNotThrowAnyException();
  }

  @Test
  void refusesAHandThatCannotBe() {
    for (double[] hand :
        List.of(
            new double[] {0, 1.3},
            new double[] {-1, 1.3},
            new double[] {Double.NaN, 1.3},
            new double[] {0.7, 0.999},
            new double[] {Double.POSITIVE_INFINITY, 1.3},
            new double[] {0.7, Double.POSITIVE_INFINITY})) {
      assertThatThrownBy(() -> new Workmanship(hand[0], hand[1]))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith("workmanship: factor " + hand[0]);
    }
    assertThat(new Workmanship(0.001, 1).bandWidening()).isEqualTo(1);
  }

  private static Casting film(
      double plasticiserSd,
      double solidsSd,
      double wetM,
      double humidity,
      double kelvin,
      double ageS) {
    return Castings.film(Castings.paste(StarchKind.CORN, 0.04, 0.3))
        .with(new Paste(Castings.paste(StarchKind.CORN, 0.04, 0.3), 1, solidsSd, plasticiserSd))
        .pouredTo(wetM)
        .with(new Use(humidity, kelvin, ageS));
  }
}
