package starchfilm.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.advice.Outcome.Agreement;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Spot;
import starchfilm.casting.trial.Observations;
import starchfilm.casting.trial.ObservedFault.Kind;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.change.Change;
import starchfilm.drying.Milestone;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.TrialForecaster;
import starchfilm.forecast.TrialKnowledge;

/** What is told between two trials, and how long to wait. */
class ContrastTest {
  private static final Adviser ADVISER =
      new Adviser(RuleBook.packed(), TrialKnowledge.of(ParameterDistribution.textbook()), 20);

  /** A pour a tenth thicker dries about an eighth later: that shows, and nothing else changed. */
  @Test
  void aChangeThatShowsIsTold() {
    Contrast contrast = contrast(Castings.USUAL, Castings.USUAL.pouredTo(3.3e-3));
    assertThat(contrast.differences())
        .singleElement()
        .satisfies(
            difference ->
                assertThat(difference.effects())
                    .extracting(Effect::what)
                    .contains("dry through")
                    .doesNotContain("cracking", "feel", "stretch at break"));
  }

  private static Contrast contrast(Casting before, Casting after) {
    return ADVISER.contrast(forecast(Seen.poured(before)), forecast(Seen.poured(after)));
  }

  /** Strips of one film differ by about a quarter, so that much is no news. */
  @ParameterizedTest
  @CsvSource({"1.2, AGREES", "1.4, DISAGREES", "0.85, AGREES", "0.7, DISAGREES"})
  void stripsOfTheSameFilmMayDifferByAQuarter(double ratio, Agreement agreement) {
    Contrast contrast = ADVISER.contrast(forecast(pulled(10)), forecast(pulled(10 * ratio)));
    assertThat(contrast.outcomes())
        .singleElement()
        .extracting(Outcome::agreement)
        .isEqualTo(agreement);
  }

  private static Trial pulled(double loadN) {
    PullTest strip = new PullTest(loadN, 0.01, 1e-4, OptionalDouble.empty());
    return Seen.poured(
        Castings.USUAL,
        new Observations(
            List.of(),
            List.of(),
            List.of(strip),
            List.of(),
            OptionalInt.empty(),
            List.of(),
            List.of()));
  }

  private static TrialForecast forecast(Trial trial) {
    return new TrialForecaster(ParameterDistribution.textbook(), 20).forecast(trial);
  }

  /** Nine in ten plates are dry where the middle one is after 0.68 of the time. */
  @Test
  void waitingIsAdvisedUntilNineInTenPlatesAreDry() {
    FaultContext scene = Seen.on(Castings.USUAL, Seen.fault(Kind.STILL_WET));
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
}
