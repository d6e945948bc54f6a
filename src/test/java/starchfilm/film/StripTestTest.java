package starchfilm.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StripTestTest {
  /** 6.0 N on 15 mm by 0.1 mm is 4.0 N/mm2; 50 to 75 mm is a stretch of one half. By hand. */
  @Test
  void stressIsLoadOverTheSectionBeforeThePull() {
    StripTest strip = new StripTest(6.0, 15e-3, 0.1e-3, 50e-3, 25e-3);

    assertThat(strip.strengthPa()).isCloseTo(4.0e6, within(1e-6));
    assertThat(strip.elongation()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void refusesAStripWithoutWidth() {
    assertThatThrownBy(() -> new StripTest(6.0, 0, 0.1e-3, 50e-3, 25e-3))
        .hasMessage("strip test, strip width: 0.0 given, allowed above 0 m");
  }
}
