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
 *
 * @param order order of the method
 * @param gamma what the unit matrix is divided by, beside the step
 * @param alpha when each stage takes its rates, a share of the step
 * @param gammaOfStage share of the slope in time in each stage
 * @param a weights of the earlier stages in the state of a stage
 * @param c weights of the earlier stages in its right-hand side
 * @param m weights of the stages in the result
 * @param ownRates whether a stage has rates of its own or takes those of the stage before
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record RosenbrockMethod(
    int order,
    double gamma,
    double[] alpha,
    double[] gammaOfStage,
    double[][] a,
    double[][] c,
    double[] m,
    boolean[] ownRates) {
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
}
