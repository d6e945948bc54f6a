package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;

/** Ageing worked by hand from its formula. */
class AgeingTest {
  private static final double DAY_S = 86_400;

  private final FilmRules rules = FilmRules.published();

  /** Far above the transition: {@code 24 K (1 - exp(-1))} after 30 days at 50 %, 10 at 75 %. */
  @ParameterizedTest
  @CsvSource({"30, 0.50, 1", "10, 0.75, 1", "20, 0.75, 2", "0, 0.5, 0", "17.3205081, 0.625, 1"})
  void followsItsPaceWithHumidity(double days, double humidity, double timesT0) {
    double most = new Ageing(days * DAY_S, rules).mostK(film(humidity, 0.25));

    assertThat(most).isCloseTo(24 * (1 - Math.exp(-timesT0)), within(1e-7));
  }

  @Test
  void neverMovesAFilmPastTheGlassNorAGlassAtAll() {
    assertThat(Ageing.aged(-3, 22)).isEqualTo(-3);
    assertThat(Ageing.aged(0, 22)).isZero();
    double before = 0;
    for (double fresh = 0.1; fresh < 120; fresh += 0.1) {
      double aged = Ageing.aged(fresh, 22);
      assertThat(aged).isBetween(0.0, fresh).isGreaterThan(before).isGreaterThan(fresh - 22);
      before = aged;
    }
  }

  /** Van Soest et al. 1996: strength times 2.3, modulus times 7, elongation times 0.52 (read). */
  @Test
  void potatoFilmAgesAsPublishedWithinAThird() {
    Ageing ended = new Ageing(1000 * DAY_S, rules);
    FilmState film =
        FilmState.atRest(Castings.paste(StarchKind.POTATO, 0.04, 0.33), 0.6, 20 + ZERO_CELSIUS_K);

    assertThat(ended.on(FilmProperty.TENSILE_STRENGTH, film).factor() / 2.3).isBetween(0.75, 1.33);
    assertThat(ended.on(FilmProperty.YOUNGS_MODULUS, film).factor() / 7).isBetween(0.65, 1.33);
    assertThat(ended.on(FilmProperty.ELONGATION, film).factor() / 0.52).isBetween(0.75, 1.33);
    assertThat(ended.on(FilmProperty.GLASS_TRANSITION, film)).isEqualTo(FilmInfluence.Effect.NONE);
  }

  /** A fifth from 70 % amylose on, all up to 30 %, and no step between. */
  @Test
  void sparesHighAmyloseWithoutAStep() {
    Ageing ageing = new Ageing(30 * DAY_S, rules);
    double ordinary = ageing.mostK(film(0.5, 0.25));

    assertThat(ageing.mostK(film(0.5, 0.7))).isCloseTo(0.2 * ordinary, within(1e-12));
    assertThat(ageing.mostK(film(0.5, 0.5))).isCloseTo(0.6 * ordinary, within(1e-12));
    assertThat(ageing.mostK(film(0.5, 0.51))).isCloseTo(0.58 * ordinary, within(1e-12));
  }

  private static FilmState film(double humidity, double amylose) {
    return new FilmState(0.3, amylose, 0, 0, 0.15, humidity, Castings.ROOM_K);
  }
}
