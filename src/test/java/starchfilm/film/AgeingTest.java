package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.numerics.evidence.Source;

/** Ageing worked by hand from its formula, with a glass transition that is given. */
class AgeingTest {
  private static final double DAY_S = 86_400;

  /** Far above the transition: {@code 1 - exp(-1)} after 30 days at 50 % and 10 days at 75 %. */
  @ParameterizedTest
  @CsvSource({"30, 0.50, 1", "10, 0.75, 1", "20, 0.75, 2", "0, 0.5, 0", "17.3205081, 0.625, 1"})
  void followsItsPaceWithHumidity(double days, double humidity, double timesT0) {
    double progress = new Ageing(days * DAY_S, glassAt(100)).progress(film(humidity, 0.25));
    assertThat(progress).isCloseTo(1 - Math.exp(-timesT0), within(1e-8));
  }

  /** Normal distribution of 15 K: Phi(1) = 0.841345, Phi(0) = 0.5, Phi(-2) = 0.022750 (tables). */
  @ParameterizedTest
  @CsvSource({"15, 0.841345", "0, 0.5", "-30, 0.022750"})
  void countsTheChanceThatTheFilmIsAboveItsGlassTransition(double aboveK, double chance) {
    FilmRule glass = glassAt(Pastes.ROOM_K - aboveK);
    double progress = new Ageing(30 * DAY_S, glass).progress(film(0.5, 0.25));
    assertThat(progress / (1 - Math.exp(-1))).isCloseTo(chance, within(1e-6));
  }

  /** Halfway, x = 0.5: strength 1.65, modulus 4, stretch 0.75; sd half the factor's logarithm. */
  @Test
  void movesStrengthStiffnessAndStretch() {
    Ageing half = new Ageing(30 * DAY_S * Math.log(2), glassAt(100));
    FilmState film = film(0.5, 0.25);
    assertEffect(half.on(FilmProperty.TENSILE_STRENGTH, film), 1.65);
    assertEffect(half.on(FilmProperty.YOUNGS_MODULUS, film), 4);
    assertEffect(half.on(FilmProperty.ELONGATION, film), 0.75);
    assertThat(half.on(FilmProperty.GLASS_TRANSITION, film)).isEqualTo(FilmInfluence.Effect.NONE);
  }

  /** Stable above half amylose; at one half it still ages like any other. */
  @Test
  void spareHighAmylose() {
    Ageing ageing = new Ageing(30 * DAY_S, glassAt(100));
    assertThat(ageing.progress(film(0.5, 0.5))).isCloseTo(1 - Math.exp(-1), within(1e-12));
    assertThat(ageing.progress(film(0.5, 0.51))).isCloseTo(0.2 * (1 - Math.exp(-1)), within(1e-12));
  }

  private static void assertEffect(FilmInfluence.Effect effect, double factor) {
    assertThat(effect.factor()).isCloseTo(factor, within(1e-9));
    assertThat(effect.logSd()).isCloseTo(Math.abs(Math.log(factor)) / 2, within(1e-9));
  }

  private static FilmState film(double humidity, double amylose) {
    return new FilmState(0.3, amylose, 0, 0.15, humidity, Pastes.ROOM_K);
  }

  private static FilmRule glassAt(double kelvin) {
    return new FilmRule() {
      @Override
      public FilmProperty property() {
        return FilmProperty.GLASS_TRANSITION;
      }

      @Override
      public double predict(FilmState film) {
        return kelvin;
      }

      @Override
      public Scatter scatter() {
        return Scatter.plusMinus(15);
      }

      @Override
      public List<Limit> limits() {
        return List.of();
      }

      @Override
      public List<Source> sources() {
        return List.of();
      }
    };
  }
}
