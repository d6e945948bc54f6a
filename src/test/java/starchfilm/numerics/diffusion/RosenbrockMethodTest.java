package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The coefficients against the conditions of order 1 to 3 for Rosenbrock methods, and against one
 * another: Hairer and Wanner 1996, Solving Ordinary Differential Equations II, section IV.7,
 * equations 7.11, 7.15 and 7.25 (recalled).
 */
class RosenbrockMethodTest {
  static Stream<RosenbrockMethod> methods() {
    return Stream.of(RosenbrockMethod.rodas3(), ReferenceIntegrator.rodasp());
  }

  @ParameterizedTest
  @MethodSource("methods")
  void meetsTheConditionsOfItsOrder(RosenbrockMethod method) {
    int stages = method.stages();
    RealMatrix inverse = square(method.c()).scalarMultiply(-1);
    for (int i = 0; i < stages; i++) {
      inverse.addToEntry(i, i, 1 / method.gamma());
    }
    RealMatrix gammas = MatrixUtils.inverse(inverse);
    RealMatrix alphas = square(method.a()).multiply(gammas);
    RealVector ones = new ArrayRealVector(stages, 1);
    RealVector alpha = alphas.operate(ones);
    RealVector weights = gammas.preMultiply(new ArrayRealVector(method.m()));
    RealMatrix betas = alphas.add(gammas);
    RealVector beta = betas.operate(ones);

    assertThat(alpha.subtract(new ArrayRealVector(method.alpha())).getLInfNorm()).isLessThan(1e-12);
    assertThat(
            gammas.operate(ones).subtract(new ArrayRealVector(method.gammaOfStage())).getLInfNorm())
        .isLessThan(1e-12);
    assertThat(weights.dotProduct(ones)).isCloseTo(1, within(1e-12));
    assertThat(weights.dotProduct(beta)).isCloseTo(1.0 / 2, within(1e-12));
    assertThat(weights.dotProduct(alpha.ebeMultiply(alpha))).isCloseTo(1.0 / 3, within(1e-12));
    assertThat(weights.dotProduct(betas.operate(beta))).isCloseTo(1.0 / 6, within(1e-12));
  }

  private static RealMatrix square(double[][] belowTheDiagonal) {
    RealMatrix matrix = new Array2DRowRealMatrix(belowTheDiagonal.length, belowTheDiagonal.length);
    for (int i = 0; i < belowTheDiagonal.length; i++) {
      for (int j = 0; j < belowTheDiagonal[i].length; j++) {
        matrix.setEntry(i, j, belowTheDiagonal[i][j]);
      }
    }
    return matrix;
  }
}
