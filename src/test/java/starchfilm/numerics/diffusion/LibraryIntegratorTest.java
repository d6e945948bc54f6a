package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The same cells integrated by a library's explicit method of order 8 at a tight tolerance. Asked
 * for is 1e-5; reached is 2e-6 with order 3 and 1.4e-7 with order 4, at a tolerance of 1e-7.
 */
class LibraryIntegratorTest {
  private static final Grid GRID = Grid.fineAtBothFaces(41, 3);
  private static final double END = 8;
  private static final DryingLikeFilm STEADY = DryingLikeFilm.inASteadyRoom();
  private static final DryingLikeFilm SWINGING = DryingLikeFilm.inASwingingRoom();

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void agreesInASteadyRoom(IntegratorOrder order) {
    double[] theirs = theirs(STEADY);

    assertThat(distance(order, STEADY, 1e-7, theirs)).isLessThan(3e-6);
  }

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void agreesInASwingingRoom(IntegratorOrder order) {
    double[] theirs = theirs(SWINGING);

    assertThat(distance(order, SWINGING, 1e-7, theirs)).isLessThan(3e-6);
  }

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void isOffByNoMoreThanTenTolerances(IntegratorOrder order) {
    double[] theirs = theirs(SWINGING);
    for (double tolerance : new double[] {1e-2, 1e-3, 1e-4, 1e-5, 1e-6}) {
      assertThat(distance(order, SWINGING, tolerance, theirs)).isLessThan(10 * tolerance);
    }
  }

  private static double[] theirs(DryingLikeFilm film) {
    double[] state = film.start(GRID);
    LibraryIntegrator.integrate(film.system(GRID), 1e-10, 0, END, state);
    return state;
  }

  /** Largest over nodes, lumped state and tally, relative to values above 0.1. */
  private static double distance(
      IntegratorOrder order, DryingLikeFilm film, double tolerance, double[] theirs) {
    double[] ours = film.start(GRID);
    order.integrate(film.system(GRID), tolerance, 0, END, ours);
    double largest = 0;
    for (int i = 0; i < ours.length; i++) {
      double relative = Math.abs(ours[i] - theirs[i]) / Math.max(0.1, Math.abs(theirs[i]));
      largest = Math.max(largest, relative);
    }
    return largest;
  }
}
