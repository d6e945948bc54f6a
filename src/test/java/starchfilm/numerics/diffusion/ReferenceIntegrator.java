package starchfilm.numerics.diffusion;

/**
 * RODASP, a method of order 4 for tight tolerances, which shows how far the method of a forecast is
 * off.
 */
public final class ReferenceIntegrator {
  private ReferenceIntegrator() {}

  /**
   * An integrator of order 4.
   *
   * @param system the system
   * @param tolerance how far a step may be off
   * @return the integrator
   */
  public static RosenbrockIntegrator of(BorderedSystem system, Tolerance tolerance) {
    return new RosenbrockIntegrator(system, rodasp(), tolerance);
  }

  /**
   * RODASP: order 4 with an embedded order 3, six stages, L-stable.
   *
   * <p>Source: Steinebach 1995, Order reduction of ROW methods for DAEs and method of lines
   * applications, Preprint 1741, TH Darmstadt, as printed in the program of Hairer and Wanner 1996
   * (recalled; the observed order is tested).
   */
  static RosenbrockMethod rodasp() {
    double[] last = {
      -7.170454962423024, -4.741636671481785, -16.31002631330971, -1.062004044111401
    };
    return new RosenbrockMethod(
        4,
        0.25,
        new double[] {0, 0.75, 0.21, 0.63, 1, 1},
        new double[] {0.25, -0.5, -0.023504, -0.0362, 0, 0},
        new double[][] {
          {},
          {3},
          {1.831036793486759, 0.4955183967433795},
          {2.304376582692669, -0.05249275245743001, -1.176798761832782},
          last,
          {last[0], last[1], last[2], last[3], 1}
        },
        new double[][] {
          {},
          {-12},
          {-8.791795173947035, -2.207865586973518},
          {10.81793056857153, 6.780270611428266, 19.53485944642410},
          {34.19095006749676, 15.49671153725963, 54.74760875964130, 14.16005392148534},
          {
            34.62605830930532,
            15.30084976114473,
            56.99955578662667,
            18.40807009793095,
            -5.714285714285717
          }
        },
        new double[] {last[0], last[1], last[2], last[3], 1, 1},
        new boolean[] {true, true, true, true, true, true});
  }
}
