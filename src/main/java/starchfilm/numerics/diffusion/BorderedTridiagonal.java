package starchfilm.numerics.diffusion;

/**
 * A square matrix that is tridiagonal but for a full last row and column (the border), with one
 * further row below, the tally's, whose column is empty.
 *
 * <p>{@code shift I - M} is factored by elimination from below, and the border by its Schur
 * complement. There is no pivoting: for a diffusion Jacobian and a positive shift the tridiagonal
 * part is diagonally dominant.
 */
public final class BorderedTridiagonal {
  final int nodes;
  final double[] below;
  final double[] diagonal;
  final double[] above;
  final double[] column;
  final double[] row;
  double corner;
  double tallyLower;
  double tallyUpper;
  double tallyBorder;

  private final double[] inversePivot;
  private final double[] multiplier;
  private final double[] backward;
  private final double[] solvedColumn;
  private double inverseSchur;
  private double inverseShift;

  /**
   * An empty matrix.
   *
   * @param nodes size of the tridiagonal part, at least 3
   */
  public BorderedTridiagonal(int nodes) {
    this.nodes = nodes;
    below = new double[nodes];
    diagonal = new double[nodes];
    above = new double[nodes];
    column = new double[nodes];
    row = new double[nodes];
    inversePivot = new double[nodes];
    multiplier = new double[nodes];
    backward = new double[nodes];
    solvedColumn = new double[nodes];
  }

  /**
   * Factors {@code shift I - M}.
   *
   * @param shift the shift, above 0
   */
  void factor(double shift) {
    inverseShift = 1 / shift;
    inversePivot[0] = 1 / (shift - diagonal[0]);
    for (int i = 1; i < nodes; i++) {
      multiplier[i] = below[i] * inversePivot[i - 1];
      inversePivot[i] = 1 / (shift - diagonal[i] - multiplier[i] * above[i - 1]);
    }
    for (int i = 0; i < nodes; i++) {
      backward[i] = above[i] * inversePivot[i];
    }
    System.arraycopy(column, 0, solvedColumn, 0, nodes);
    solveTridiagonal(solvedColumn);
    inverseSchur = 1 / (shift - corner - dot(row, solvedColumn));
  }

  /**
   * Solves {@code (shift I - M) x = b} with the last factoring.
   *
   * @param rightThenSolution b, replaced by x; nodes, border, tally
   */
  void solve(double[] rightThenSolution) {
    double[] x = rightThenSolution;
    solveTridiagonal(x);
    double border = (x[nodes] + dot(row, x)) * inverseSchur;
    x[nodes] = border;
    for (int i = 0; i < nodes; i++) {
      x[i] += solvedColumn[i] * border;
    }
    x[nodes + 1] =
        inverseShift
            * (x[nodes + 1] + tallyLower * x[0] + tallyUpper * x[nodes - 1] + tallyBorder * border);
  }

  private void solveTridiagonal(double[] x) {
    double last = x[0];
    for (int i = 1; i < nodes; i++) {
      last = x[i] + multiplier[i] * last;
      x[i] = last;
    }
    last = 0;
    for (int i = nodes - 1; i >= 0; i--) {
      last = x[i] * inversePivot[i] + backward[i] * last;
      x[i] = last;
    }
  }

  private double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < nodes; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
