package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import starchfilm.material.wetfilm.WaterDiffusivity;

/** What drying rests on. */
class DryingFactsTest {
  @Test
  void namesWhatDryingRestsOn() {
    assertThat(DryingSources.all()).containsAll(WaterDiffusivity.SOURCES).doesNotHaveDuplicates();
  }
}
