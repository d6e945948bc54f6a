package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What the model may miss of a weighing, of 100 g poured of which 90 g dry away. */
class ModelMissTest {
  private static final ModelMiss LEVEL = new ModelMiss(0.1, 0.09, 0);
  private static final ModelMiss UNEVEN = new ModelMiss(0.1, 0.09, 0.2);

  /** 4 % of m (M - m)/M: at half the mass one part in a hundred of what was poured. */
  @Test
  void theMissUnderWayIsNothingAtThePourAndMostHalfWay() {
    assertThat(LEVEL.sdKg(0.1)).isZero();
    assertThat(LEVEL.sdKg(0.05)).isCloseTo(0.001, within(1e-12));
    assertThat(LEVEL.sdKg(0.08)).isLessThan(0.001);
    assertThat(LEVEL.sdKg(0.02)).isLessThan(0.001);
  }

  /**
   * Parts of 0.8 to 1.2 of the mean thickness: none is dry before 0.8 of the time, and when the
   * mean would be dry, 0.05 of the water is left in the thick half; half of that is the doubt.
   */
  @Test
  void thickPartsHoldBackWaterAtTheEnd() {
    double share = 0.05;
    double gone = 0.09 * (1 - share);
    double underWay = LEVEL.sdKg(0.1 - gone);
    assertThat(UNEVEN.sdKg(0.1 - gone))
        .isCloseTo(Math.hypot(underWay, 0.5 * share * 0.09), within(1e-12));
    assertThat(UNEVEN.sdKg(0.05)).isEqualTo(LEVEL.sdKg(0.05));
    assertThat(UNEVEN.sdKg(0.01)).isCloseTo(LEVEL.sdKg(0.01), within(1e-9));
  }
}
