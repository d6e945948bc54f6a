package starchfilm.numerics.diffusion;

/**
 * A square matrix that is tridiagonal but for a full last row and column (the border), with one
 * further row below, the tally's, whose column is empty.
 *
 * <p>{@code shift I - M} is factored by eliminating from both ends towards the middle, which lets
 * the processor work on two chains at once, and the border by its Schur complement. There is no
 * pivoting: for a diffusion Jacobian and a positive shift the tridiagonal part is diagonally
 * dominant. Source of the two-ended elimination: Golub and Van Loan 2013, Matrix Computations, 4th
 * ed., section 4.5 (recalled).
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

  private final int middle;
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
    this.middle = nodes / 2;
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
    int top = nodes - 1;
    inversePivot[0] = 1 / (shift - diagonal[0]);
    inversePivot[top] = 1 / (shift - diagonal[top]);
    int low = 1;
    int high = top - 1;
    while (low < middle || high > middle) {
      if (low < middle) {
        multiplier[low] = below[low] * inversePivot[low - 1];
        inversePivot[low] = 1 / (shift - diagonal[low] - multiplier[low] * above[low - 1]);
        low++;
      }
      if (high > middle) {
        multiplier[high] = above[high] * inversePivot[high + 1];
        inversePivot[high] = 1 / (shift - diagonal[high] - multiplier[high] * below[high + 1]);
        high--;
      }
    }
    double fromBelow = below[middle] * inversePivot[middle - 1];
    double fromAbove = above[middle] * inversePivot[middle + 1];
    inversePivot[middle] =
        1
            / (shift
                - diagonal[middle]
                - fromBelow * above[middle - 1]
                - fromAbove * below[middle + 1]);
    multiplier[middle] = fromBelow;
    backward[middle] = fromAbove;
    for (int i = 0; i < middle; i++) {
      backward[i] = above[i] * inversePivot[i];
    }
    for (int i = middle + 1; i < nodes; i++) {
      backward[i] = below[i] * inversePivot[i];
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
    int top = nodes - 1;
    // The upper half is never the longer one.
    int paired = top - middle - 1;
    double low = x[0];
    double high = x[top];
    int i = 1;
    int j = top - 1;
    for (int k = 0; k < paired; k++, i++, j--) {
      low = x[i] + multiplier[i] * low;
      x[i] = low;
      high = x[j] + multiplier[j] * high;
      x[j] = high;
    }
    for (; i < middle; i++) {
      low = x[i] + multiplier[i] * low;
      x[i] = low;
    }
    double centre =
        (x[middle] + multiplier[middle] * low + backward[middle] * high) * inversePivot[middle];
    x[middle] = centre;
    low = centre;
    high = centre;
    i = middle - 1;
    j = middle + 1;
    int both = top - middle;
    for (int k = 0; k < both; k++, i--, j++) {
      low = x[i] * inversePivot[i] + backward[i] * low;
      x[i] = low;
      high = x[j] * inversePivot[j] + backward[j] * high;
      x[j] = high;
    }
    for (; i >= 0; i--) {
      low = x[i] * inversePivot[i] + backward[i] * low;
      x[i] = low;
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
