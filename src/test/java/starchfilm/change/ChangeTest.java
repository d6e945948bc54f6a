package starchfilm.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Setting;
import starchfilm.casting.SwingingRoom;
import starchfilm.film.FilmForecaster;
import starchfilm.film.PasteBody;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/** The steps of every change: which way, how far, and where there is nothing left to change. */
class ChangeTest {
  private static final Set<Change> LOWER =
      EnumSet.of(
          Change.POUR_THINNER,
          Change.LEVEL_THE_PLATE,
          Change.LESS_GLYCEROL,
          Change.MORE_WATER,
          Change.LESS_VINEGAR,
          Change.CALMER_AIR,
          Change.DRIER_ROOM,
          Change.COOK_COOLER,
          Change.COOK_SHORTER);

  /** Changes that only a notebook, a recipe or a clock can make. */
  private static final Set<Change> BY_OTHERS =
      EnumSet.of(Change.CLEANER_GLYCEROL, Change.ANOTHER_ROOM, Change.WAIT_LONGER);

  private static final Set<Change> WITHOUT_FIGURE =
      EnumSet.of(
          Change.CLEARER_STARCH,
          Change.KEEP_IT_ON_THE_PLATE,
          Change.A_PLATE_THAT_LETS_GO,
          Change.A_PLATE_THAT_HOLDS_ON);

  private static final List<Casting> ANY =
      Stream.generate(new SplittableRandom(1)::split).limit(60).map(ChangeTest::drawn).toList();

  @ParameterizedTest
  @EnumSource(
      value = Change.class,
      mode = Mode.EXCLUDE,
      names = {
        "CLEANER_GLYCEROL",
        "ANOTHER_ROOM",
        "WAIT_LONGER",
        "CLEARER_STARCH",
        "KEEP_IT_ON_THE_PLATE",
        "ONTO_A_RACK",
        "A_PLATE_THAT_LETS_GO",
        "A_PLATE_THAT_HOLDS_ON"
      })
  void everyStepGoesItsWayAndFurtherThanTheOneBefore(Change change) {
    int found = 0;
    for (Casting casting : ANY) {
      double last = change.setting().of(casting);
      for (ChangeStep step : change.steps(casting)) {
        assertThat(step.before()).isEqualTo(casting);
        assertThat(step.from()).isEqualTo(change.setting().of(casting));
        assertThat(Math.signum(step.to() - last)).isEqualTo(LOWER.contains(change) ? -1 : 1);
        last = step.to();
        found++;
      }
    }
    assertThat(found).as("steps of %s in 60 castings", change).isGreaterThan(5);
  }

  @Test
  void nothingGoesBeyondItsLimits() {
    for (Casting casting : ANY) {
      for (Change change : EnumSet.complementOf(EnumSet.copyOf(BY_OTHERS))) {
        for (ChangeStep step : change.steps(casting)) {
          if (WITHOUT_FIGURE.contains(change)) {
            assertThat(step.after()).isNotEqualTo(casting);
            continue;
          }
          double to = step.to();
          switch (change.setting()) {
            case WET_THICKNESS ->
                assertThat(to).isBetween(Limits.THINNEST_WET_M, Limits.THICKEST_WET_M);
            case UNEVENNESS -> assertThat(to).isGreaterThanOrEqualTo(Limits.LEVEL);
            case GLYCEROL -> assertThat(to).isBetween(0.2 - 1e-9, Limits.MOST_GLYCEROL + 1e-9);
            case HUMIDITY -> assertThat(to).isBetween(Limits.DRIEST, Limits.DAMPEST);
            case AIR_TEMPERATURE -> assertThat(to).isLessThanOrEqualTo(Limits.WARMEST_K);
            case AIR_SPEED -> assertThat(to).isBetween(0.1, Limits.FAN_M_PER_S);
            case COOK_TEMPERATURE -> assertThat(to).isLessThanOrEqualTo(Limits.HOTTEST_COOK_K);
            case PASTE_TEMPERATURE ->
                assertThat(to).isLessThan(casting.cook().topTemperatureK().value());
            case VINEGAR -> assertThat(to).isNotNegative();
            case CONCENTRATION, COOK_TIME, STARCH, WATER, SALT -> assertThat(to).isPositive();
          }
        }
      }
    }
  }

  /** Film under 50 µm tears by hand; starch is kept a fifth above where it settles (judged). */
  @Test
  void filmIsNotPouredTooThinToHandleNorWateredUntilItSettles() {
    for (Casting casting : ANY) {
      for (ChangeStep step : Change.POUR_THINNER.steps(casting)) {
        assertThat(new FilmForecaster().forecast(step.after()).dryThicknessM().middle())
            .isGreaterThan(49.9e-6);
      }
      for (ChangeStep step : Change.MORE_WATER.steps(casting)) {
        assertThat(step.to())
            .isGreaterThan(1.19 * PasteBody.of(casting.composition()).settlesBelow());
      }
    }
  }

  /** 3 mm of rice paste with 30 g glycerol, ± 25 %, at 20 °C, 50 % and 0.1 m/s. */
  @ParameterizedTest
  @CsvSource({
    "POUR_THINNER, 0.0021",
    "POUR_HOTTER, 348.15",
    "LEVEL_THE_PLATE, 0.1",
    "MORE_GLYCEROL, 0.4",
    "COVER_THE_PLATE, 0.7",
    "DRIER_ROOM, 0.3",
    "FAN, 0.5",
    "WARMER_ROOM, 299.15"
  })
  void aClearStepIsTheSecondOrTheOnlyOne(Change change, double to) {
    ChangeStep step = change.clearStep(Castings.USUAL).orElseThrow();
    assertThat(step.to()).isCloseTo(to, within(1e-9));
  }

  @Test
  void aLevelPlateIsNotLevelledAndAFilmAtTheLimitTakesNoMoreGlycerol() {
    Casting level = Castings.USUAL.with(Castings.USUAL.pour().withUnevenness(Limits.LEVEL));
    assertThat(Change.LEVEL_THE_PLATE.steps(level)).isEmpty();
    Casting rich = Setting.GLYCEROL.set(Castings.USUAL, Limits.MOST_GLYCEROL);
    assertThat(Change.MORE_GLYCEROL.steps(rich)).isEmpty();
  }

  /** A pool of 9.8 mm is three times the usual pour: it is led back by steps, none too far. */
  @Test
  void aDeepTrayIsPouredThinnerByStepsOfWhichTheLastIsAUsualPour() {
    Casting deep = Castings.USUAL.pouredTo(9.8e-3);
    assertThat(Change.POUR_THINNER.steps(deep).stream().map(step -> Math.round(1e4 * step.to())))
        .containsExactly(83L, 69L, 54L, 39L);
    assertThat(Change.POUR_THICKER.steps(deep)).isEmpty();
    Casting shallow = Castings.USUAL.pouredTo(0.5e-3);
    assertThat(Change.POUR_THINNER.steps(shallow)).isEmpty();
    assertThat(Change.POUR_THICKER.steps(shallow).stream().map(step -> Math.round(1e4 * step.to())))
        .containsExactly(6L, 8L, 10L);
  }

  @Test
  void ofAVaryingRoomNothingIsChanged() {
    AirState mean = new AirState(293.15, 0.5, 0.1);
    Casting swinging =
        Castings.USUAL.with(Castings.USUAL.place().with(new SwingingRoom(mean, 5, 0.1, 0)));
    for (Change change : Change.values()) {
      if (change.thing() == Change.Thing.AIR) {
        assertThat(change.steps(swinging)).as("%s", change).isEmpty();
      }
    }
  }

  @Test
  void anOpenPanIsNotAdvisedForAStarchItCannotCook() {
    Casting high =
        Castings.USUAL
            .with(Castings.paste(StarchKind.HIGH_AMYLOSE_CORN, 0.06, 0.3))
            .with(Castings.cook(15, 70));
    assertThat(Change.COOK_HOTTER.steps(high)).isEmpty();
    assertThat(Change.COOK_HOTTER.steps(Castings.USUAL.with(Castings.cook(15, 70)))).isNotEmpty();
  }

  @Test
  void platesKindsAndFacesAreChangedOnlyWhereTheyDiffer() {
    Casting glass = Castings.USUAL;
    assertThat(Change.A_PLATE_THAT_HOLDS_ON.steps(glass)).isEmpty();
    assertThat(Change.A_PLATE_THAT_LETS_GO.steps(glass))
        .singleElement()
        .satisfies(
            step ->
                assertThat(step.after().plate().material()).isEqualTo(PlateMaterial.POLYPROPYLENE));
    assertThat(Change.KEEP_IT_ON_THE_PLATE.steps(glass)).isEmpty();
    Casting racked = glass.with(List.of(new FaceChange(3600, OpenFaces.BOTH)));
    assertThat(Change.KEEP_IT_ON_THE_PLATE.steps(racked))
        .singleElement()
        .satisfies(step -> assertThat(step.after()).isEqualTo(glass));
    assertThat(Change.CLEARER_STARCH.steps(glass)).hasSize(1);
    assertThat(Change.CLEARER_STARCH.steps(Change.CLEARER_STARCH.steps(glass).get(0).after()))
        .isEmpty();
  }

  private static Casting drawn(SplittableRandom random) {
    StarchKind[] kinds = StarchKind.values();
    double starch = 0.015 + 0.085 * random.nextDouble();
    double glycerol = 0.6 * random.nextDouble() * starch;
    double acid = random.nextBoolean() ? 0 : 0.005 * random.nextDouble();
    return Castings.plate(
            1 + 4 * random.nextDouble(),
            new Composition(
                Map.of(kinds[random.nextInt(kinds.length)], 1.0),
                starch,
                glycerol,
                0,
                acid,
                1 - starch - glycerol - acid),
            Castings.room(
                10 + 25 * random.nextDouble(), 30 + 40 * random.nextDouble(), random.nextDouble()),
            30 + 40 * random.nextDouble())
        .with(Castings.cook(40 * random.nextDouble(), 60 + 40 * random.nextDouble()));
  }
}
