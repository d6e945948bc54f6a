package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The flux is a difference of the transformed unknown, so the steady state is exact on any grid.
 */
class SteadyMembraneTest {
  @ParameterizedTest
  @ValueSource(doubles = {0.01, 1, 100, 1e4})
  void reachesTheExactProfileOnFiveNodes(double increase) {
    SteadyMembrane membrane = new SteadyMembrane(increase);
    Grid grid = Grid.fineAtUpperFace(5, 10);
    double[] state = new double[grid.nodes() + 2];
    Arrays.fill(state, 0, grid.nodes(), 1.0);

    IntegratorOrder.THIRD.integrate(membrane.system(grid), 1e-8, 0, 100, state);

    // 1e9 times the distance from the held value is the flux: 1e4 at the steepest.
    assertThat(membrane.largestError(grid, 100, state)).isLessThan(1e-8 * (1 + 1e4 * increase));
  }
}
