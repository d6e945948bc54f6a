package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.change.Change;
import starchfilm.drying.Milestone;

/**
 * Which changes the search takes for a plate that is still wet. The troubles and thicknesses at
 * which the answer turns were found by running the program: a check against ourselves.
 */
class NextTrialSearchRegressionTest {
  @Test
  void nothingIsChangedForTroubleThatIsTolerable() {
    assertThat(against(3, 0.14)).isEmpty();
  }

  @Test
  void theMildestStepThatDoesItIsTaken() {
    assertThat(against(3, 0.2))
        .hasValueSatisfying(
            found -> assertThat(found.steps()).extracting(this::wetMm).containsExactly(2.6));
    assertThat(against(3, 2.0, Cause.POURED_TOO_THICK))
        .hasValueSatisfying(
            found -> assertThat(found.steps()).extracting(this::wetMm).containsExactly(1.2));
  }

  private double wetMm(AdvisedStep step) {
    return Math.round(1e4 * step.casting().wetThicknessM()) / 10.0;
  }

  /** What a change leaves is worth a second one from 0.4 on (judged). */
  @Test
  void aSecondThingIsChangedOnlyWhereTheFirstLeavesMuch() {
    assertThat(against(4.4, 2.7))
        .hasValueSatisfying(
            found -> {
              assertThat(found.steps()).hasSize(1);
              assertThat(MeasureTest.measure("not dry").trouble(found.scenes().get(0)))
                  .isBetween(0.2, 0.4);
            });
    assertThat(against(3, 4))
        .hasValueSatisfying(
            found -> {
              assertThat(found.steps())
                  .extracting(AdvisedStep::change)
                  .containsExactly(Change.POUR_THINNER, Change.FAN);
              assertThat(MeasureTest.measure("not dry").trouble(found.scenes().get(0))).isZero();
            });
  }

  /** A fan takes 0.41 away, less 0.03 for one change more: worth it from 0.3 on (judged). */
  @Test
  void aSecondThingIsChangedWhereItTakesMuchAway() {
    assertThat(against(4.4, 2.8))
        .hasValueSatisfying(
            found ->
                assertThat(found.steps())
                    .extracting(AdvisedStep::change)
                    .containsExactly(Change.POUR_THINNER, Change.FAN));
  }

  /** Trouble beyond 3 counts as 3 (judged): what leaves nearly that much is no help. */
  @Test
  void nothingIsAdvisedThatLeavesThePlateFarTooWet() {
    assertThat(against(3, 5.0)).isPresent();
    assertThat(against(3, 5.2)).isEmpty();
  }

  @Test
  void noThingIsChangedTwice() {
    assertThat(against(3, 4, Cause.POURED_TOO_THICK))
        .hasValueSatisfying(
            found ->
                assertThat(found.steps())
                    .extracting(step -> step.change().thing())
                    .doesNotHaveDuplicates());
  }

  /**
   * A plate that was still wet so early that its trouble is as given; it is thick, the room slow.
   */
  private static Optional<NextTrialSearch.State> against(double wetMm, double trouble) {
    return against(wetMm, trouble, Cause.values());
  }

  private static Optional<NextTrialSearch.State> against(
      double wetMm, double trouble, Cause... causes) {
    Casting casting =
        Castings.plate(wetMm, Castings.paste(0.08, 0.3), Castings.room(15, 60, 0.1), 60);
    FaultContext scene = SeenFaults.on(casting, SeenFaults.fault(FaultKind.STILL_WET));
    FaultContext early = scene.lookedAtS(dryS(scene) / Math.pow(0.68, 1 - trouble));
    assertThat(MeasureTest.measure("not dry").trouble(early)).isCloseTo(trouble, within(1e-9));
    RuleBook book = RuleBook.packed();
    List<Suspicion> suspicions =
        book.rulesFor(early.fault().kind(), early.fault().where()).stream()
            .filter(rule -> rule.heldAgainst().name().equals("not dry"))
            .filter(rule -> rule.cause() != Cause.POURED_UNEVENLY)
            .filter(rule -> List.of(causes).contains(rule.cause()))
            .map(rule -> new Suspicion(rule, 0.5, ""))
            .toList();
    return new NextTrialSearch(
            book, List.of(), List.of(new NextTrialSearch.Suspected(early, suspicions)))
        .find();
  }

  private static double dryS(FaultContext plate) {
    return plate.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
  }
}
