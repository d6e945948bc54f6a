package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Plate;
import starchfilm.casting.Plate.Outline;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.Setting;
import starchfilm.casting.Spot;
import starchfilm.casting.SwingingRoom;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.drying.Milestone;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.figures.Spans;

/** Figures of a plate as its maker would say them. */
class AdviceFigureTest {
  private static final double HOUR_S = 3600;

  @Test
  void aPlateIsCalledByWhatItIsAndMeasures() {
    assertThat(plate(new Plate(PlateMaterial.GLASS, 0.3, 0.2, 0.004, 0)))
        .isEqualTo("glass, 30 × 20 cm");
    assertThat(plate(new Plate(PlateMaterial.STEEL, 0.3, 0.2, 0.001, 0.012)))
        .isEqualTo("steel, 30 × 20 cm, rim 12 mm");
    assertThat(plate(Castings.GLASS.of(PlateMaterial.OTHER))).startsWith("another material, ");
    assertThat(plate(across(0.1, 0.1, Outline.ELLIPSE))).isEqualTo("glass, 10 cm round");
    assertThat(plate(across(0.1, 0.16, Outline.ELLIPSE))).isEqualTo("glass, 16 × 10 cm oval");
    assertThat(plate(across(0.1, 0.16, Outline.FREE))).isEqualTo("glass, 160 cm²");
  }

  private static String plate(Plate plate) {
    return AdviceFigure.PLATE.words(SeenFaults.on(Castings.USUAL.with(plate)));
  }

  private static Plate across(double oneM, double otherM, Outline outline) {
    return Plate.across(PlateMaterial.GLASS, oneM, otherM, 0.003, outline);
  }

  @Test
  void whatWasDoneToThePlateIsToldInOrder() {
    Casting handled =
        Castings.USUAL.with(
            List.of(
                new FaceChange(10 * HOUR_S, OpenFaces.BOTH),
                new FaceChange(20 * HOUR_S, OpenFaces.UPPER),
                new FaceChange(30 * HOUR_S, OpenFaces.TURNED)));
    assertThat(AdviceFigure.FACES.words(SeenFaults.on(handled)))
        .isEqualTo(
            "on a rack after 10 hours, back on its plate after 20 hours, turned over after 30"
                + " hours");
    assertThat(AdviceFigure.FACES.words(SeenFaults.on(Castings.USUAL))).isEqualTo("no");
  }

  /** A tenth of a metre a second is still air. */
  @Test
  void aRoomIsToldByItsAir() {
    assertThat(AdviceFigure.ROOM.words(SeenFaults.on(Castings.USUAL)))
        .endsWith("20 °C and 50 % (still)");
    assertThat(AdviceFigure.ROOM.words(SeenFaults.on(SeenFaults.usual(Setting.AIR_SPEED, 1.5))))
        .endsWith("20 °C and 50 % (draught of 1.5 m/s)");
    assertThat(AdviceFigure.USE.words(SeenFaults.on(Castings.USUAL)))
        .isEqualTo("23 °C and 50 % after 7.0 days");
  }

  /** Three whole days: warmth and damp swing about their means. */
  @Test
  void aRoomThatSwingsCountsWithItsMean() {
    AirState mean = new AirState(291, 0.55, 0.4);
    Casting swinging =
        Castings.USUAL.with(
            new DryingPlace(
                "attic",
                new SwingingRoom(mean, 8, 0.2, 7 * HOUR_S),
                RoomUncertainty.NONE,
                OptionalDouble.empty()));
    AirState air = SeenFaults.on(swinging).meanAir();
    assertThat(air.temperatureK()).isCloseTo(291, within(1e-9));
    assertThat(air.relativeHumidity()).isCloseTo(0.55, within(1e-12));
    assertThat(air.speedMPerS()).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void aBlendIsToldByItsSharesAndATraceIsNot() {
    assertThat(starches(Map.of(StarchKind.RICE, 1.0))).isEqualTo("rice");
    assertThat(starches(Map.of(StarchKind.RICE, 0.99, StarchKind.CORN, 0.01))).isEqualTo("rice");
    assertThat(starches(Map.of(StarchKind.RICE, 0.25, StarchKind.CORN, 0.75)))
        .isEqualTo("75 % corn and 25 % rice");
  }

  private static String starches(Map<StarchKind, Double> shares) {
    return AdviceFigure.STARCHES.words(
        SeenFaults.on(Castings.USUAL.with(Castings.USUAL.composition().withStarches(shares))));
  }

  /**
   * Heat of the paste, 4 kJ/(kg K), and of 4 mm of glass at 20 °C, 2500 kg/m³ of 750 J/(kg K), is
   * shared.
   */
  @Test
  void aPlateCoolsThePasteThatIsPouredOnIt() {
    double paste = 0.003 * Castings.USUAL.composition().pasteDensityKgPerM3() * 4000;
    double plate = 0.004 * 2500 * 750;
    assertThat(AdviceFigure.ON_THE_PLATE.of(SeenFaults.on(Castings.USUAL)) - 273.15)
        .isCloseTo((60 * paste + 20 * plate) / (paste + plate), within(1e-9));
  }

  /** An ordinary room is at 20 °C and 50 %: steam tables give 2339 Pa, so 1170 Pa are left. */
  @Test
  void anOrdinaryRoomTakesUpAllThatAnOrdinaryRoomDoes() {
    FaultContext scene = SeenFaults.on(Castings.USUAL);
    assertThat(AdviceFigure.ROOM_FOR_VAPOUR.words(scene)).isEqualTo("1200");
    assertThat(AdviceFigure.OF_AN_ORDINARY_ROOM.words(scene)).isEqualTo("100 %");
    assertThat(
            AdviceFigure.OF_AN_ORDINARY_ROOM.words(
                SeenFaults.on(SeenFaults.usual(Setting.HUMIDITY, 0.8))))
        .isEqualTo("40 %");
  }

  @Test
  void aChangeNamesItsUnitOnceAndWhatComesOnTop() {
    FaultContext before = SeenFaults.on(Castings.USUAL);
    FaultContext after = before.with(before.outlook().of(Castings.USUAL.pouredTo(2e-3)));
    assertThat(Sentence.in("pour {wet thickness}", before, after)).isEqualTo("pour 3 → 2 mm");
    assertThat(Sentence.in("{new wet thickness} instead of {old wet thickness}", before, after))
        .isEqualTo("2 mm instead of 3 mm");
    FaultContext wetter =
        before.with(
            before
                .outlook()
                .of(Setting.WATER.set(Castings.USUAL, 1.5 * Setting.WATER.of(Castings.USUAL))));
    assertThat(Sentence.in("{more water} more", before, wetter))
        .isEqualTo(AdviceFigure.grams(0.5 * AdviceFigure.WATER.of(before)) + " more");
  }

  @Test
  void aPlateLookedAtIsHeldAgainstTheForecast() {
    FaultContext scene = SeenFaults.on(Castings.USUAL, SeenFaults.fault(FaultKind.STILL_WET));
    double half = scene.forecast().at(Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).timeS().middle();
    assertThat(AdviceFigure.DRY_BY_THEN.words(scene.lookedAtS(half)))
        .isEqualTo(
            "the thick spot was dry through in 50 of 100 likely cases when last weighed, "
                + Spans.of(half)
                + " after the pour");
    double firm = scene.forecast().at(Spot.THICK_SPOT).at(Milestone.PEELABLE).timeS().middle();
    assertThat(AdviceFigure.PEELABLE_BY_THEN.words(scene.lookedAtS(firm)))
        .startsWith("the thick spot was peelable in 50 of 100 likely cases");
    assertThat(AdviceFigure.FIRM_WHEN_SEEN.words(scene.lookedAtS(firm))).isEqualTo("50 of 100");
  }

  /** Acrylic holds a little, glass sometimes, steel hard; of what holds hardly film comes off. */
  @ParameterizedTest
  @CsvSource({"PTFE, hardly, 0.6", "ACRYLIC, a little, 0", "GLASS, sometimes, 0", "STEEL, hard, 0"})
  void plateHoldsAsItsMaterialDoes(PlateMaterial material, String manner, double slippery) {
    FaultContext scene = SeenFaults.on(Castings.USUAL.with(Castings.GLASS.of(material)));
    assertThat(AdviceFigure.GRIP.words(scene)).isEqualTo(manner);
    assertThat(AdviceFigure.SLIPPERY.of(scene)).isEqualTo(slippery);
  }
}
