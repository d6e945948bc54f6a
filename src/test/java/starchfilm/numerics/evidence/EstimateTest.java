package starchfilm.numerics.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** How uncertainties add up, by hand. */
class EstimateTest {
  private final Estimate ten = new Estimate(10, 0.3);
  private final Estimate four = new Estimate(4, 0.4);

  @Test
  void sumsAndDifferencesAddInSquares() {
    assertThat(ten.plus(four)).isEqualTo(new Estimate(14, 0.5));
    assertThat(ten.minus(four)).isEqualTo(new Estimate(6, 0.5));
  }

  /** 3 % and 10 % make 10.44 %. */
  @Test
  void productsAndQuotientsAddRelativeSquares() {
    assertThat(ten.times(four).value()).isEqualTo(40);
    assertThat(ten.times(four).sd()).isCloseTo(40 * Math.hypot(0.03, 0.1), within(1e-12));
    assertThat(ten.over(four).value()).isEqualTo(2.5);
    assertThat(ten.over(four).sd()).isCloseTo(2.5 * Math.hypot(0.03, 0.1), within(1e-12));
  }

  @Test
  void productWithNoneKeepsItsUncertainty() {
    assertThat(new Estimate(0, 0.1).times(four).sd()).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void anotherUnitScalesBothPartsAndTurnsNoUncertaintyRound() {
    assertThat(ten.times(-2)).isEqualTo(new Estimate(-20, 0.6));
  }

  /** JCGM 100:2008 (GUM), 4.3.7: half the width over the root of three. */
  @Test
  void whatLiesAnywhereBetweenTwoEndsHasTheUncertaintyOfARectangle() {
    assertThat(Estimate.between(110, 90).value()).isEqualTo(100);
    assertThat(Estimate.between(110, 90).sd()).isCloseTo(10 / Math.sqrt(3), within(1e-12));
  }

  @Test
  void neitherEndlessNorNegativeUncertaintyIsTaken() {
    for (double[] odd :
        new double[][] {
          {Double.NaN, 1}, {Double.POSITIVE_INFINITY, 1}, {1, -1}, {1, Double.POSITIVE_INFINITY}
        }) {
      assertThatThrownBy(() -> new Estimate(odd[0], odd[1]))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  /** The 90 % point of the standard normal, from the library's distribution. */
  @Test
  void aBandHasTheTenFiftyAndNinetyPerCentPoints() {
    double z = new NormalDistribution().inverseCumulativeProbability(0.9);
    Band normal = Band.normal(10, 2);
    assertThat(normal.low()).isCloseTo(10 - 2 * z, within(1e-9));
    assertThat(normal.middle()).isEqualTo(10);
    assertThat(normal.high()).isCloseTo(10 + 2 * z, within(1e-9));
    Band log = Band.logNormal(10, 1.5);
    assertThat(log.low()).isCloseTo(10 * Math.exp(-z * Math.log(1.5)), within(1e-9));
    assertThat(log.high()).isCloseTo(10 * Math.exp(z * Math.log(1.5)), within(1e-9));
    assertThat(new Band(1, 2, 4).times(3)).isEqualTo(new Band(3, 6, 12));
  }

  @Test
  void aBandIsInOrder() {
    assertThat(Band.exact(3)).isEqualTo(new Band(3, 3, 3));
    assertThatThrownBy(() -> new Band(2, 1, 3)).hasMessageContaining("must be in order");
    assertThatThrownBy(() -> new Band(1, 3, 2)).hasMessageContaining("must be in order");
  }

  @Test
  void aRangeHoldsItsEndsAndIsNotEmpty() {
    ValidRange range = new ValidRange("temperature", 5, 60, "°C");
    assertThat(range.contains(5)).isTrue();
    assertThat(range.contains(60)).isTrue();
    assertThat(range.contains(4.9)).isFalse();
    assertThat(range.contains(60.1)).isFalse();
    assertThat(new ValidRange("one", 1, 1, "").contains(1)).isTrue();
    assertThatThrownBy(() -> new ValidRange("temperature", 60, 5, "°C"))
        .hasMessage("temperature: the range 60.0 to 5.0 is empty");
  }
}
