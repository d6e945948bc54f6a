package starchfilm.numerics.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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

  /** The same quotient by differences instead of the written-out slopes. */
  @Test
  void propagationByDifferencesAgreesWithTheQuotient() {
    Estimate quotient = Propagation.firstOrder(x -> x[0] / x[1], ten, four);

    assertThat(quotient.value()).isEqualTo(2.5);
    assertThat(quotient.sd()).isCloseTo(ten.over(four).sd(), within(1e-4));
    assertThat(Propagation.firstOrder(x -> x[0], Estimate.exact(3))).isEqualTo(Estimate.exact(3));
  }
}
