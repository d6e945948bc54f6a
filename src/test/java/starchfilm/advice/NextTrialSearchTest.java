package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Setting;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.drying.Milestone;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecast;

/** What a change costs beside the trouble it is made against. */
class NextTrialSearchTest {
  /** The weight of a wait, 0.2 a factor of e, is judged. */
  @Test
  void changeThatBringsNothingButAWaitCostsTheWait() {
    FaultContext thinByTheFan = context(Garden.trial(6));
    FaultContext thicker = poured(thinByTheFan, 1.4);

    double cost = 0.2 * Math.log(dryS(thicker) / dryS(thinByTheFan));
    assertThat(cost).isGreaterThan(0.03);
    assertThat(NextTrialSearch.newTrouble(RuleBook.packed(), thinByTheFan, thicker))
        .isCloseTo(cost, within(1e-9));
  }

  @Test
  void changeThatDriesSoonerIsNotPaidForIt() {
    FaultContext blend = context(Garden.trial(4));

    assertThat(NextTrialSearch.newTrouble(RuleBook.packed(), blend, poured(blend, 0.8))).isZero();
  }

  /**
   * Trouble that was not there before weighs twice, from 0.3 on (judged): more glycerol makes the
   * film tacky, trouble 0.6 where it is 0.85^0.4 of the tacky level of 42.5 g.
   */
  @Test
  void newTroubleWeighsTwiceAndALittleOfItNothing() {
    FaultContext plain = SeenFaults.on(Castings.USUAL);
    FaultContext tacky = withGlycerol(plain, 0.425 * Math.pow(0.85, 1 - 0.6));
    FaultContext nearlyTacky = withGlycerol(plain, 0.425 * Math.pow(0.85, 1 - 0.25));

    assertThat(NextTrialSearch.newTrouble(RuleBook.packed(), plain, tacky) - wait(plain, tacky))
        .isCloseTo(2 * (0.6 - 0.3), within(1e-9));
    assertThat(NextTrialSearch.newTrouble(RuleBook.packed(), plain, nearlyTacky))
        .isCloseTo(wait(plain, nearlyTacky), within(1e-9));
    assertThat(NextTrialSearch.newTrouble(RuleBook.packed(), tacky, tacky))
        .as("no new one")
        .isZero();
  }

  private static FaultContext withGlycerol(FaultContext before, double perStarch) {
    return before.with(before.outlook().of(Setting.GLYCEROL.set(before.setup(), perStarch)));
  }

  private static double wait(FaultContext before, FaultContext after) {
    return 0.2 * Math.max(0, Math.log(dryS(after) / dryS(before)));
  }

  private static FaultContext context(TrialForecast forecast) {
    return FaultContext.of(
        forecast.trial(),
        new ObservedFault(
            FaultKind.UNEVEN, FaultPlace.ALL, OptionalDouble.empty(), Optional.empty()),
        forecast.drying(),
        new ForecastCache(forecast.trial(), SameForAll.TEXTBOOK));
  }

  private static FaultContext poured(FaultContext before, double times) {
    Casting setup = before.setup();
    return before.with(before.outlook().of(setup.pouredTo(times * setup.wetThicknessM())));
  }

  private static double dryS(FaultContext plate) {
    return plate.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
  }
}
