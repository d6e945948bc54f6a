package starchfilm.numerics.diffusion;

/**
 * Nodes over an interval of length 1, the first on its lower face and the last on its upper, finer
 * towards the faces where the solution is steep.
 *
 * <p>Every node owns the part of the interval that is nearest to it, so the face nodes own half a
 * spacing and the values at the faces are unknowns like any other. The spacings grow by a constant
 * ratio away from a fine face, which keeps the scheme second order.
 */
public final class Grid {
  private final double[] spacings;
  private final double[] shares;

  private Grid(double[] spacings) {
    this.spacings = spacings;
    this.shares = new double[spacings.length + 1];
    for (int i = 0; i < spacings.length; i++) {
      shares[i] += spacings[i] / 2;
      shares[i + 1] += spacings[i] / 2;
    }
  }

  /**
   * A grid that is fine at its upper face only.
   *
   * @param nodes number of nodes, at least 3
   * @param coarseness widest over narrowest spacing, at least 1
   * @return the grid
   */
  public static Grid fineAtUpperFace(int nodes, double coarseness) {
    int count = checked(nodes, coarseness) - 1;
    double[] relative = new double[count];
    for (int i = 0; i < count; i++) {
      relative[i] = Math.pow(coarseness, (count - 1.0 - i) / (count - 1.0));
    }
    return normalised(relative);
  }

  /**
   * A grid that is fine at both faces and mirrors itself.
   *
   * @param nodes number of nodes, at least 3
   * @param coarseness widest over narrowest spacing, at least 1
   * @return the grid
   */
  public static Grid fineAtBothFaces(int nodes, double coarseness) {
    int count = checked(nodes, coarseness) - 1;
    double[] relative = new double[count];
    double half = (count - 1) / 2.0;
    for (int i = 0; i < count; i++) {
      double fromMiddle = half == 0 ? 1 : Math.abs(i - half) / half;
      relative[i] = Math.pow(coarseness, 1 - fromMiddle);
    }
    return normalised(relative);
  }

  private static int checked(int nodes, double coarseness) {
    if (nodes < 3 || !(coarseness >= 1)) {
      throw new IllegalArgumentException(
          "a grid needs at least 3 nodes and a coarseness of at least 1, not "
              + nodes
              + " and "
              + coarseness);
    }
    return nodes;
  }

  private static Grid normalised(double[] relative) {
    double sum = 0;
    for (double spacing : relative) {
      sum += spacing;
    }
    for (int i = 0; i < relative.length; i++) {
      relative[i] /= sum;
    }
    return new Grid(relative);
  }

  /**
   * How many nodes there are.
   *
   * @return at least 3
   */
  public int nodes() {
    return shares.length;
  }

  /**
   * The distances between neighbouring nodes.
   *
   * @return a copy, one fewer than nodes; adds up to 1
   */
  public double[] spacings() {
    return spacings.clone();
  }

  /**
   * The part of the interval that each node owns.
   *
   * @return a copy, one a node; adds up to 1
   */
  public double[] shares() {
    return shares.clone();
  }

  /**
   * Where the nodes lie.
   *
   * @return the positions from 0 at the lower face to 1 at the upper
   */
  public double[] positions() {
    double[] positions = new double[nodes()];
    for (int i = 0; i < spacings.length; i++) {
      positions[i + 1] = positions[i] + spacings[i];
    }
    positions[positions.length - 1] = 1;
    return positions;
  }
}
