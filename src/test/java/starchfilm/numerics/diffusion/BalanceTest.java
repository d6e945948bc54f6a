package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What is inside and what has left add up to the start, however coarse the steps. Asked for is 1e-9
 * of the start; rounding alone is left, up to 1e-14 of it.
 */
class BalanceTest {
  private static final Grid GRID = Grid.fineAtBothFaces(41, 10);
  private static final DryingLikeFilm FILM = DryingLikeFilm.inASwingingRoom();
  private static final double ROUNDING = 1e-12;

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void closesAtAnyTolerance(IntegratorOrder order) {
    for (double tolerance : new double[] {3e-1, 1e-1, 1e-2, 1e-4, 1e-6, 1e-8}) {
      double[] state = FILM.start(GRID);
      double start = DryingLikeFilm.total(GRID, state);

      order.integrate(FILM.system(GRID), tolerance, 0, 40, state);

      assertThat(state[GRID.nodes() + 1]).isGreaterThan(0.5 * start);
      assertThat(DryingLikeFilm.total(GRID, state)).isCloseTo(start, within(ROUNDING * start));
    }
  }

  /** Even where a step is as long as the whole drying, which no error control would accept. */
  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void closesAtAnyStep(IntegratorOrder order) {
    Slab slab = new Slab(5);
    for (int steps : new int[] {1, 3, 10, 100, 1000}) {
      double[] state = slab.state(GRID, 0);

      order.integrateInSteps(slab.system(GRID), steps, 0, Slab.timeS(1), state);

      double left = 0;
      for (int i = 0; i < GRID.nodes(); i++) {
        left += GRID.shares()[i] * state[i];
      }
      double lost = Slab.lossFraction(state[GRID.nodes() + 1]);
      assertThat(lost).isGreaterThan(0.5);
      assertThat(left + lost).isCloseTo(1, within(ROUNDING));
    }
  }
}
