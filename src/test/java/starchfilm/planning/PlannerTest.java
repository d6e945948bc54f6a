package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.Feel;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Paste;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;

class PlannerTest {
  private static final Planner PLANNER = new Planner(ParameterDistribution.textbook());
  private static final Plan GARDEN = PLANNER.plan(Requests.garden());

  @Test
  void everyGoalIsServedOnceByRecipesThatDiffer() {
    List<PlannedRecipe> recipes = GARDEN.recipes();

    List<Goal> served = new ArrayList<>();
    recipes.forEach(recipe -> served.addAll(recipe.goals()));
    assertThat(served).containsExactlyInAnyOrder(Goal.values());
    assertThat(recipes).hasSizeBetween(2, 4).doesNotHaveDuplicates();
  }

  @Test
  void eachRecipeIsBestAtWhatItSays() {
    List<PlannedRecipe> recipes = GARDEN.recipes();

    // Rounding to the gram moves each figure by less than this.
    double rounding = 1.03;
    PlannedRecipe most = serving(Goal.MOST_FILM, recipes);
    PlannedRecipe soonest = serving(Goal.SOONEST, recipes);
    for (PlannedRecipe other : recipes) {
      assertThat(other.filmKg()).isLessThan(most.filmKg() * rounding);
      assertThat(readyS(other)).isGreaterThan(readyS(soonest) / rounding);
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"STIFF", "STRETCHY"})
  void theRoundedFilmStillFeelsAsAsked(Feel feel) {
    Plan plan =
        PLANNER.plan(
            Requests.garden()
                .with(Requests.feeling(feel))
                .with(Requests.kitchen(0.002, 0.0001, 4)));

    assertThat(plan.recipes()).isNotEmpty();
    for (PlannedRecipe recipe : plan.recipes()) {
      assertThat(recipe.film().feel()).isEqualTo(feel);
      assertThat(recipe.chances().asWished()).isTrue();
    }
  }

  @Test
  void theDateIsMetAsSurelyAsAsked() {
    for (PlannedRecipe recipe : GARDEN.recipes()) {
      // Half a gram of rounding and 200 cases leave this much.
      assertThat(recipe.chances().byDate().orElseThrow())
          .isGreaterThan(PlanRequest.USUALLY_SURE - 0.03);
    }
  }

  @Test
  void moreTimeNeverMakesLessFilmNorThinner() {
    double film = 0;
    double thickness = 0;
    for (double days : new double[] {2, 3, 5, 8}) {
      PlannedRecipe recipe =
          mostFilm(Requests.garden().by(OptionalDouble.of(days * Requests.DAY_S)));
      assertThat(recipe.filmKg()).isGreaterThan(film * 0.99);
      assertThat(recipe.film().dryThicknessM().middle()).isGreaterThan(thickness * 0.99);
      film = recipe.filmKg();
      thickness = recipe.film().dryThicknessM().middle();
    }
  }

  @Test
  void moreGlycerolAtHandNeverMakesLessFilm() {
    double film = 0;
    for (double grams : new double[] {3, 5, 8, 12, 20, 250}) {
      PlanRequest request = Requests.garden().with(Requests.potatoAnd(grams / 1000));
      double now = mostFilm(request.with(Requests.kitchen(0.002, 0.0001, 4))).filmKg();
      // The balance's 0.1 g of a pour of 60 g or more.
      assertThat(now).as("%s g", grams).isGreaterThan(film * 0.996);
      film = now;
    }
  }

  @Test
  void scarceGlycerolIsNamedWithWhatMoreWouldBuy() {
    PlannedRecipe recipe = mostFilm(Requests.garden().with(Requests.potatoAnd(0.004)));

    BindingLimit glycerol =
        recipe.limits().stream()
            .filter(limit -> limit.limit() == Limit.GLYCEROL)
            .findFirst()
            .orElseThrow();
    assertThat(glycerol.moved()).isCloseTo(0.005, within(1e-9));
    assertThat(glycerol.buys().orElseThrow().filmKg()).isGreaterThan(recipe.filmKg() * 1.05);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.0001, 0.002})
  void everyGramIsAStepOfTheBalanceAndThePotWeighsWhatWentIn(double stepKg) {
    Plan plan = PLANNER.plan(Requests.garden().with(Requests.kitchen(0.002, stepKg, 4)));

    for (PlannedRecipe recipe : plan.recipes()) {
      assertStep(recipe.pourKg(), stepKg);
      for (Potful potful : recipe.potfuls()) {
        Recipe weighed = potful.recipe();
        double sum = weighed.waterKg().value();
        for (StarchPortion portion : weighed.starches()) {
          assertStep(portion.massKg().value(), stepKg);
          sum += portion.massKg().value();
        }
        assertStep(weighed.glycerol().massKg().value(), stepKg);
        assertStep(weighed.vinegar().massKg().value(), stepKg);
        assertStep(weighed.waterKg().value(), stepKg);
        sum += weighed.glycerol().massKg().value() + weighed.vinegar().massKg().value();
        assertThat(sum - weighed.cook().waterLostKg().value())
            .isCloseTo(potful.cookedKg(), within(1e-12));
        assertThat(potful.cookedKg())
            .isCloseTo(potful.plates() * recipe.pourKg() * 1.05, within(1e-12));
      }
    }
  }

  @Test
  void whatIsForecastIsWhatIsWeighedOut() {
    for (PlannedRecipe recipe : GARDEN.recipes()) {
      Paste paste = Paste.cooked(recipe.potfuls().get(0).recipe());
      assertThat(recipe.casting().paste()).isEqualTo(paste);
      double wetM = recipe.pourKg() / (0.3 * 0.2 * paste.composition().pasteDensityKgPerM3());
      assertThat(recipe.casting().pour().wetThicknessM().value()).isCloseTo(wetM, within(1e-12));
    }
  }

  @Test
  void theFilmWeighsWhatItsSolidsAndItsMoistureDo() {
    for (PlannedRecipe recipe : GARDEN.recipes()) {
      double solidsKg = 0;
      for (Potful potful : recipe.potfuls()) {
        Recipe weighed = potful.recipe();
        double ofPot = weighed.glycerol().massKg().value() * (0.82 + 0.03);
        for (StarchPortion portion : weighed.starches()) {
          ofPot += portion.massKg().value() * (1 - portion.moistureFraction().value());
        }
        double poured = potful.plates() * recipe.pourKg() / potful.cookedKg();
        solidsKg += potful.times() * ofPot * poured;
      }
      double moisture = recipe.film().equilibriumMoisture().middle();
      assertThat(recipe.filmKg()).isCloseTo(solidsKg * (1 + moisture), within(1e-9));
    }
  }

  @Test
  void aSmallPotIsCookedSeveralTimesAndFillsEveryPlate() {
    PlanRequest request = Requests.garden().with(Requests.kitchen(0.0009, 0.001, 5));

    for (PlannedRecipe recipe : PLANNER.plan(request).recipes()) {
      int plates = recipe.potfuls().stream().mapToInt(p -> p.plates() * p.times()).sum();
      assertThat(plates).isEqualTo(recipe.plates()).isEqualTo(5);
      for (Potful potful : recipe.potfuls()) {
        double before = potful.cookedKg() + potful.recipe().cook().waterLostKg().value();
        assertThat(before).isLessThan(0.75 * 0.9 * 1.02);
      }
    }
  }

  @Test
  void theCupboardIsNeverOverdrawn() {
    PlanRequest request =
        Requests.garden()
            .with(
                new Supplies(
                    Requests.recovered(),
                    0.007,
                    List.of(
                        Requests.starch(StarchKind.TAPIOCA, 0.012),
                        Requests.starch(StarchKind.POTATO, 0.02)),
                    0));

    for (PlannedRecipe recipe : PLANNER.plan(request).recipes()) {
      assertThat(recipe.glycerolKg()).isLessThanOrEqualTo(0.007 + 1e-12);
      for (StarchPortion portion : recipe.potfuls().get(0).recipe().starches()) {
        double most = portion.kind() == StarchKind.TAPIOCA ? 0.012 : 0.02;
        assertThat(portion.massKg().value()).isLessThanOrEqualTo(most + 1e-12);
      }
      assertThat(recipe.potfuls().get(0).recipe().vinegar().massKg().value()).isZero();
    }
  }

  @Test
  void thePlanIsTheSameWithOneThreadAndWithMany() throws Exception {
    PlanRequest request =
        Requests.garden()
            .with(
                new Supplies(
                    Requests.recovered(),
                    0.02,
                    List.of(
                        Requests.plenty(StarchKind.TAPIOCA), Requests.plenty(StarchKind.POTATO)),
                    0.05));

    Plan alone = inPool(1, request);
    Plan together = inPool(4, request);

    assertThat(together).usingRecursiveComparison().isEqualTo(alone);
  }

  @Test
  void withoutGlycerolTheWayOutSaysHowMuchIsNeeded() {
    Plan plan = PLANNER.plan(Requests.garden().with(Requests.potatoAnd(0)));

    assertThat(plan.recipes()).isEmpty();
    assertThat(plan.giveUps())
        .anySatisfy(
            way -> {
              assertThat(way.wishes()).isEqualTo(Set.of(Limit.GLYCEROL));
              assertThat(way.gives().glycerolKg()).isBetween(0.002, 0.01);
            });
  }

  @Test
  void anImpossibleDateIsMovedToTheFirstPossibleOne() {
    PlanRequest soon = Requests.garden().by(OptionalDouble.of(0.4 * Requests.DAY_S));
    Plan plan = PLANNER.plan(soon);

    assertThat(plan.recipes()).isEmpty();
    GiveUp date =
        plan.giveUps().stream()
            .filter(way -> way.wishes().equals(EnumSet.of(Limit.DATE)))
            .findFirst()
            .orElseThrow();
    assertThat(date.gives().chance()).isLessThan(0.2);
    PlanRequest later = soon.by(OptionalDouble.of(date.gives().surelyReadyS() * 1.02));
    assertThat(PLANNER.plan(later).recipes()).isNotEmpty();
  }

  private Plan inPool(int threads, PlanRequest request) throws Exception {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(() -> PLANNER.plan(request)).get();
    } finally {
      pool.shutdown();
    }
  }

  private PlannedRecipe mostFilm(PlanRequest request) {
    return serving(Goal.MOST_FILM, PLANNER.plan(request).recipes());
  }

  private static PlannedRecipe serving(Goal goal, List<PlannedRecipe> recipes) {
    return recipes.stream().filter(r -> r.goals().contains(goal)).findFirst().orElseThrow();
  }

  private static double readyS(PlannedRecipe recipe) {
    return recipe
        .drying()
        .at(starchfilm.casting.Spot.THICK_SPOT)
        .at(starchfilm.drying.Milestone.DRY_THROUGH)
        .timeS()
        .middle();
  }

  private static void assertStep(double kg, double stepKg) {
    assertThat(kg / stepKg).isCloseTo(Math.rint(kg / stepKg), within(1e-6));
  }

  /** Concentrations people cast at: Swinkels 1985 and others, see {@link StarchKind#SOURCE}. */
  @ParameterizedTest
  @CsvSource({"CORN, 4, 7", "POTATO, 2, 4", "TAPIOCA, 3, 5", "WHEAT, 5, 8", "RICE, 4, 6"})
  void aPlanStaysWithinTheConcentrationsPeopleCastAt(
      StarchKind kind, double fromPercent, double toPercent) {
    PlanRequest request =
        Requests.garden()
            .with(Requests.kitchen(0.002, 0.0001, 4))
            .with(new Supplies(Requests.recovered(), 0.25, List.of(Requests.plenty(kind)), 0));

    for (PlannedRecipe recipe : PLANNER.plan(request).recipes()) {
      // The balance shows tenths of a gram of about 10 g starch.
      assertThat(100 * recipe.casting().composition().dryStarch())
          .isBetween(fromPercent * 0.98, toPercent * 1.02);
    }
  }
}
