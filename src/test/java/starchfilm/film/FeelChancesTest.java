package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import starchfilm.casting.Castings;
import starchfilm.material.ingredient.StarchKind;

/** Of a hundred films, how many feel how, by a table of the normal distribution. */
class FeelChancesTest {
  /** x of 6 K, known within 11 K: half lie below 6 K, a sixth below -5 K, few above 26 K. */
  @Test
  void countsByTheNormalDistribution() {
    assertThat(new FeelChances(6, 11, 0, false).ofHundred())
        .containsEntry(Feel.BRITTLE, 16)
        .containsEntry(Feel.STIFF, 34)
        .containsEntry(Feel.FLEXIBLE, 47)
        .containsEntry(Feel.STRETCHY, 3);
  }

  @Test
  void tackyFilmIsStickyWhateverItsGlassTransition() {
    assertThat(new FeelChances(6, 11, 0, true).ofHundred()).containsOnlyKeys(Feel.STICKY);
  }

  /** A film far above its glass transition that has moved 24 K lies that much nearer to it. */
  @Test
  void ageingMovesAStretchyFilmBack() {
    assertThat(new FeelChances(44, 0.01, 24, false).ofHundred()).containsOnlyKeys(Feel.FLEXIBLE);
    assertThat(new FeelChances(44, 0.01, 0, false).ofHundred()).containsOnlyKeys(Feel.STRETCHY);
  }

  /** The glass transition's 10 and 90 % points lie 1.2816 standard deviations from its middle. */
  @Test
  void aForecastsChancesSpreadAsItsGlassTransitionDoes() {
    FilmForecast film =
        new FilmForecaster().forecast(Castings.film(Castings.paste(StarchKind.CORN, 0.04, 0.25)));
    assertThat(film.feelChances().sdK())
        .isCloseTo(
            (film.glassTransitionK().high() - film.glassTransitionK().middle()) / 1.2815516,
            within(1e-6));
  }
}
