package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.learning.summary.Learnt;
import starchfilm.learning.summary.ParameterLearnt;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.report.learnt.LearntSheet;

/** A factor far outside what was believed is told as a sign that something was noted wrongly. */
class HardlyBelievedTest {
  private static String told(double times) {
    ParameterLearnt bench =
        new ParameterLearnt(UncertainParameter.BENCH, Math.log(times), 0.3, 0.43);
    RoomLearnt room = new RoomLearnt("shed", 1, 3, Optional.empty(), List.of(bench));
    return String.join(
        " ",
        new LearntSheet(
                new Learnt(List.of(room), List.of(), List.of(), List.of(), List.of(), List.of()))
            .lines());
  }

  @Test
  void elevenTimesTheHeatFromTheBenchIsQuestioned() {
    assertThat(told(11.3))
        .contains("11.30 × textbook")
        .contains("check times, tares and poured masses");
  }

  @Test
  void halfAsMuchAgainIsNot() {
    assertThat(told(1.5)).contains("1.50 × textbook").doesNotContain("check");
  }
}
