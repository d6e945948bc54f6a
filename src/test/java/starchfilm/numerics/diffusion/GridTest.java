package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class GridTest {
  static Stream<Grid> grids() {
    return Stream.of(3, 4, 5, 40, 41)
        .flatMap(
            nodes ->
                Stream.of(
                    Grid.fineAtUpperFace(nodes, 1),
                    Grid.fineAtUpperFace(nodes, 20),
                    Grid.fineAtBothFaces(nodes, 1),
                    Grid.fineAtBothFaces(nodes, 20)));
  }

  @ParameterizedTest
  @MethodSource("grids")
  void coversTheIntervalOnce(Grid grid) {
    assertThat(DoubleStream.of(grid.spacings()).sum()).isCloseTo(1, within(1e-14));
    assertThat(DoubleStream.of(grid.shares()).sum()).isCloseTo(1, within(1e-14));
    assertThat(grid.positions()[0]).isZero();
    assertThat(grid.positions()[grid.nodes() - 1]).isEqualTo(1);
  }

  @ParameterizedTest
  @MethodSource("grids")
  void givesEveryNodeHalfOfTheSpacingsBesideIt(Grid grid) {
    double[] spacings = grid.spacings();
    double[] shares = grid.shares();

    assertThat(shares[0]).isEqualTo(spacings[0] / 2);
    for (int i = 1; i < spacings.length; i++) {
      assertThat(shares[i]).isCloseTo((spacings[i - 1] + spacings[i]) / 2, within(1e-16));
    }
  }

  @Test
  void isFineWhereAsked() {
    double[] oneSided = Grid.fineAtUpperFace(41, 20).spacings();
    double[] twoSided = Grid.fineAtBothFaces(42, 20).spacings();

    assertThat(oneSided[0] / oneSided[39]).isCloseTo(20, within(1e-12));
    assertThat(oneSided[20] / oneSided[21]).isCloseTo(oneSided[0] / oneSided[1], within(1e-12));
    assertThat(twoSided[20] / twoSided[0]).isCloseTo(20, within(1e-12));
    assertThat(twoSided[20] / twoSided[40]).isCloseTo(20, within(1e-12));
  }

  @Test
  void handsOutCopies() {
    Grid grid = Grid.fineAtUpperFace(5, 1);

    grid.shares()[0] = 9;
    grid.spacings()[0] = 9;

    assertThat(grid.shares()[0]).isEqualTo(0.125);
    assertThat(grid.spacings()[0]).isEqualTo(0.25);
  }

  @Test
  void refusesTooFewNodesAndCoarsenessBelowOne() {
    assertThat(assertThrows(IllegalArgumentException.class, () -> Grid.fineAtUpperFace(2, 5)))
        .hasMessage("a grid needs at least 3 nodes and a coarseness of at least 1, not 2 and 5.0");
    assertThrows(IllegalArgumentException.class, () -> Grid.fineAtBothFaces(40, 0.5));
    assertThrows(IllegalArgumentException.class, () -> Grid.fineAtBothFaces(40, Double.NaN));
  }
}
