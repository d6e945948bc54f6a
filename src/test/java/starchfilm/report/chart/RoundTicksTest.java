package starchfilm.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import starchfilm.report.chart.RoundTicks.RoundTick;

class RoundTicksTest {
  @Test
  void takesTheFinestRoundStepThereIsRoomFor() {
    assertThat(labels(RoundTicks.linear(0, 100, 6)))
        .containsExactly("0", "20", "40", "60", "80", "100");
    assertThat(labels(RoundTicks.linear(0, 9.3, 10)))
        .containsExactly("0", "1", "2", "3", "4", "5", "6", "7", "8", "9");
    assertThat(labels(RoundTicks.linear(-54, 77, 4))).containsExactly("−50", "0", "50");
    assertThat(labels(RoundTicks.linear(0.11, 0.19, 5)))
        .containsExactly("0.12", "0.14", "0.16", "0.18");
  }

  @Test
  void countsPowersOfTenOnALogarithmicAxis() {
    assertThat(labels(RoundTicks.logarithmic(0.3, 30, 9)))
        .containsExactly("0.5", "1", "2", "5", "10", "20");
    assertThat(labels(RoundTicks.logarithmic(3, 5000, 4))).containsExactly("10", "100", "1000");
  }

  @Test
  void staysInsideTheAxisAndTheRoomWhateverTheEnds() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 2_000; i++) {
      double from = Math.scalb(random.nextDouble(-1, 1), random.nextInt(-20, 20));
      double to = from + Math.scalb(random.nextDouble(0.5, 1), random.nextInt(-20, 20));
      int room = random.nextInt(2, 15);
      List<RoundTick> ticks = RoundTicks.linear(from, to, room);
      double slack = 1e-6 * (to - from);
      assertThat(ticks).hasSizeLessThanOrEqualTo(room);
      assertThat(ticks).allMatch(t -> t.value() >= from - slack && t.value() <= to + slack);
    }
  }

  @Test
  void refusesAnAxisWithoutLength() {
    assertThatThrownBy(() -> RoundTicks.linear(3, 3, 5))
        .hasMessage("an axis needs a length and room for two ticks, not 3.0 to 3.0");
  }

  private static List<String> labels(List<RoundTick> ticks) {
    return ticks.stream().map(RoundTick::label).toList();
  }
}
