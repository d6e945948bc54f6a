package starchfilm.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.planning.BindingLimit;
import starchfilm.planning.Goal;
import starchfilm.planning.Limit;
import starchfilm.planning.RecipeOutcome;

class PlanWordsTest {
  private static final double DAY_S = 86_400;

  @Test
  void aLimitTellsWhatMovingItAddsAndItsOwnFigureOnce() {
    assertThat(moved(Limit.PLATES, Goal.MOST_FILM, of(2, 0.0312, 5, 0.8), of(3, 0.047, 5, 0.8)))
        .contains("Every plate is used; with 3 plates instead of 2: 16 g more film.");
    assertThat(moved(Limit.DATE, Goal.SOONEST, of(2, 0.03, 5, 0.8), of(3, 0.03, 2, 0.8)))
        .contains(
            "The date limits the thickness; a day later: ready 3.0 days sooner, 3 plates instead of 2.");
    assertThat(moved(Limit.DATE, Goal.SOONEST, of(2, 0.03, 5, 0.8), of(3, 0.03, 5, 0.8)))
        .contains("The date limits the thickness; a day later: 3 plates instead of 2.");
    assertThat(moved(Limit.DATE, Goal.CLOSEST, of(2, 0.03, 5, 0.62), of(2, 0.03, 5, 0.88)))
        .contains(
            "The date limits the thickness; a day later: as asked in 9 of 10 likely cases instead"
                + " of 6 of 10.");
  }

  @Test
  void nothingIsToldThatReadsTheSameAfterwards() {
    assertThat(moved(Limit.DATE, Goal.CLOSEST, of(2, 0.03, 5, 0.78), of(2, 0.03, 5, 0.82)))
        .isEmpty();
    assertThat(moved(Limit.PLATES, Goal.MOST_FILM, of(2, 0.03, 5, 0.8), of(3, 0.03, 5, 0.8)))
        .isEmpty();
  }

  private static Optional<String> moved(
      Limit limit, Goal goal, RecipeOutcome gives, RecipeOutcome buys) {
    return PlanWords.sentence(
        new BindingLimit(
            limit, goal, gives.plates(), gives.plates() + 1, gives, Optional.of(buys)));
  }

  private static RecipeOutcome of(int plates, double filmKg, double readyDays, double wishChance) {
    return new RecipeOutcome(
        plates,
        0.3,
        1e-4,
        filmKg,
        readyDays * DAY_S,
        readyDays * DAY_S,
        1,
        wishChance,
        0.01,
        0.02,
        5e-4);
  }
}
