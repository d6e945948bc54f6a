package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What a drying film may not do: fall below rest, be wetter outside than inside, or lose symmetry.
 */
class DryingProfileTest {
  private static final double TOLERANCE = 1e-4;
  private static final Grid GRID = Grid.fineAtUpperFace(40, 10);

  /** Not by the tolerance, nor at all: the value at rest is approached from above. */
  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void neverFallsBelowTheEquilibriumOfTheRoom(IntegratorOrder order) {
    DryingLikeFilm film = DryingLikeFilm.inASteadyRoom();
    double[] lowest = {Double.POSITIVE_INFINITY};

    dry(order, film, GRID, (step, node) -> lowest[0] = Math.min(lowest[0], step.atEnd(node)));

    assertThat(lowest[0]).isBetween(film.equilibrium() - 1e-9, film.equilibrium() + 0.05);
  }

  /** Up to a hundredth of the tolerance, where the profile is flat. */
  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void isNeverWetterNearerToTheOpenFace(IntegratorOrder order) {
    double[] largestRise = {0};

    dry(
        order,
        DryingLikeFilm.inASteadyRoom(),
        GRID,
        (step, node) -> {
          double rise = node == 0 ? 0 : step.atEnd(node) - step.atEnd(node - 1);
          largestRise[0] = Math.max(largestRise[0], rise);
        });

    assertThat(largestRise[0]).isLessThan(TOLERANCE / 100);
  }

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void comesToRestAtTheEquilibriumOfTheRoom(IntegratorOrder order) {
    DryingLikeFilm film = DryingLikeFilm.inASteadyRoom();
    double[] state = film.start(GRID);

    order.integrate(film.system(GRID), 1e-6, 0, 1e5, state);

    for (int i = 0; i < GRID.nodes(); i++) {
      assertThat(state[i]).isCloseTo(film.equilibrium(), within(1e-5));
    }
  }

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void staysSymmetricBetweenTwoOpenFaces(IntegratorOrder order) {
    Grid grid = Grid.fineAtBothFaces(41, 10);

    double[] state = dry(order, new DryingLikeFilm(0.4, 0.1, true), grid, (step, node) -> {});

    for (int i = 0; i < grid.nodes() / 2; i++) {
      assertThat(state[i]).isCloseTo(state[40 - i], within(1e-10));
    }
  }

  /** The middle of a sheet open on both sides is as good as a sealed face at half the size. */
  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void halfOfASheetBetweenTwoOpenFacesIsASheetWithOne(IntegratorOrder order) {
    Slab slab = new Slab(2);
    double[] half = slab.state(Grid.fineAtUpperFace(21, 1), 0);
    double[] whole = slab.state(Grid.fineAtUpperFace(41, 1), 0);

    order.integrate(slab.system(Grid.fineAtUpperFace(21, 1)), 1e-8, 0, Slab.timeS(0.3), half);
    order.integrate(slab.mirrored(Grid.fineAtUpperFace(41, 1)), 1e-8, 0, Slab.timeS(0.3), whole);

    for (int i = 0; i <= 20; i++) {
      assertThat(whole[20 + i]).isCloseTo(half[i], within(1e-7));
    }
    assertThat(whole[42]).isCloseTo(2 * half[22], within(1e-10));
  }

  private interface NodeWatch {
    void see(Step step, int node);
  }

  private static double[] dry(
      IntegratorOrder order, DryingLikeFilm film, Grid grid, NodeWatch watch) {
    double[] state = film.start(grid);
    order
        .integrator(film.system(grid), new Tolerance(TOLERANCE, TOLERANCE, TOLERANCE))
        .integrate(
            0,
            100,
            1e-4,
            20,
            state,
            step -> {
              for (int node = 0; node < grid.nodes(); node++) {
                watch.see(step, node);
              }
              return true;
            });
    return state;
  }
}
