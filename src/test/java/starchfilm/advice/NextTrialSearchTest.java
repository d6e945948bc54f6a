package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.drying.Milestone;
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
    assertThat(NextTrialSearch.newTrouble(thinByTheFan, thicker)).isCloseTo(cost, within(1e-9));
  }

  @Test
  void changeThatDriesSoonerIsNotPaidForIt() {
    FaultContext blend = context(Garden.trial(4));

    assertThat(NextTrialSearch.newTrouble(blend, poured(blend, 0.8))).isZero();
  }

  private static FaultContext context(TrialForecast forecast) {
    return FaultContext.of(
        forecast.trial(),
        new ObservedFault(
            ObservedFault.Kind.UNEVEN,
            ObservedFault.Place.ALL,
            OptionalDouble.empty(),
            Optional.empty()),
        forecast.drying(),
        new ForecastCache(forecast.trial().casting(), Knowledge.textbook()));
  }

  private static FaultContext poured(FaultContext before, double times) {
    Casting setup = before.setup();
    return before.with(before.outlook().of(setup.pouredTo(times * setup.wetThicknessM())));
  }

  private static double dryS(FaultContext plate) {
    return plate.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH);
  }
}
