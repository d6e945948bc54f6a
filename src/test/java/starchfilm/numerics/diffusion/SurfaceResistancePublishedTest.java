package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A sheet with surface resistance, against Crank 1975, The Mathematics of Diffusion, 2nd ed.,
 * section 4.3.6, and Carslaw and Jaeger 1959, Conduction of Heat in Solids, 2nd ed., appendix IV.
 *
 * <p>The tables have four decimals. The solver's own distance from the exact series is below 1e-5,
 * which is asserted on its own.
 */
class SurfaceResistancePublishedTest {
  private static final double HALF_A_UNIT_OF_FOUR_DECIMALS = 5.0001e-5;
  private static final double SOLVER = 1e-5;
  private static final double[] FOURIER_NUMBERS = {0.05, 0.1, 0.2, 0.5, 1, 2, 5};
  private static final Grid GRID = Grid.fineAtUpperFace(201, 1);

  @ParameterizedTest
  @CsvFileSource(resources = "carslaw-jaeger-1959-roots.csv", useHeadersInDisplayName = true)
  void seriesStandsOnThePublishedRoots(ArgumentsAccessor row) {
    double[] roots = new Slab(row.getDouble(0)).roots(6);

    for (int i = 0; i < roots.length; i++) {
      assertThat(roots[i]).isCloseTo(row.getDouble(i + 1), within(HALF_A_UNIT_OF_FOUR_DECIMALS));
    }
    double b = roots[0];
    assertThat(4 * Math.sin(b) / (2 * b + Math.sin(2 * b)))
        .isCloseTo(row.getDouble(7), within(HALF_A_UNIT_OF_FOUR_DECIMALS));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "crank-1975-surface-resistance-loss.csv",
      useHeadersInDisplayName = true)
  void losesAsTheSeriesSays(ArgumentsAccessor row) {
    Slab slab = new Slab(row.getDouble(0));
    BorderedSystem system = slab.system(GRID);
    double[] state = slab.state(GRID, 0);
    double before = 0;
    for (int i = 0; i < FOURIER_NUMBERS.length; i++) {
      double timeS = Slab.timeS(FOURIER_NUMBERS[i]);

      IntegratorOrder.FOURTH.integrate(system, 1e-8, before, timeS, state);

      double loss = Slab.lossFraction(state[GRID.nodes() + 1]);
      assertThat(loss)
          .isCloseTo(row.getDouble(i + 1), within(HALF_A_UNIT_OF_FOUR_DECIMALS + SOLVER));
      assertThat(loss).isCloseTo(slab.lossFractionAt(timeS), within(SOLVER));
      before = timeS;
    }
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "crank-1975-surface-resistance-profiles.csv",
      useHeadersInDisplayName = true)
  void hasTheProfileOfTheSeries(
      double biotNumber, double fourierNumber, double sealed, double middle, double open) {
    Slab slab = new Slab(biotNumber);
    double timeS = Slab.timeS(fourierNumber);
    double[] state = slab.state(GRID, 0);

    IntegratorOrder.FOURTH.integrate(slab.system(GRID), 1e-8, 0, timeS, state);

    double allowed = HALF_A_UNIT_OF_FOUR_DECIMALS + SOLVER;
    assertThat(state[0]).isCloseTo(sealed, within(allowed));
    assertThat(state[100]).isCloseTo(middle, within(allowed));
    assertThat(state[200]).isCloseTo(open, within(allowed));
    assertThat(slab.largestError(GRID, timeS, state)).isLessThan(SOLVER);
  }

  /**
   * At small Bi the sheet stays even and loses exponentially with {@code Bi Fo / (1 + Bi/3)}: the
   * lumped limit with the inner resistance of a third (first root, expanded).
   */
  @ParameterizedTest
  @CsvSource({"0.001, 1e-6", "0.01, 1e-4"})
  void becomesTheLumpedLimitAtSmallBiotNumbers(double biotNumber, double allowed) {
    Slab slab = new Slab(biotNumber);
    double timeS = Slab.timeS(1 / biotNumber);
    double[] state = slab.state(GRID, 0);

    IntegratorOrder.FOURTH.integrate(slab.system(GRID), 1e-9, 0, timeS, state);

    assertThat(Slab.lossFraction(state[GRID.nodes() + 1]))
        .isCloseTo(1 - Math.exp(-1 / (1 + biotNumber / 3)), within(allowed));
  }
}
