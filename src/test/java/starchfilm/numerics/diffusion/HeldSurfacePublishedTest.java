package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A sheet whose open face is held, against Crank 1975, The Mathematics of Diffusion, 2nd ed.,
 * section 4.3.
 *
 * <p>The tables have five decimals. The solver's own distance from the exact series is below 2e-6
 * on this grid, which is asserted on its own.
 */
class HeldSurfacePublishedTest {
  private static final double HALF_A_UNIT_OF_FIVE_DECIMALS = 5e-6;
  private static final double SOLVER = 2e-6;
  private static final Slab SLAB = Slab.withHeldSurface();
  private static final Grid GRID = Grid.fineAtUpperFace(400, 10);

  @ParameterizedTest
  @CsvFileSource(resources = "crank-1975-held-surface-uptake.csv", useHeadersInDisplayName = true)
  void losesAsCranksSeriesSays(double fourierNumber, double uptakeFraction) {
    double timeS = Slab.timeS(fourierNumber);
    double[] state = SLAB.state(GRID, 0);

    IntegratorOrder.FOURTH.integrate(SLAB.system(GRID), 1e-8, 0, timeS, state);

    double loss = Slab.lossFraction(state[GRID.nodes() + 1]);
    assertThat(loss).isCloseTo(uptakeFraction, within(HALF_A_UNIT_OF_FIVE_DECIMALS + SOLVER));
    assertThat(loss).isCloseTo(SLAB.lossFractionAt(timeS), within(SOLVER));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "crank-1975-held-surface-times.csv", useHeadersInDisplayName = true)
  void losesAShareWhenCranksSeriesSays(double uptakePct, double fourierNumber) {
    double timeS = timeOfLoss(uptakePct / 100);

    // The curve is flat at 99 %, so the error of the share counts forty times in the time.
    assertThat(Slab.fourierNumber(timeS)).isCloseTo(fourierNumber, within(1.5e-5));
  }

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void followsTheExactProfileOnceItIsSmooth(IntegratorOrder order) {
    double timeS = Slab.timeS(0.2);
    double[] state = SLAB.state(GRID, 0);

    order.integrate(SLAB.system(GRID), 1e-8, 0, timeS, state);

    assertThat(SLAB.largestError(GRID, timeS, state)).isLessThan(SOLVER);
  }

  /** Watches the steps and finds the moment within the step, as a milestone is found. */
  private static double timeOfLoss(double share) {
    int tally = GRID.nodes() + 1;
    double[] found = {Double.NaN};
    StepListener watch =
        step -> {
          boolean reached = Slab.lossFraction(step.atEnd(tally)) >= share;
          if (reached) {
            found[0] =
                new BrentSolver(1e-6)
                    .solve(
                        100,
                        time -> Slab.lossFraction(step.at(tally, time)) - share,
                        step.start(),
                        step.end());
          }
          return !reached;
        };
    IntegratorOrder.FOURTH
        .integrator(SLAB.system(GRID), new Tolerance(1e-8, 1e-8, 1e-8))
        .integrate(0, Slab.timeS(5), 1e-6, Slab.timeS(5), SLAB.state(GRID, 0), watch);
    return found[0];
  }
}
