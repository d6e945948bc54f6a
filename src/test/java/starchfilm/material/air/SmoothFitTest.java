package starchfilm.material.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** A fit of the fourth degree gives back what is of the fourth degree. */
class SmoothFitTest {
  @Test
  void isExactForAPolynomialOfItsOwnDegree() {
    DoubleUnaryOperator quartic =
        kelvin -> {
          double x = (kelvin - 300) / 50;
          return 3 + x * (-2 + x * (0.7 + x * (1.3 - 0.4 * x)));
        };
    SmoothFit fit = SmoothFit.of(quartic);
    for (double kelvin = 240; kelvin < 400; kelvin += 7) {
      assertThat(fit.at(SmoothFit.position(kelvin)))
          .isCloseTo(quartic.applyAsDouble(kelvin), within(1e-11));
    }
    assertThat(SmoothFit.position(SmoothFit.FROM_K)).isCloseTo(-1, within(1e-12));
    assertThat(SmoothFit.position(SmoothFit.TO_K)).isCloseTo(1, within(1e-12));
  }
}
