package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Diffusion whose coefficient vanishes at an edge, against its exact similarity solution. */
class BarenblattPattleTest {
  private static final Grid COARSE = Grid.fineAtUpperFace(201, 1);
  private static final Grid FINE = Grid.fineAtUpperFace(401, 1);

  @ParameterizedTest
  @CsvSource({"1, 3e-5", "2, 4e-4", "3, 9e-4"})
  void spreadsAsTheExactSolution(int exponent, double allowed) {
    BarenblattPattle problem = new BarenblattPattle(exponent);

    double coarse = meanError(problem, COARSE, spread(problem, COARSE));
    double fine = meanError(problem, FINE, spread(problem, FINE));

    assertThat(fine).isLessThan(allowed);
    assertThat(fine).isLessThan(0.45 * coarse);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void movesItsEdgeAtTheExactSpeed(int exponent) {
    BarenblattPattle problem = new BarenblattPattle(exponent);
    double[] state = spread(problem, FINE);
    int last = FINE.nodes() - 1;
    while (state[last] < 1e-3 * state[0]) {
      last--;
    }

    double spacing = 1.0 / (FINE.nodes() - 1);
    assertThat(last * spacing).isCloseTo(problem.edge(problem.end()), within(1.01 * spacing));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void losesNothingAndFallsNowhereBelowZero(int exponent) {
    BarenblattPattle problem = new BarenblattPattle(exponent);
    double start = sum(FINE, problem.state(FINE, BarenblattPattle.START));

    double[] state = spread(problem, FINE);

    assertThat(sum(FINE, state)).isCloseTo(start, within(1e-12 * start));
    for (int i = 0; i < FINE.nodes(); i++) {
      assertThat(state[i]).isGreaterThan(-1e-12);
    }
  }

  private static double[] spread(BarenblattPattle problem, Grid grid) {
    double[] state = problem.state(grid, BarenblattPattle.START);
    IntegratorOrder.THIRD.integrate(
        problem.system(grid), 1e-5, BarenblattPattle.START, problem.end(), state);
    return state;
  }

  /** Averaged over the interval and taken relative to the average of the solution. */
  private static double meanError(BarenblattPattle problem, Grid grid, double[] state) {
    double[] exact = problem.state(grid, problem.end());
    double error = 0;
    for (int i = 0; i < grid.nodes(); i++) {
      error += grid.shares()[i] * Math.abs(state[i] - exact[i]);
    }
    return error / sum(grid, exact);
  }

  private static double sum(Grid grid, double[] state) {
    double sum = 0;
    for (int i = 0; i < grid.nodes(); i++) {
      sum += grid.shares()[i] * state[i];
    }
    return sum;
  }
}
