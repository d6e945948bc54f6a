package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.advice.OutcomeDifference.Agreement;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.Setting;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.change.Change;
import starchfilm.drying.CurvePoint;
import starchfilm.drying.DryingForecast;
import starchfilm.drying.Milestone;
import starchfilm.forecast.SameForAll;
import starchfilm.numerics.figures.Figures;

/** What is told between two trials, and how long to wait. */
class ContrastTest {
  private static final Adviser ADVISER = new Adviser(SameForAll.TEXTBOOK);

  /** A pour a tenth thicker dries about an eighth later: that shows, and nothing else changed. */
  @Test
  void aChangeThatShowsIsTold() {
    Contrast contrast = contrast(Castings.USUAL, Castings.USUAL.pouredTo(3.3e-3));
    assertThat(contrast.differences())
        .singleElement()
        .satisfies(
            difference ->
                assertThat(difference.effects())
                    .extracting(ExpectedEffect::what)
                    .contains("dry through")
                    .doesNotContain("cracking", "feel", "stretch at break"));
  }

  private static Contrast contrast(Casting before, Casting after) {
    return contrast(SeenFaults.poured(before), SeenFaults.poured(after));
  }

  private static Contrast contrast(Trial before, Trial after) {
    return ADVISER.contrast(SeenFaults.forecast(before), SeenFaults.forecast(after));
  }

  /** Strips of one film differ by about a quarter, so that much is no news. */
  @ParameterizedTest
  @CsvSource({"1.2, AGREES", "1.4, DISAGREES", "0.85, AGREES", "0.7, DISAGREES"})
  void stripsOfTheSameFilmMayDifferByAQuarter(double ratio, Agreement agreement) {
    Contrast contrast = contrast(pulled(10), pulled(10 * ratio));
    assertThat(contrast.outcomes())
        .singleElement()
        .extracting(OutcomeDifference::agreement)
        .isEqualTo(agreement);
  }

  private static Trial pulled(double loadN) {
    return pulled(loadN, OptionalDouble.empty());
  }

  private static Trial pulled(double loadN, OptionalDouble stretch) {
    PullTest strip = new PullTest(loadN, 0.01, 1e-4, stretch);
    return SeenFaults.poured(
        Castings.USUAL,
        Castings.observed(List.of(), List.of(), List.of(strip), OptionalInt.empty()));
  }

  /** Nine in ten plates are dry where the middle one is after 0.68 of the time. */
  @Test
  void waitingIsAdvisedUntilNineInTenPlatesAreDry() {
    FaultContext scene = SeenFaults.on(Castings.USUAL, SeenFaults.fault(FaultKind.STILL_WET));
    double dry = scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
    assertThat(
            AdvisedStep.of(
                Change.WAIT_LONGER, scene.lookedAtS(dry / 2), RuleBook.packed(), List.of()))
        .singleElement()
        .satisfies(
            step ->
                assertThat(step.waitUntilS().orElseThrow() / dry)
                    .isCloseTo(1 / 0.68, within(1e-9)));
    assertThat(
            AdvisedStep.of(
                Change.WAIT_LONGER, scene.lookedAtS(2 * dry), RuleBook.packed(), List.of()))
        .isEmpty();
  }

  /**
   * Half of the water is gone between two weighings: at 10 h a quarter, at 20 h three quarters of
   * it, so at 15 h; and on the second plate at twice these times.
   */
  @Test
  void howFastHalfOfTheWaterWentIsHeldAgainstTheModel() {
    Contrast same = weighed(Castings.USUAL, 2);
    assertThat(same.outcomes())
        .singleElement()
        .isEqualTo(
            new OutcomeDifference(
                "Half of the water was gone after 15 hours → 30 hours.",
                Agreement.DISAGREES,
                "The model says otherwise: seen 2 ×, expected 1 ×."));

    Casting thin = Castings.USUAL.pouredTo(2e-3);
    double ratio = halfDryS(thin) / halfDryS(Castings.USUAL);
    assertThat(weighed(thin, 0.5).outcomes())
        .singleElement()
        .isEqualTo(
            new OutcomeDifference(
                "Half of the water was gone after 15 hours → 7.5 hours.",
                Agreement.AGREES,
                "The model says so too: seen 0.5 ×, expected " + Figures.brief(ratio) + " ×."));
    assertThat(weighed(Castings.USUAL, 1.1).outcomes())
        .extracting(OutcomeDifference::model)
        .containsExactly("About the same, as the model says: seen 1.1 ×, expected 1 ×.");
  }

  /** The usual plate, and another that was weighed at so many times its hours. */
  private static Contrast weighed(Casting after, double times) {
    return contrast(weighedAt(Castings.USUAL, 10, 20), weighedAt(after, 10 * times, 20 * times));
  }

  private static Trial weighedAt(Casting casting, double quarterGoneH, double threeQuartersGoneH) {
    double poured = casting.pouredKg();
    double water = poured * (1 - casting.composition().drySolids());
    return SeenFaults.poured(
        casting,
        Castings.observed(
            List.of(
                new Weighing(3600 * quarterGoneH, poured - 0.25 * water, 1e-4),
                new Weighing(3600 * threeQuartersGoneH, poured - 0.75 * water, 1e-4)),
            List.of(),
            List.of(),
            OptionalInt.empty()));
  }

  /**
   * Without the plate's tare the scale tells what left between two weighings, not since the pour.
   */
  @Test
  void aPlateOfUnknownTareTellsNothingOfHalfOfTheWater() {
    Trial known = weighedAt(Castings.USUAL, 10, 20);
    List<Weighing> bare =
        known.seen().weighings().stream()
            .map(w -> new Weighing(w.timeS(), w.filmMassKg(), w.massSdKg(), false, false))
            .toList();
    Trial unknown =
        SeenFaults.poured(
            Castings.USUAL, Castings.observed(bare, List.of(), List.of(), OptionalInt.empty()));
    assertThat(contrast(known, unknown).outcomes()).isEmpty();
  }

  /** 10 N on a strip 10 mm wide and 0.1 mm thick are 10 MPa; it stretched to half more. */
  @Test
  void stripsAreToldAsTheyBroke() {
    Contrast contrast =
        contrast(pulled(10, OptionalDouble.of(0.5)), pulled(20, OptionalDouble.of(0.25)));
    assertThat(contrast.outcomes())
        .extracting(OutcomeDifference::seen, OutcomeDifference::model)
        .containsExactly(
            tuple("Strips bore 10 → 20 MPa.", "The model says otherwise: seen 2 ×, expected 1 ×."),
            tuple(
                "Strips stretched by 50 % → 25 %.",
                "The model says otherwise: seen 0.5 ×, expected 1 ×."));
  }

  @Test
  void aFaultIsCalledInPlainWords() {
    Contrast contrast =
        contrast(
            SeenFaults.poured(Castings.USUAL, SeenFaults.fault(FaultKind.BROKE_APART)),
            SeenFaults.poured(Castings.USUAL));
    assertThat(contrast.outcomes().get(0).seen())
        .isEqualTo("“broke apart” was noted before and is not now.");
  }

  /** When the forecast's middle curve has come down to half of its start. */
  private static double halfDryS(Casting casting) {
    DryingForecast drying = SeenFaults.forecast(SeenFaults.poured(casting)).drying();
    List<CurvePoint> falling =
        drying.curve().stream().filter(each -> each.nominal().middle() > 0.5).toList();
    double[] times = falling.stream().mapToDouble(CurvePoint::timeS).toArray();
    double[] gone = falling.stream().mapToDouble(each -> -each.nominal().middle()).toArray();
    return new LinearInterpolator().interpolate(gone, times).value(-drying.startMoisture() / 2);
  }

  /** A fault that went is put down to what moved its trouble by 0.3 or more (judged). */
  @Test
  void whatTheModelSaysOfAFaultThatWentDependsOnHowFarItsTroubleMoved() {
    OutcomeDifference little = unstuck(0.9, 0.62, 0.5);
    assertThat(little.seen()).isEqualTo("“sticky” was noted before and is not now.");
    assertThat(little.agreement()).isEqualTo(Agreement.DISAGREES);
    assertThat(little.model()).startsWith("The model shows no reason: glycerol is at ");
    OutcomeDifference enough = unstuck(0.9, 0.58, 0.5);
    assertThat(enough.agreement()).isEqualTo(Agreement.AGREES);
    assertThat(enough.model())
        .startsWith("The model says so too: glycerol is at ")
        .endsWith(" alone does nearly all of it.");
  }

  /** In 75 % film turns tacky at 35 g already, in 50 % at 42.5 g (PlasticiserWindow). */
  @Test
  void theChangeThatDidMostOfItIsNamedWithItsShare() {
    double drier = Math.log(0.425 / 0.35) / Math.log(1 / 0.85);
    OutcomeDifference shared = unstuck(2 * drier + 0.1, 0.1 + drier / 2, 0.75);
    assertThat(shared.model()).contains("; used at ").endsWith(" alone does 67 % of it.");
    OutcomeDifference mostlyGlycerol = unstuck(1.5 * drier + 3 * drier, 1.5 * drier, 0.75);
    assertThat(mostlyGlycerol.model())
        .contains("; glycerol per 100 g dry starch ")
        .endsWith(" alone does 67 % of it.");
  }

  /**
   * From nine tenths on it is nearly all, below two fifths none of them is singled out (judged).
   */
  @Test
  void theShareOfTheChangeThatDidMostIsRounded() {
    double drier = Math.log(0.425 / 0.419) / Math.log(1 / 0.85);
    assertThat(unstuck((1 + 11) * drier + 0.1, 0.1, 0.52).model())
        .endsWith(" alone does nearly all of it.");
    assertThat(unstuck((1 + 7.5) * drier + 0.1, 0.1, 0.52).model())
        .endsWith(" alone does 88 % of it.");
    assertThat(dampRoomAndUse(0.35)).endsWith("; no single change does most of it.");
    assertThat(dampRoomAndUse(0.45)).endsWith(" alone does 45 % of it.");
  }

  /**
   * Room and use were both at 75 %, so that neither alone does anything, and less glycerol did a
   * share.
   */
  private static String dampRoomAndUse(double shareOfGlycerol) {
    double drier = Math.log(0.425 / 0.35) / Math.log(1 / 0.85);
    double glycerol = drier * shareOfGlycerol / (1 - shareOfGlycerol);
    Casting was =
        sticky(0.1 + drier + glycerol, 0.35)
            .with(Castings.use(0.75, 23, 7))
            .with(new DryingPlace(Castings.room(20, 75, 0.1), OptionalDouble.empty()));
    return unstuck(was, sticky(0.1, 0.425)).model();
  }

  /** Salt of 8 g per 100 g starch is clearly too much: the cause's own figure is told. */
  @Test
  void aCauseWithoutAModelIsToldByItsOwnFigure() {
    Casting salty = SeenFaults.usual(Setting.SALT, 0.08);
    OutcomeDifference gone = unstuck(salty, Castings.USUAL);
    assertThat(gone.agreement()).isEqualTo(Agreement.AGREES);
    assertThat(gone.model()).startsWith("The model says so too: before, ").contains("salt");
    OutcomeDifference come =
        contrast(
                SeenFaults.poured(Castings.USUAL),
                SeenFaults.poured(salty, SeenFaults.fault(FaultKind.STICKY)))
            .outcomes()
            .get(0);
    assertThat(come.seen()).isEqualTo("“sticky” is new.");
    assertThat(come.model()).startsWith("The model says so too: now ").contains("salt");
  }

  /** A sticky film of one trouble in air of use, and one of another in 50 % that is not sticky. */
  private static OutcomeDifference unstuck(
      double troubleWas, double troubleIs, double humidityWas) {
    Casting was =
        sticky(troubleWas, 0.425 - 0.3 * (humidityWas - 0.5))
            .with(Castings.use(humidityWas, 23, 7));
    return unstuck(was, sticky(troubleIs, 0.425));
  }

  /** As much glycerol as has a trouble where film is tacky above a level. */
  private static Casting sticky(double trouble, double tackyAbove) {
    return SeenFaults.usual(Setting.GLYCEROL, tackyAbove * Math.pow(0.85, 1 - trouble));
  }

  private static OutcomeDifference unstuck(Casting was, Casting is) {
    Contrast contrast =
        contrast(SeenFaults.poured(was, SeenFaults.fault(FaultKind.STICKY)), SeenFaults.poured(is));
    return contrast.outcomes().get(0);
  }

  @Test
  void trialsAreRankedByTheirRatings() {
    assertThat(verdict(3, 4)).isEqualTo("Better: rated 3 → 4 of 5.");
    assertThat(verdict(4, 3)).isEqualTo("Worse: rated 4 → 3 of 5.");
    assertThat(verdict(3, 3)).isEqualTo("Rated the same: 3 of 5.");
    Trial unrated = SeenFaults.rated(Castings.USUAL, OptionalInt.empty());
    assertThat(contrast(rated(3), unrated).verdict())
        .isEqualTo("At least one has no rating, so they can't be ranked.");
  }

  private static String verdict(int was, int is) {
    return contrast(rated(was), rated(is)).verdict();
  }

  private static Trial rated(int rating) {
    return SeenFaults.rated(Castings.USUAL, OptionalInt.of(rating));
  }

  /** All the salt came with the glycerol, and glycerol without a trace of it is no remedy. */
  @Test
  void cleanerGlycerolTakesTheSaltOfTheJarAway() {
    FaultContext scene =
        SeenFaults.on(SeenFaults.usual(Setting.SALT, 0.1), SeenFaults.fault(FaultKind.STICKY));
    assertThat(AdvisedStep.of(Change.CLEANER_GLYCEROL, scene, RuleBook.packed(), List.of()))
        .singleElement()
        .satisfies(
            step -> {
              assertThat(Setting.SALT.of(step.casting())).isZero();
              assertThat(Setting.GLYCEROL.of(step.casting()))
                  .isCloseTo(Setting.GLYCEROL.of(Castings.USUAL), within(1e-12));
            });
    assertThat(
            AdvisedStep.of(
                Change.CLEANER_GLYCEROL,
                SeenFaults.on(Castings.USUAL),
                RuleBook.packed(),
                List.of()))
        .isEmpty();
  }

  /** A plate is moved only to another room than the one it is in. */
  @Test
  void anotherRoomIsAnyOfTheOthers() {
    FaultContext scene = SeenFaults.on(Castings.USUAL);
    DryingPlace here = scene.setup().place();
    DryingPlace attic =
        new DryingPlace(
            "attic", Castings.room(25, 40, 0.1), RoomUncertainty.NONE, OptionalDouble.empty());
    assertThat(AdvisedStep.of(Change.ANOTHER_ROOM, scene, RuleBook.packed(), List.of(here, attic)))
        .extracting(step -> step.casting().place())
        .containsExactly(attic);
  }
}
