package starchfilm.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SmoothSurfaceTest {
  @Test
  void givesBackAPolynomialItWasFittedTo() {
    Random random = new Random(3);
    double[][] points = new double[60][3];
    double[] values = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      for (int k = 0; k < 3; k++) {
        points[i][k] = 2 * random.nextDouble() - 1;
      }
      values[i] = polynomial(points[i][0], points[i][1], points[i][2]);
    }

    SmoothSurface surface = SmoothSurface.fit(points, values);

    assertThat(surface.at(0.3, -0.7, 0.1)).isCloseTo(polynomial(0.3, -0.7, 0.1), within(1e-12));
    assertThat(surface.at(-1, 1, 0.9)).isCloseTo(polynomial(-1, 1, 0.9), within(1e-12));
  }

  private static double polynomial(double x, double y, double z) {
    return 1 - 2 * x + 0.5 * y * y - x * y * z + 3 * z * z * z - 0.25 * x * x * z + y;
  }
}
