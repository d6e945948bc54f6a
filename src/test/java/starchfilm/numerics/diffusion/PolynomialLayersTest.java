package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The layers other tests stand on. */
class PolynomialLayersTest {
  @Test
  void reproducesAParabolaAndItsSlope() {
    PolynomialLayers layers = new PolynomialLayers(-0.5, 0.1, 0.9);
    double[] weights = new double[3];
    double[] slopes = new double[3];

    layers.weights(0.4, weights);
    layers.weightSlopes(0.4, slopes);

    double value = 0;
    double slope = 0;
    for (int i = 0; i < 3; i++) {
      double place = layers.places()[i];
      value += weights[i] * (1 + place + 3 * place * place);
      slope += slopes[i] * (1 + place + 3 * place * place);
    }
    assertThat(value).isCloseTo(1.88, within(1e-14));
    assertThat(slope).isCloseTo(3.4, within(1e-14));
  }
}
