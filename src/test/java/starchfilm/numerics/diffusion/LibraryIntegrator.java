package starchfilm.numerics.diffusion;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * The same rates integrated by a library of others: the explicit method of order 8 of Dormand and
 * Prince in Commons Math 3.6.1, which knows nothing of our Jacobian.
 */
final class LibraryIntegrator {
  private LibraryIntegrator() {}

  /** Integrates; the state moves from start to end. */
  static void integrate(
      BorderedSystem system, double tolerance, double start, double end, double[] state) {
    FirstOrderDifferentialEquations equations =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return state.length;
          }

          @Override
          public void computeDerivatives(double time, double[] values, double[] rates) {
            system.rates(time, values, rates);
          }
        };
    new DormandPrince853Integrator(1e-12, end - start, tolerance, tolerance)
        .integrate(equations, start, state.clone(), end, state);
  }
}
