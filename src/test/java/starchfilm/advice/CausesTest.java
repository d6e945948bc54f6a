package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Setting;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.drying.Milestone;
import starchfilm.film.PasteBody;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/**
 * Where each cause begins and where it is clear, as the head of its class words it: a figure at the
 * first limit has excess 0, at the second 1.
 */
class CausesTest {
  private static final double DAY_S = 86_400;

  /** Vapour that air can take up at 20 °C: the saturation pressure is 2339 Pa (steam tables). */
  private static final double SATURATED_20_PA = 2339;

  /**
   * Limits in air of 50 %: brittle below 20 g and tacky above 42.5 g glycerol (PlasticiserWindow);
   * rice is brought to 90 °C for 15 min and is done above 75.5 °C (StarchKind).
   */
  @ParameterizedTest
  @CsvSource({
    "TOO_LITTLE_GLYCEROL, GLYCEROL, 0.25, 0.15",
    "TOO_MUCH_GLYCEROL, GLYCEROL, 0.375, 0.445",
    "GLYCEROL_PARTED, GLYCEROL, 0.30, 0.50",
    "POURED_UNEVENLY, UNEVENNESS, 0.10, 0.35",
    "POURED_TOO_COOL, PASTE_TEMPERATURE, 333.15, 313.15",
    "DAMP_AIR, HUMIDITY, 0.60, 0.75",
    "DRY_AIR, HUMIDITY, 0.45, 0.30",
    "UNDERCOOKED, COOK_TEMPERATURE, 363.15, 348.65",
    "UNDERCOOKED, COOK_TIME, 720, 360",
    "OVERCOOKED, COOK_TEMPERATURE, 363.15, 369.15",
    "BOILED, COOK_TEMPERATURE, 367.15, 372.15",
  })
  void beginsAtOneLimitAndIsClearAtTheOther(
      Cause cause, Setting setting, double harmless, double clear) {
    assertLimits(cause, SeenFaults.usual(setting, harmless), SeenFaults.usual(setting, clear));
  }

  @Test
  void cookingForTwiceTheUsualTimeIsClearlyTooLong() {
    Casting atGuide = SeenFaults.usual(Setting.COOK_TEMPERATURE, 363.15);
    assertLimits(
        Cause.OVERCOOKED,
        Setting.COOK_TIME.set(atGuide, 900),
        Setting.COOK_TIME.set(atGuide, 1800));
  }

  @Test
  void saltShowsFromTwoPerCentOfTheSolidsAndIsMuchAtFive() {
    assertLimits(Cause.SALT, salty(0.02), salty(0.05));
  }

  private static Casting salty(double shareOfSolids) {
    double others = 1 + Setting.GLYCEROL.of(Castings.USUAL);
    return SeenFaults.usual(Setting.SALT, others * shareOfSolids / (1 - shareOfSolids));
  }

  @Test
  void filmOver200MicrometresIsThickAndAt400ClearlySo() {
    assertLimits(Cause.POURED_TOO_THICK, driedTo(200e-6), driedTo(400e-6));
  }

  @Test
  void anEdgeUnder50MicrometresIsThinAndAt20ClearlySo() {
    double edge = 1 - Castings.USUAL.pour().unevenness();
    assertLimits(Cause.POURED_TOO_THIN, driedTo(50e-6 / edge), driedTo(20e-6 / edge));
  }

  private static Casting driedTo(double dryM) {
    Casting usual = Castings.USUAL;
    return usual.pouredTo(usual.wetThicknessM() * dryM / dryM(usual));
  }

  private static double dryM(Casting casting) {
    return SeenFaults.on(casting).outlook().film().dryThicknessM().middle();
  }

  @Test
  void airThatTakesUp1000PaDriesWellAnd300PaIsSlow() {
    assertThat(
            excess(Cause.SLOW_ROOM, SeenFaults.usual(Setting.HUMIDITY, 1 - 1000 / SATURATED_20_PA)))
        .isCloseTo(0, within(0.005));
    assertThat(
            excess(Cause.SLOW_ROOM, SeenFaults.usual(Setting.HUMIDITY, 1 - 300 / SATURATED_20_PA)))
        .isCloseTo(1, within(0.005));
  }

  /** Water over time: what a square metre of the paste holds over when it is dry through. */
  @Test
  void seventyGramsAnHourAndSquareMetreAreAStillRoomAndTwoHundredAFan() {
    Casting casting = SeenFaults.usual(Setting.AIR_SPEED, 1.5);
    FaultContext scene = SeenFaults.on(casting);
    double water =
        casting.wetThicknessM()
            * casting.composition().pasteDensityKgPerM3()
            * casting.composition().water();
    double pace = water / (scene.outlook().timeS(Spot.NOMINAL, Milestone.DRY_THROUGH) / 3600);
    assertThat(SeenFaults.read(Cause.DRIED_TOO_FAST, scene).excess())
        .isCloseTo((pace - 0.07) / (0.2 - 0.07), within(1e-9));
    assertThat(excess(Cause.DRIED_TOO_FAST, Castings.USUAL)).isLessThan(0.2);
  }

  @Test
  void pasteIsStiffWhereItHardlyLevelsAndSettlesWhereTheStarchIsTooLittle() {
    PasteBody body = PasteBody.of(Castings.USUAL.composition());
    assertLimits(
        Cause.PASTE_TOO_STIFF, starch(0.75 * body.levelsUpTo()), starch(body.levelsUpTo()));
    assertLimits(
        Cause.PASTE_SETTLED, starch(body.settlesBelow() / 0.8), starch(body.settlesBelow() / 1.05));
  }

  private static Casting starch(double share) {
    return SeenFaults.usual(Setting.CONCENTRATION, share);
  }

  @Test
  void pasteIsCloudyByItsShareOfCloudyStarch() {
    assertLimits(Cause.OPAQUE_STARCH, riceAmong(0.2), riceAmong(0.8));
    Composition waxy = Castings.paste(StarchKind.WAXY_CORN, 0.05, 0.3);
    assertThat(excess(Cause.OPAQUE_STARCH, Castings.USUAL.with(waxy))).isNegative();
  }

  private static Casting riceAmong(double share) {
    return Castings.USUAL.with(
        Castings.USUAL
            .composition()
            .withStarches(Map.of(StarchKind.RICE, share, StarchKind.TAPIOCA, 1 - share)));
  }

  @Test
  void acidThatCostsATwelfthOfTheStrengthBeginsToShowAndAQuarterIsClear() {
    Casting sour = Setting.COOK_TIME.set(SeenFaults.usual(Setting.VINEGAR, 0.2), 3600);
    double left = SeenFaults.on(sour).outlook().film().acid().strengthFactor().middle();
    assertThat(left).isLessThan(0.9);
    assertThat(excess(Cause.ACID_CUT_CHAINS, sour))
        .isCloseTo((0.92 - left) / (0.92 - 0.75), within(1e-9));
  }

  @Test
  void steelHoldsFilmAndSlipperyPlatesLetItGo() {
    assertThat(excess(Cause.PLATE_HOLDS_ON, on(PlateMaterial.STEEL)))
        .isGreaterThan(excess(Cause.PLATE_HOLDS_ON, on(PlateMaterial.GLASS)));
    assertThat(excess(Cause.PLATE_HOLDS_ON, on(PlateMaterial.PTFE))).isZero();
    assertThat(excess(Cause.PLATE_LETS_GO, on(PlateMaterial.PTFE))).isBetween(0.5, 1.0);
    assertThat(excess(Cause.PLATE_LETS_GO, on(PlateMaterial.GLASS))).isZero();
    assertThat(
            SeenFaults.read(Cause.PLATE_HOLDS_ON, SeenFaults.on(on(PlateMaterial.ACRYLIC))).words())
        .isEqualTo("starch film clings to acrylic a little");
    assertThat(
            SeenFaults.read(Cause.PLATE_HOLDS_ON, SeenFaults.on(on(PlateMaterial.GLASS))).words())
        .isEqualTo("starch film clings to glass sometimes");
    assertThat(
            SeenFaults.read(Cause.PLATE_HOLDS_ON, SeenFaults.on(on(PlateMaterial.STEEL))).words())
        .isEqualTo("starch film clings to steel hard");
  }

  private static Casting on(PlateMaterial material) {
    Plate plate = Castings.USUAL.plate();
    return Castings.USUAL.with(
        new Plate(material, plate.lengthM(), plate.widthM(), plate.thicknessM(), 0));
  }

  /** Nine in ten plates are ready where the middle case is after 0.68 of the time. */
  @Test
  void plateIsHandledTooEarlyBeforeItIsSurelyFirm() {
    FaultContext scene = SeenFaults.on(Castings.USUAL);
    double firm = scene.outlook().timeS(Spot.THICK_SPOT, Milestone.PEELABLE);
    assertThat(SeenFaults.read(Cause.PEELED_TOO_EARLY, scene).told()).isFalse();
    assertThat(SeenFaults.read(Cause.PEELED_TOO_EARLY, scene.lookedAtS(firm / 0.68)).excess())
        .isCloseTo(0, within(1e-9));
    assertThat(SeenFaults.read(Cause.PEELED_TOO_EARLY, scene.lookedAtS(firm)).excess())
        .isCloseTo(1, within(1e-9));
    Casting moved =
        Castings.USUAL.with(List.of(new FaceChange(firm / 2, FaceChange.OpenFaces.BOTH)));
    assertThat(excess(Cause.MOVED_TOO_EARLY, moved)).isGreaterThan(1);
    assertThat(excess(Cause.MOVED_TOO_EARLY, Castings.USUAL)).isNegative();
    assertThat(
            SeenFaults.read(
                    Cause.MOVED_TOO_EARLY, SeenFaults.on(moved, seenAt(FaultKind.CURLED, firm / 3)))
                .excess())
        .as("seen before it was moved")
        .isNegative();
  }

  /** Drying that takes five days is no matter of patience; up to two and a half it is. */
  @Test
  void impatienceIsTheCauseOnlyOfAnOrdinaryDrying() {
    FaultContext scene = SeenFaults.on(Castings.USUAL.pouredTo(1.5e-3));
    double dry = scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    assertThat(dry).isLessThan(2.5 * DAY_S);
    assertThat(SeenFaults.read(Cause.LOOKED_TOO_EARLY, scene.lookedAtS(dry / 0.68)).excess())
        .isCloseTo(0, within(1e-9));
    assertThat(SeenFaults.read(Cause.LOOKED_TOO_EARLY, scene.lookedAtS(dry / 0.84)).excess())
        .isCloseTo(0.5, within(1e-9));
    assertThat(SeenFaults.read(Cause.LOOKED_TOO_EARLY, scene.lookedAtS(dry / 3)).excess())
        .isEqualTo(1);
    FaultContext deep = SeenFaults.on(Castings.USUAL);
    double slow = deep.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    assertThat(slow).isBetween(2.6 * DAY_S, 5 * DAY_S);
    assertThat(SeenFaults.read(Cause.LOOKED_TOO_EARLY, deep.lookedAtS(slow / 3)).excess())
        .isCloseTo((5 * DAY_S - slow) / (2.5 * DAY_S), within(1e-9));
  }

  @Test
  void filmIsFreshForAWeekAndOldAfterAMonth() {
    double dry = SeenFaults.on(Castings.USUAL).outlook().timeS(Spot.NOMINAL, Milestone.DRY_THROUGH);
    assertThat(aged(dry + 7 * DAY_S).excess()).isCloseTo(0, within(1e-9));
    assertThat(aged(dry + 30 * DAY_S).excess()).isCloseTo(1, within(1e-9));
    assertThat(aged(dry / 2).words()).isEqualTo("the film was fresh");
    assertThat(aged(dry + 30 * DAY_S).words())
        .isEqualTo("the film had been dry for 30 days; it stiffens over weeks");
    assertThat(aged(dry + 11 * DAY_S).words()).startsWith("the film had been dry for 11 days");
    assertThat(SeenFaults.read(Cause.AGED, SeenFaults.on(Castings.USUAL)).told()).isFalse();
  }

  private static CauseReading aged(double seenAtS) {
    return SeenFaults.read(
        Cause.AGED, SeenFaults.on(Castings.USUAL, seenAt(FaultKind.BRITTLE, seenAtS)));
  }

  private static ObservedFault seenAt(FaultKind kind, double timeS) {
    return new ObservedFault(kind, FaultPlace.ALL, OptionalDouble.of(timeS), Optional.empty());
  }

  @Test
  void eachIsPutRightToAFigureThatDoesNoHarm() {
    assertThat(Setting.GLYCEROL.of(right(Cause.TOO_LITTLE_GLYCEROL, Castings.USUAL)))
        .isCloseTo(0.30, within(1e-12));
    assertThat(dryM(right(Cause.POURED_TOO_THICK, driedTo(300e-6))))
        .isCloseTo(100e-6, within(1e-9));
    Casting thin = driedTo(40e-6);
    assertThat(dryM(right(Cause.POURED_TOO_THIN, thin)) * (1 - thin.pour().unevenness()))
        .isCloseTo(80e-6, within(1e-9));
    assertThat(right(Cause.POURED_UNEVENLY, Castings.USUAL).pour().unevenness()).isEqualTo(0.10);
    assertAir(right(Cause.DRIED_TOO_FAST, windy()), 25, 0.6, 0.1);
    assertAir(right(Cause.SLOW_ROOM, shed()), 20, 0.5, 0.1);
    Casting middling = right(Cause.DAMP_AIR, shed());
    assertAir(middling, 10, 0.5, 0.1);
    assertThat(middling.use().relativeHumidity()).isEqualTo(0.5);
  }

  @Test
  void whatIsPutRightIsWorded() {
    assertThat(words(Cause.TOO_MUCH_GLYCEROL, Castings.USUAL)).isEqualTo("with 30 g glycerol");
    assertThat(words(Cause.POURED_TOO_THICK, Castings.USUAL)).matches("poured [0-9.]+ mm wet");
    assertThat(words(Cause.POURED_UNEVENLY, Castings.USUAL)).isEqualTo("on a level plate");
    assertThat(words(Cause.DRIED_TOO_FAST, windy())).isEqualTo("in still air of 60 %");
    assertThat(words(Cause.SLOW_ROOM, shed())).isEqualTo("in a room of 20 °C and 50 %");
    assertThat(words(Cause.DRY_AIR, windy())).isEqualTo("in air of 50 %");
  }

  private static String words(Cause cause, Casting casting) {
    return cause.putRight(SeenFaults.on(casting)).orElseThrow().words();
  }

  @Test
  void whatIsRightAlreadyIsNotPutRight() {
    assertThat(Cause.POURED_TOO_THICK.putRight(SeenFaults.on(driedTo(90e-6)))).isEmpty();
    assertThat(Cause.POURED_TOO_THIN.putRight(SeenFaults.on(driedTo(200e-6)))).isEmpty();
    assertThat(
            Cause.POURED_UNEVENLY.putRight(
                SeenFaults.on(SeenFaults.usual(Setting.UNEVENNESS, 0.1))))
        .isEmpty();
    assertThat(Cause.DRIED_TOO_FAST.putRight(SeenFaults.on(shed()))).isEmpty();
    assertThat(Cause.SLOW_ROOM.putRight(SeenFaults.on(windy()))).isEmpty();
  }

  private static Casting windy() {
    return Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(25, 35, 1), 60);
  }

  private static Casting shed() {
    return Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(10, 80, 0.1), 60);
  }

  private static Casting right(Cause cause, Casting casting) {
    return cause.putRight(SeenFaults.on(casting)).orElseThrow().setup();
  }

  private static void assertAir(Casting casting, double celsius, double humidity, double speed) {
    AirState air = casting.room().at(0);
    assertThat(air.temperatureK()).isCloseTo(celsius + 273.15, within(1e-9));
    assertThat(air.relativeHumidity()).isCloseTo(humidity, within(1e-9));
    assertThat(air.speedMPerS()).isCloseTo(speed, within(1e-9));
  }

  private static void assertLimits(Cause cause, Casting harmless, Casting clear) {
    assertThat(excess(cause, harmless)).as("%s harmless", cause).isCloseTo(0, within(1e-6));
    assertThat(excess(cause, clear)).as("%s clear", cause).isCloseTo(1, within(1e-6));
  }

  /** Of the film in the air it dried in, for its use is in that air, too. */
  private static double excess(Cause cause, Casting casting) {
    AirState air = casting.room().at(0);
    CauseReading reading =
        SeenFaults.read(
            cause, SeenFaults.on(casting.with(Castings.use(air.relativeHumidity(), 23, 7))));
    assertThat(reading.told()).isTrue();
    return reading.excess();
  }
}
