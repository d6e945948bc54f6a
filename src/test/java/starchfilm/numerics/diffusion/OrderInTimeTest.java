package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * How fast the error falls as the step is halved, on a grid so coarse that the system is not stiff
 * at these steps (a stiff one may lose order by nature), against a library's integrator at 1e-13.
 */
class OrderInTimeTest {
  private static final Grid GRID = Grid.fineAtUpperFace(6, 2);
  private static final double BAND = 0.2;
  private static final double START = 1;
  private static final double END = 5;

  static Stream<Arguments> cases() {
    DryingLikeFilm autonomous = new DryingLikeFilm(0.4, 0, true);
    DryingLikeFilm nonAutonomous = DryingLikeFilm.inASwingingRoom();
    return Stream.of(IntegratorOrder.values())
        .flatMap(
            order -> Stream.of(autonomous, nonAutonomous).map(film -> Arguments.of(order, film)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void errorFallsWithTheOrderOfTheMethod(IntegratorOrder order, DryingLikeFilm film) {
    double[] exact = film.start(GRID);
    LibraryIntegrator.integrate(film.system(GRID), 1e-13, START, END, exact);

    double coarse = error(order, film, 128, exact);
    double middle = error(order, film, 256, exact);
    double fine = error(order, film, 512, exact);

    assertThat(ObservedOrder.of(coarse, middle))
        .isBetween(order.number - BAND, order.number + BAND);
    assertThat(ObservedOrder.of(middle, fine)).isBetween(order.number - BAND, order.number + BAND);
  }

  /** Largest over nodes, lumped state and tally. */
  private static double error(
      IntegratorOrder order, DryingLikeFilm film, int steps, double[] exact) {
    double[] state = film.start(GRID);
    order.integrateInSteps(film.system(GRID), steps, START, END, state);
    double largest = 0;
    for (int i = 0; i < state.length; i++) {
      largest = Math.max(largest, Math.abs(state[i] - exact[i]));
    }
    return largest;
  }
}
