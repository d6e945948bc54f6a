package starchfilm.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Room;
import starchfilm.casting.Setting;
import starchfilm.casting.SwingingRoom;
import starchfilm.film.FilmForecaster;
import starchfilm.film.PasteBody;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.units.Named;

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

  private static final Room DRY = Castings.room(20, 40, 0.1);

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
            case GLYCEROL -> assertThat(to).isBetween(0.2 - 1e-9, 0.4 + 1e-9);
            case HUMIDITY -> assertThat(to).isBetween(Limits.DRIEST, Limits.DAMPEST);
            case AIR_TEMPERATURE -> assertThat(to).isLessThanOrEqualTo(Limits.WARMEST_K);
            case AIR_SPEED -> assertThat(to).isBetween(0.1, DryingPlace.FAN_M_PER_S);
            case COOK_TEMPERATURE -> assertThat(to).isLessThanOrEqualTo(95 + 273.15);
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

  /**
   * The figures that a change leads to, by hand from the limits that {@link Limits}, the cook
   * guides, the window of glycerol and the body of a paste state; in mm, °C, minutes, m/s or
   * shares. Everything else is 3 mm of 6 % paste with 30 g glycerol, cooked for 15 minutes at 95 °C
   * and poured at 60 °C, ± 25 %, in still air of 20 °C and 50 %.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "steps.csv", useHeadersInDisplayName = true)
  void leadsByTheseSteps(
      Change change, StarchKind kind, double from, double usePercent, String steps) {
    Setting setting = change.setting();
    Casting base =
        Castings.USUAL
            .with(Castings.paste(kind, 0.06, 0.3))
            .with(Castings.use(usePercent / 100, 23, 7));

    assertThat(
            change.steps(setting.set(base, inSi(setting, from))).stream()
                .mapToDouble(ChangeStep::to)
                .toArray())
        .containsExactly(
            Pattern.compile(" ")
                .splitAsStream(steps)
                .filter(figure -> !figure.equals("none"))
                .mapToDouble(figure -> inSi(setting, Double.parseDouble(figure)))
                .toArray(),
            within(1e-9));
  }

  private static double inSi(Setting setting, double figure) {
    return switch (setting) {
      case WET_THICKNESS -> figure / 1000;
      case PASTE_TEMPERATURE, COOK_TEMPERATURE, AIR_TEMPERATURE -> figure + 273.15;
      case COOK_TIME -> 60 * figure;
      default -> figure;
    };
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
    "FAN, 1",
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
    Casting rich = Setting.GLYCEROL.set(Castings.USUAL, 0.45);
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

  /** 2 % of tapioca, 4 mm wet, is some 64 µm dry, 44 µm at 2.8 mm; film under 50 µm tears. */
  @Test
  void aThinPasteIsNotPouredMuchThinner() {
    Casting thin = Castings.plate(4, Castings.paste(StarchKind.TAPIOCA, 0.02, 0), DRY, 60);
    assertThat(Change.POUR_THINNER.steps(thin))
        .singleElement()
        .satisfies(step -> assertThat(step.to()).isCloseTo(3.4e-3, within(1e-9)));
  }

  /** The paste is poured no hotter than it was cooked; 4 K is no step. */
  @Test
  void aPasteCookedCoolIsPouredNoHotterThanItWasCooked() {
    Casting cool = Castings.USUAL.with(Castings.cook(15, 75));
    assertThat(Change.POUR_HOTTER.steps(cool))
        .singleElement()
        .satisfies(step -> assertThat(step.to()).isCloseTo(65 + 273.15, within(1e-9)));
  }

  /** Corn asks for 90 °C and 15 minutes, potato for 80 °C and 10: the blend for what corn asks. */
  @Test
  void aBlendIsCookedAsTheStarchThatNeedsMost() {
    Composition blend =
        Castings.USUAL
            .composition()
            .withStarches(Map.of(StarchKind.POTATO, 0.7, StarchKind.CORN, 0.3));
    Casting raw = Castings.USUAL.with(blend).with(Castings.cook(5, 60));
    assertThat(Change.COOK_HOTTER.steps(raw).get(0).to()).isCloseTo(363.15, within(1e-9));
    assertThat(Change.COOK_LONGER.steps(raw).get(0).to()).isEqualTo(900);
  }

  /** Potato and tapioca set to a clear film; 2 % of another does not cloud it (judged). */
  @ParameterizedTest
  @CsvSource({
    "TAPIOCA, POTATO, 0.5, false",
    "TAPIOCA, CORN, 0.5, true",
    "TAPIOCA, CORN, 0.99, false",
    "POTATO, CORN, 0.99, false",
    "POTATO, CORN, 0.97, true"
  })
  void onlyACloudyBlendIsMadeClearer(
      StarchKind one, StarchKind other, double share, boolean cloudy) {
    Casting blend =
        Castings.USUAL.with(
            Castings.USUAL.composition().withStarches(Map.of(one, share, other, 1 - share)));
    List<ChangeStep> steps = Change.CLEARER_STARCH.steps(blend);
    assertThat(steps).hasSize(cloudy ? 1 : 0);
    for (ChangeStep step : steps) {
      assertThat(step.after().composition().starchShares())
          .isEqualTo(Map.of(StarchKind.TAPIOCA, 1.0));
    }
  }

  /** Film clings to acrylic and to wood; it comes off silicone by itself. */
  @ParameterizedTest
  @CsvSource({"ACRYLIC, true", "WOOD, true", "SILICONE, false", "PTFE, false"})
  void aPlateIsChangedForTheOtherKindOnly(PlateMaterial material, boolean clings) {
    Casting casting = Castings.USUAL.with(Castings.USUAL.plate().of(material));
    assertThat(Change.A_PLATE_THAT_LETS_GO.steps(casting)).hasSize(clings ? 1 : 0);
    List<ChangeStep> steps = Change.A_PLATE_THAT_HOLDS_ON.steps(casting);
    assertThat(steps).hasSize(clings ? 0 : 1);
    for (ChangeStep step : steps) {
      assertThat(step.after().plate().material()).isEqualTo(PlateMaterial.GLASS);
    }
  }

  @Test
  void theTableOfRulesNamesAChangeInLowerCase() {
    assertThat(Named.of(Change.POUR_THINNER)).isEqualTo("pour thinner");
    assertThat(Named.of(Change.A_PLATE_THAT_LETS_GO)).isEqualTo("a plate that lets go");
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
                1 - starch - glycerol - acid,
                0),
            Castings.room(
                10 + 25 * random.nextDouble(), 30 + 40 * random.nextDouble(), random.nextDouble()),
            30 + 40 * random.nextDouble())
        .with(Castings.cook(40 * random.nextDouble(), 60 + 40 * random.nextDouble()));
  }
}
