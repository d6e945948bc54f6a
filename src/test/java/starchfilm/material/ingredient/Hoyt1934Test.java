package starchfilm.material.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** How sure the table is of its index (judged), and what it refuses. */
class Hoyt1934Test {
  private final Hoyt1934 index = new Hoyt1934();

  /** A reading is good to 1e-4, near pure glycerol to 6e-4, and to 0.5e-4 per kelvin besides. */
  @Test
  void isLessSureNearPureGlycerolAndAwayFrom20C() {
    assertThat(index.indexSd(0.5, 293.15)).isCloseTo(1e-4, within(1e-12));
    assertThat(index.indexSd(0.9, 293.15)).isCloseTo(3.5e-4, within(1e-12));
    assertThat(index.indexSd(1, 293.15)).isCloseTo(6e-4, within(1e-12));
    assertThat(index.indexSd(0.5, 303.15)).isCloseTo(Math.hypot(1e-4, 5e-4), within(1e-12));
  }

  @Test
  void refusesMoreGlycerolThanAllOfIt() {
    for (double share : new double[] {-0.01, 1.01, 1.5, Double.NaN}) {
      assertThatThrownBy(() -> index.index(share, 293.15))
          .hasMessageContaining("allowed 0 to 1 (85 % is 0.85)");
    }
  }
}
