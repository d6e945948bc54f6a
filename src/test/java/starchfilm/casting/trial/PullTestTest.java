package starchfilm.casting.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class PullTestTest {
  /** 6.0 N on 15 mm by 0.1 mm is 4.0 N/mm2. By hand. */
  @Test
  void stressIsLoadOverTheSectionBeforeThePull() {
    PullTest strip = new PullTest(6.0, 15e-3, 0.1e-3, OptionalDouble.of(0.5));
    assertThat(strip.strengthPa()).isCloseTo(4.0e6, within(1e-6));
    assertThat(new PullTest(0, 15e-3, 0.1e-3, OptionalDouble.empty()).strengthPa()).isZero();
  }
}
