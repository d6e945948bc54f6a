package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.drying.DryingForecast.RoomVerdict;
import starchfilm.material.wetfilm.WaterDiffusivity;

/** How rooms are judged and what drying rests on. */
class DryingFactsTest {
  /** A film keeps at most its own weight, and at most half of what the paste had. */
  @ParameterizedTest
  @CsvSource({
    "0.3299, 10, DRIES",
    "0.3301, 10, NEVER_PEELABLE",
    "1, 10, NEVER_PEELABLE",
    "1.001, 10, TOO_DAMP",
    "0.2, 0.4, DRIES",
    "0.201, 0.4, TOO_DAMP"
  })
  void roomsAreJudged(double resting, double start, RoomVerdict verdict) {
    assertThat(RoomDamp.verdict(resting, start)).isEqualTo(verdict);
  }

  @Test
  void namesWhatDryingRestsOn() {
    assertThat(DryingSources.all()).containsAll(WaterDiffusivity.SOURCES).doesNotHaveDuplicates();
  }
}
