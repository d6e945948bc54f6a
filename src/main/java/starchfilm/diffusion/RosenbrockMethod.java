package starchfilm.diffusion;

/**
 * The coefficients of a Rosenbrock method, transformed so that a step multiplies no matrix.
 *
 * <p>With {@code A = I/(h gamma) - J}: {@code A K_i = f(t + alpha_i h, y + sum a_ij K_j) + sum
 * c_ij/h K_j + h gamma_i df/dt}, then {@code y_1 = y + sum m_i K_i}, and the difference to the
 * embedded formula is the last stage alone. Source of the form: Hairer and Wanner 1996, Solving
 * Ordinary Differential Equations II, 2nd ed., section IV.7, equation 7.25 (recalled).
 */
final class RosenbrockMethod {
  final int order;
  final double gamma;
  final double[] alpha;
  final double[] gammaOfStage;
  final double[][] a;
  final double[][] c;
  final double[] m;

  /** Whether a stage needs rates of its own or takes those of the stage before. */
  final boolean[] newRates;

  private RosenbrockMethod(
      int order,
      double gamma,
      double[] alpha,
      double[] gammaOfStage,
      double[][] a,
      double[][] c,
      double[] m,
      boolean[] newRates) {
    this.order = order;
    this.gamma = gamma;
    this.alpha = alpha;
    this.gammaOfStage = gammaOfStage;
    this.a = a;
    this.c = c;
    this.m = m;
    this.newRates = newRates;
  }

  int stages() {
    return m.length;
  }

  /**
   * RODAS3: order 3 with an embedded order 2, four stages of which one needs no rates of its own;
   * both formulas L-stable and stiffly accurate.
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
   * RODAS: order 4 with an embedded order 3, six stages, both formulas L-stable and stiffly
   * accurate.
   *
   * <p>Source: Hairer and Wanner 1996, Solving Ordinary Differential Equations II, 2nd ed., section
   * VI.4 and its program (recalled; the observed order is tested).
   */
  static RosenbrockMethod rodas4() {
    double[] last = {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950};
    return new RosenbrockMethod(
        4,
        1.0 / 4,
        new double[] {0, 0.386, 0.21, 0.63, 1, 1},
        new double[] {0.25, -0.1043, 0.1035, -0.3620000000000023e-1, 0, 0},
        new double[][] {
          {},
          {1.544},
          {0.9466785280815826, 0.2557011698983284},
          {3.314825187068521, 2.896124015972201, 0.9986419139977817},
          last,
          {last[0], last[1], last[2], last[3], 1}
        },
        new double[][] {
          {},
          {-5.6688},
          {-2.430093356833875, -0.2063599157091915},
          {-0.1073529058151375, -9.594562251023355, -20.47028614809616},
          {7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160},
          {
            8.083246795921522,
            -7.981132988064893,
            -31.52159432874371,
            16.31930543123136,
            -6.058818238834054
          }
        },
        new double[] {last[0], last[1], last[2], last[3], 1, 1},
        new boolean[] {true, true, true, true, true, true});
  }
}
