package starchfilm.numerics.diffusion;

/** A bordered matrix written out. */
final class DenseMatrix {
  private DenseMatrix() {}

  /** All entries, nodes first, then border, then tally. */
  static double[][] of(BorderedTridiagonal matrix) {
    int nodes = matrix.nodes;
    double[][] dense = new double[nodes + 2][nodes + 2];
    for (int i = 0; i < nodes; i++) {
      dense[i][i] = matrix.diagonal[i];
      if (i > 0) {
        dense[i][i - 1] = matrix.below[i];
      }
      if (i < nodes - 1) {
        dense[i][i + 1] = matrix.above[i];
      }
      dense[i][nodes] = matrix.column[i];
      dense[nodes][i] = matrix.row[i];
    }
    dense[nodes][nodes] = matrix.corner;
    dense[nodes + 1][0] = matrix.tallyLower;
    dense[nodes + 1][nodes - 1] = matrix.tallyUpper;
    dense[nodes + 1][nodes] = matrix.tallyBorder;
    return dense;
  }
}
