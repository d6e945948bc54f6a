package starchfilm.drying;

import starchfilm.diffusion.Tolerance;

/**
 * How finely a spot is solved.
 *
 * @param nodes of the grid
 * @param tolerance of a step in time
 */
record Fineness(int nodes, Tolerance tolerance) {
  /** For forecasts. */
  static final Fineness FORECAST = new Fineness(SpotSolver.NODES, SpotSolver.FORECAST);

  /**
   * For bands of a hundred likely cases or so: half the nodes, which costs 2e-4 where the steps
   * cost 1e-3.
   */
  static final Fineness QUICK = new Fineness(21, SpotSolver.FORECAST);

  /**
   * For outlines of hundreds of plates, whose bands rest on so few likely cases that their ends are
   * not known to several per cent: half the nodes, fewer steps, every milestone within 2 %.
   */
  static final Fineness OUTLINE = new Fineness(21, new Tolerance(2e-3, 4e-4, 0.4));

  /**
   * As fine as a band deserves: its ends are the better known, the more likely cases it rests on.
   */
  static Fineness of(int draws) {
    if (draws <= DryingForecaster.FEWEST_DRAWS) {
      return OUTLINE;
    }
    return draws <= DryingForecaster.QUICK_DRAWS ? QUICK : FORECAST;
  }
}
