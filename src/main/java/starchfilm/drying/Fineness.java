package starchfilm.drying;

import static starchfilm.numerics.units.Units.HOUR_S;

import starchfilm.numerics.diffusion.Tolerance;

/**
 * How finely a spot is solved.
 *
 * @param nodes of the grid
 * @param tolerance of a step in time
 * @param longestStepS no step over a room that varies is longer, lest it pass over a change of
 *     weather (s)
 */
record Fineness(int nodes, Tolerance tolerance, double longestStepS) {

  /** From so many likely cases on the ends of a band are known to about 1 %. */
  private static final int MANY_DRAWS = 200;

  /** One solve that is to be right by itself: see the grid study in DEVELOPERS.md. */
  static final Fineness FORECAST = new Fineness(41, new Tolerance(5e-4, 1e-4, 0.1), HOUR_S);

  /**
   * For plates held against each other, one solve each: as fine in time, and few enough nodes that
   * they cost another 1e-4.
   */
  static final Fineness COMPARED = new Fineness(13, FORECAST.tolerance(), HOUR_S);

  /**
   * For bands of fewer than 200 likely cases, whose ends are not known to better than 1 or 2 %
   * anyway: a milestone is off by 0.4 % (root mean square), the mean of many by 0.2 %.
   */
  static final Fineness QUICK = new Fineness(9, new Tolerance(3e-3, 6e-4, 0.6), 3 * HOUR_S);

  /**
   * As fine as a band deserves: its ends are the better known, the more likely cases it rests on.
   */
  static Fineness of(int draws) {
    return draws < MANY_DRAWS ? QUICK : FORECAST;
  }
}
