package starchfilm.numerics.diffusion;

/** The integrators under test. */
enum IntegratorOrder {
  THIRD(3),
  FOURTH(4);

  /** No step is refused with this, so that the longest step is the step. */
  private static final Tolerance ANYTHING_GOES = new Tolerance(1e30, 1e30, 1e30);

  final int number;

  IntegratorOrder(int number) {
    this.number = number;
  }

  RosenbrockIntegrator integrator(BorderedSystem system, Tolerance tolerance) {
    return this == THIRD
        ? new RosenbrockIntegrator(system, tolerance)
        : ReferenceIntegrator.of(system, tolerance);
  }

  /** Integrates with error control; the state moves from start to end. */
  void integrate(
      BorderedSystem system, double tolerance, double start, double end, double[] state) {
    integrator(system, new Tolerance(tolerance, tolerance, tolerance))
        .integrate(start, end, 1e-6 * (end - start), end - start, state, step -> true);
  }

  /** Integrates in equal steps; the state moves from start to end. */
  void integrateInSteps(
      BorderedSystem system, int steps, double start, double end, double[] state) {
    double length = (end - start) / steps;
    integrator(system, ANYTHING_GOES).integrate(start, end, length, length, state, step -> true);
  }
}
