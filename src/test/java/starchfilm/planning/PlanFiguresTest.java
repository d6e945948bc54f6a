package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.Quantiles;
import starchfilm.film.AcidEffect;
import starchfilm.film.FilmForecaster;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;

/** The judged figures of planning, each by what a cook sees of it. */
class PlanFiguresTest {
  private static final Planner PLANNER = new Planner(ParameterDistribution.textbook());
  private static final StarchBlend POTATO = StarchBlend.of(Map.of(StarchKind.POTATO, 1.0), 1);

  /** Paste of potato is soured to pH 3.5, with how weak a vinegar whatever. */
  @Test
  void pasteIsSouredToPhThreeAndAHalf() {
    for (PlannedRecipe recipe : recipes(StarchKind.POTATO, 0.01)) {
      assertThat(acid(recipe).pastePh()).isCloseTo(3.5, within(0.05));
    }
  }

  /** Wheat is cooked hotter and longer: at pH 3.5 less than a seventh of its chains were left. */
  @Test
  void pasteThatHotAcidWouldThinIsSouredLess() {
    PlannedRecipe most =
        recipes(StarchKind.WHEAT, 0.05).stream()
            .filter(recipe -> recipe.goals().contains(Goal.MOST_FILM))
            .findFirst()
            .orElseThrow();
    assertThat(acid(most).pastePh()).isBetween(3.6, 4.5);
    assertThat(acid(most).amylopectinLengthLeft()).isGreaterThan(0.14);
  }

  /** A spoon of vinegar keeps the safest wheat paste; in the least pot it would thin it. */
  @Test
  void vinegarRoundsToNoneOnlyWhereAStepOfTheBalanceWouldThinThePaste() {
    for (PlannedRecipe recipe : recipes(StarchKind.WHEAT, 0.05)) {
      if (recipe.potfuls().get(0).recipe().vinegar().massKg().value() == 0) {
        Composition paste = recipe.casting().composition();
        double stepped = 0.05 * 1e-3 / recipe.casting().paste().massKg();
        AcidEffect acid =
            new FilmForecaster()
                .forecast(recipe.casting().with(paste.with(Ingredient.VINEGAR, stepped)))
                .acid();
        assertThat(acid.amylopectinLengthLeft()).isLessThan(0.1);
      } else {
        assertThat(acid(recipe).pastePh()).isBetween(3.3, 4.5);
      }
    }
  }

  private static List<PlannedRecipe> recipes(StarchKind kind, double acidity) {
    return PLANNER
        .plan(
            Requests.garden()
                .with(
                    new Supplies(
                        Requests.recovered(), 0.25, List.of(Requests.plenty(kind)), acidity)))
        .recipes();
  }

  private static AcidEffect acid(PlannedRecipe recipe) {
    return new FilmForecaster().forecast(recipe.casting()).acid();
  }

  /** A rim of 2.5 mm round a plate that is a quarter off level; a hundredth for whole grams. */
  @Test
  void rimIsFilledToNineTenthsWhereThePourIsDeepest() {
    Kitchen usual = Requests.kitchen();
    Kitchen rimmed = new Kitchen(0.004, 0.001, usual.plate(), 2.5e-3, 4, 0.25, List.of());
    double deepest =
        PLANNER.plan(Requests.garden().with(rimmed)).recipes().stream()
            .mapToDouble(recipe -> 1.25 * recipe.casting().wetThicknessM())
            .max()
            .orElseThrow();
    assertThat(deepest / 2.5e-3).isBetween(0.85, 0.91);
  }

  @Test
  void aFullPotIsTriedHalfAsLargeAgain() {
    Plan plan = PLANNER.plan(Requests.garden().with(Requests.kitchen(0.25e-3, 0.001, 1)));
    List<BindingLimit> pots =
        plan.recipes().stream()
            .flatMap(recipe -> recipe.limits().stream())
            .filter(limit -> limit.limit() == Limit.POT)
            .toList();
    assertThat(pots)
        .isNotEmpty()
        .allSatisfy(
            limit -> {
              assertThat(limit.now()).isCloseTo(0.25e-3, within(1e-9));
              assertThat(limit.moved()).isCloseTo(0.375e-3, within(1e-9));
            });
  }

  /** The pot is weighed and topped up, to one part in a hundred of the paste. */
  @Test
  void toppingUpLeavesAHundredthOpen() {
    for (PlannedRecipe recipe : recipes(StarchKind.POTATO, 0.05)) {
      double pasteKg =
          recipe.casting().paste().kg(Ingredient.STARCH)
              / recipe.casting().composition().dryStarch();
      assertThat(recipe.casting().cook().waterLostKg().sd() / pasteKg)
          .isCloseTo(0.01, within(0.001));
    }
  }

  @Test
  void recipesThatACookCannotTellApartAreOne() {
    Design design = new Design(POTATO, 0.04, 0.30, 0.01, 2e-3, 4);
    assertThat(design.isNearly(new Design(POTATO, 0.041, 0.31, 0.01, 2.1e-3, 4))).isTrue();
    assertThat(design.isNearly(new Design(POTATO, 0.04, 0.32, 0.01, 2e-3, 4))).isFalse();
    assertThat(design.isNearly(new Design(POTATO, 0.045, 0.30, 0.01, 2e-3, 4))).isFalse();
    assertThat(design.isNearly(new Design(POTATO, 0.04, 0.30, 0.01, 2.2e-3, 4))).isFalse();
    assertThat(design.isNearly(design.on(3))).isFalse();
  }

  /** A tenth more film does not make up for half the chance that it is the film asked for. */
  @Test
  void moreFilmIsNoGoalAtAnyChance() {
    assertThat(score(Goal.MOST_FILM, 0.11, 1, 0.4)).isLessThan(score(Goal.MOST_FILM, 0.1, 1, 0.8));
    assertThat(score(Goal.MOST_FILM, 0.12, 1, 0.4))
        .isGreaterThan(score(Goal.MOST_FILM, 0.1, 1, 0.8));
    assertThat(score(Goal.SOONEST, 0.1, 0.9, 0.4)).isLessThan(score(Goal.SOONEST, 0.1, 1, 0.8));
  }

  private static double score(Goal goal, double filmKg, double readyS, double wishChance) {
    PlanRequest request = Requests.garden();
    Design design = new Design(POTATO, 0.03, 0.3, 0.01, 1e-3, 4);
    WishWindow window = WishWindow.of(request, POTATO);
    DryingSurface surface = null;
    RecipeSpace space = new RecipeSpace(request, POTATO, surface, window, 4, 0.05);
    return goal.score(
        new Candidate(
            design,
            request.film(design),
            0,
            Map.of(Limit.DATE, 1e-3),
            1e-4,
            readyS,
            1,
            1,
            wishChance,
            filmKg),
        space);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 1.7, 2.5, 4, 6})
  void thicknessFoundIsReadyAtTheMomentToHalfAPerCent(double days) {
    PlannedRecipe recipe = recipes(StarchKind.POTATO, 0.05).get(0);
    ThicknessRequest request = new ThicknessRequest(recipe.casting(), 0, days * Requests.DAY_S);
    ThicknessRoot root =
        new ThicknessRoot(
            new DryingForecaster(ParameterDistribution.textbook(), 20), request::pouredTo);
    double wetM = root.thickest(request.byS(), 0.8).orElseThrow();
    assertThat(Quantiles.of(root.ready(wetM), 0.8))
        .isCloseTo(request.byS(), within(0.005 * request.byS()));
  }

  /** The pour that gives most film by a date is worked out anew in many more likely cases. */
  @ParameterizedTest
  @ValueSource(doubles = {3, 4, 6})
  void theThickestPourIsReadyByTheDateInAsManyCasesAsAsked(double days) {
    PlanRequest request = Requests.garden().by(OptionalDouble.of(days * Requests.DAY_S));
    PlannedRecipe most =
        PLANNER.plan(request).recipes().stream()
            .filter(recipe -> recipe.goals().contains(Goal.MOST_FILM))
            .findFirst()
            .orElseThrow();
    double[] ready =
        new DryingForecaster(ParameterDistribution.textbook(), 400)
            .readyS(most.casting(), Spot.THICK_SPOT);
    assertThat(Quantiles.of(ready, request.sure()) / days / Requests.DAY_S)
        .isCloseTo(1, within(0.03));
  }
}
