package starchfilm.numerics.diffusion;

/**
 * The coefficients of a stiffly accurate Rosenbrock method, transformed so that a step multiplies
 * no matrix.
 *
 * <p>With {@code A = I/(h gamma) - J}: {@code A K_i = f(t + alpha_i h, y + sum a_ij K_j) + sum
 * c_ij/h K_j + h gamma_i df/dt}, then {@code y_1 = y + sum m_i K_i}; the difference to the embedded
 * formula is the last stage. Source of the form: Hairer and Wanner 1996, Solving Ordinary
 * Differential Equations II, 2nd ed., section IV.7, equation 7.25 (recalled).
 *
 * <p>Tried on drying films at the accuracy of a forecast and not taken: ROS34PW2, made for
 * parabolic problems, which needs more steps than RODAS3 and one more evaluation in each.
 */
final class RosenbrockMethod {
  final int order;
  final double gamma;
  final double[] alpha;
  final double[] gammaOfStage;
  final double[][] a;
  final double[][] c;
  final double[] m;

  /** Whether a stage has rates of its own or takes those of the stage before. */
  final boolean[] ownRates;

  private RosenbrockMethod(
      int order,
      double gamma,
      double[] alpha,
      double[] gammaOfStage,
      double[][] a,
      double[][] c,
      double[] m,
      boolean[] ownRates) {
    this.order = order;
    this.gamma = gamma;
    this.alpha = alpha;
    this.gammaOfStage = gammaOfStage;
    this.a = a;
    this.c = c;
    this.m = m;
    this.ownRates = ownRates;
  }

  int stages() {
    return m.length;
  }

  /**
   * RODAS3: order 3 with an embedded order 2, four stages of which one takes the rates of the stage
   * before; L-stable.
   *
   * <p>Source: Sandu et al. 1997, Benchmarking stiff ODE solvers for atmospheric chemistry problems
   * II: Rosenbrock solvers, Atmospheric Environment 31:3459, section 4 (recalled; the observed
   * order is tested).
   */
  static RosenbrockMethod rodas3() {
    return new RosenbrockMethod(
        3,
        1.0 / 2,
        new double[] {0, 0, 1, 1},
        new double[] {1.0 / 2, 3.0 / 2, 0, 0},
        new double[][] {{}, {0}, {2, 0}, {2, 0, 1}},
        new double[][] {{}, {4}, {1, -1}, {1, -1, -8.0 / 3}},
        new double[] {2, 0, 1, 1},
        new boolean[] {true, false, true, true});
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
