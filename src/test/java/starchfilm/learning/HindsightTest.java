package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;

/** Looking back: how near each plate could have been forecast on the day of its pour. */
class HindsightTest {
  private static final ParameterSample SLOW_AIR =
      ParameterSample.NONE.with(UncertainParameter.AIR_SIDE, Math.log(0.6));
  private static final LocalDateTime MORNING = LocalDateTime.of(2026, 4, 19, 10, 0);

  private final SyntheticPlates plates = new SyntheticPlates(6);
  private final Trial first = slow(0);
  private final Trial second = slow(1);
  private final Trial third = slow(2);
  private final Trial undated =
      SyntheticPlates.dried(plates.any("shed"), SLOW_AIR, 0.2, 0.4, 0.6, 0.8);
  private final Trial unweighed = SyntheticPlates.poured(plates.any("shed"), MORNING.plusDays(3));
  private final List<Trial> all = List.of(third, unweighed, first, undated, second);
  private final Workshop workshop = Workshop.taughtBy(Path.of(""), all);

  private Trial slow(int day) {
    return SyntheticPlates.poured(
        SyntheticPlates.dried(plates.any("shed"), SLOW_AIR, 0.2, 0.4, 0.6, 0.8),
        MORNING.plusDays(day));
  }

  @Test
  void goesByThePourAndLeavesOutWhatHasNoDayOrNoWeighing() {
    List<Hindsight> looks = workshop.hindsight(all, all);
    assertThat(looks).extracting(Hindsight::trial).containsExactly(first, second, third);
    assertThat(looks).extracting(Hindsight::platesBefore).containsExactly(0, 1, 2);
  }

  @Test
  void platesThatAreNotShownTeachAllTheSame() {
    List<Hindsight> shown = workshop.hindsight(all, List.of(third));
    assertThat(shown).extracting(Hindsight::platesBefore).containsExactly(2);
    Hindsight among = workshop.hindsight(all, all).get(2);
    assertThat(shown.get(0).learnt().missKg()).isEqualTo(among.learnt().missKg());
  }

  /** The first knows the textbook alone; the shed's slow air is known for those after it. */
  @Test
  void whatWasTaughtBeforeBringsAForecastNearer() {
    List<Hindsight> looks = workshop.hindsight(all, all);
    assertThat(looks.get(0).learnt().missKg())
        .isCloseTo(looks.get(0).textbook().missKg(), within(1e-9));
    Hindsight last = looks.get(2);
    double truthS = SyntheticPlates.dryThroughS(third, SLOW_AIR);
    double textbookS = SyntheticPlates.dryThroughS(third, ParameterSample.NONE);
    assertThat(last.textbook().dryThroughS()).isCloseTo(textbookS, within(1e-6 * textbookS));
    assertThat(Math.abs(last.learnt().dryThroughS() - truthS))
        .isLessThan(0.3 * Math.abs(textbookS - truthS));
    assertThat(last.learnt().missKg()).isPositive().isLessThan(0.3 * last.textbook().missKg());
  }

  /** A plate that nothing was learnt from is passed over, and counts for none before. */
  @Test
  void whatWasNotLearntFromIsPassedOver() {
    Workshop ofTwo = Workshop.taughtBy(Path.of(""), List.of(first, third));
    List<Hindsight> looks = ofTwo.hindsight(all, all);
    assertThat(looks).extracting(Hindsight::trial).containsExactly(first, third);
    assertThat(looks).extracting(Hindsight::platesBefore).containsExactly(0, 1);
  }
}
