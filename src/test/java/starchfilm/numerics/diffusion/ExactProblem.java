package starchfilm.numerics.diffusion;

/** A diffusion problem that holds its equation and its exact solution. */
interface ExactProblem {
  /** The equation on a grid. */
  BorderedSystem system(Grid grid);

  /** The exact unknown; position from 0 at the lower face to 1 at the upper. */
  double value(double position, double time);

  /** The exact lumped state. */
  double border(double time);

  /** The exact state at the nodes of a grid, with an empty tally. */
  default double[] state(Grid grid, double time) {
    double[] positions = grid.positions();
    double[] state = new double[positions.length + 2];
    for (int i = 0; i < positions.length; i++) {
      state[i] = value(positions[i], time);
    }
    state[positions.length] = border(time);
    return state;
  }

  /** The largest distance of a state from the exact one, at the nodes and in the lumped state. */
  default double largestError(Grid grid, double time, double[] state) {
    double[] exact = state(grid, time);
    double largest = 0;
    for (int i = 0; i <= grid.nodes(); i++) {
      largest = Math.max(largest, Math.abs(state[i] - exact[i]));
    }
    return largest;
  }
}
