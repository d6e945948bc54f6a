package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bordered solve against a library's LU decomposition with pivoting. */
class BorderedTridiagonalTest {
  private static final double ROUNDING = 1e-12;

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 5, 6, 7, 8, 9, 10, 40, 41, 100, 101})
  void solvesLikeALibrary(int nodes) {
    Random random = new Random(nodes);
    BorderedTridiagonal matrix = random(nodes, random);
    for (double shift : new double[] {1e-3, 1, 1e3}) {
      double[] right = numbers(nodes + 2, random);

      matrix.factor(shift);

      assertSolves(matrix, shift, right);
      assertSolves(matrix, shift, numbers(nodes + 2, random));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4, 11, 40})
  void solvesTheJacobianOfADryingFilm(int nodes) {
    Random random = new Random(nodes);
    Grid grid = Grid.fineAtUpperFace(nodes, 10);
    DryingLikeFilm film = DryingLikeFilm.inASwingingRoom();
    double[] state = film.start(grid);
    IntegratorOrder.THIRD.integrate(film.system(grid), 1e-3, 0, 3, state);
    BorderedTridiagonal matrix = new BorderedTridiagonal(nodes);
    DiffusionSystem system = film.system(grid);
    system.rates(3, state, new double[nodes + 2]);
    system.linearise(3, state, matrix, new double[nodes + 2]);
    for (double shift : new double[] {1e-2, 1, 1e4}) {
      matrix.factor(shift);

      assertSolves(matrix, shift, numbers(nodes + 2, random));
    }
  }

  private static void assertSolves(BorderedTridiagonal matrix, double shift, double[] right) {
    RealMatrix shifted =
        MatrixUtils.createRealIdentityMatrix(right.length)
            .scalarMultiply(shift)
            .subtract(MatrixUtils.createRealMatrix(DenseMatrix.of(matrix)));
    double[] theirs =
        new LUDecomposition(shifted, 0)
            .getSolver()
            .solve(MatrixUtils.createRealVector(right))
            .toArray();
    double[] ours = right.clone();
    matrix.solve(ours);
    double largest = 0;
    for (double value : theirs) {
      largest = Math.max(largest, Math.abs(value));
    }
    assertThat(ours).containsExactly(theirs, within(ROUNDING * largest));
  }

  /** Diagonally dominant with every entry of the pattern filled. */
  private static BorderedTridiagonal random(int nodes, Random random) {
    BorderedTridiagonal matrix = new BorderedTridiagonal(nodes);
    for (int i = 0; i < nodes; i++) {
      matrix.below[i] = i == 0 ? 0 : random.nextGaussian();
      matrix.above[i] = i == nodes - 1 ? 0 : random.nextGaussian();
      matrix.column[i] = random.nextGaussian();
      matrix.row[i] = random.nextGaussian();
      matrix.corner -= Math.abs(matrix.row[i]);
      matrix.diagonal[i] =
          -(Math.abs(matrix.below[i])
              + Math.abs(matrix.above[i])
              + Math.abs(matrix.column[i])
              + random.nextDouble());
    }
    matrix.corner -= random.nextDouble();
    matrix.tallyLower = random.nextGaussian();
    matrix.tallyUpper = random.nextGaussian();
    matrix.tallyBorder = random.nextGaussian();
    return matrix;
  }

  private static double[] numbers(int count, Random random) {
    return random.doubles(count, -1, 1).toArray();
  }
}
