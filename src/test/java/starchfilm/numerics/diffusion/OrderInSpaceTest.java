package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How fast the error falls as the grid is refined: with the square of the spacing. */
class OrderInSpaceTest {
  private static final ManufacturedDiffusion PROBLEM = new ManufacturedDiffusion();
  private static final double START = 0;
  private static final double END = 0.6;

  static Stream<Named<IntFunction<Grid>>> grids() {
    return Stream.of(
        Named.of("uniform", intervals -> Grid.fineAtUpperFace(intervals + 1, 1)),
        Named.of("fine at the upper face", intervals -> Grid.fineAtUpperFace(intervals + 1, 8)),
        Named.of("fine at both faces", intervals -> Grid.fineAtBothFaces(intervals + 1, 8)));
  }

  @ParameterizedTest
  @MethodSource("grids")
  void errorFallsWithTheSquareOfTheSpacing(IntFunction<Grid> grids) {
    double coarse = error(grids.apply(20));
    double middle = error(grids.apply(40));
    double fine = error(grids.apply(80));

    assertThat(ObservedOrder.of(coarse, middle)).isBetween(1.85, 2.15);
    assertThat(ObservedOrder.of(middle, fine)).isBetween(1.93, 2.07);
    assertThat(fine).isLessThan(1e-3);
  }

  private static double error(Grid grid) {
    double[] state = PROBLEM.state(grid, START);
    IntegratorOrder.FOURTH.integrate(PROBLEM.system(grid), 1e-7, START, END, state);
    return PROBLEM.largestError(grid, END, state);
  }
}
