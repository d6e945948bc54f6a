package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** An integration that cannot go on says with what method, when, and how far off it was. */
class IntegrationFailureTest {
  private static final double[] REST = {0, 0, 0, 1, 0};

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void endsWhereNoRateIsANumber(IntegratorOrder order) {
    Lumped system = new Lumped((time, value) -> Double.NaN, value -> 0);

    assertThat(failure(order, system, REST.clone()))
        .isEqualTo(
            "Rosenbrock method of order "
                + order.number
                + ": the step fell to 0.000 at time 0.000, error over tolerance NaN");
  }

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void endsWhereRatesCeaseToBeNumbers(IntegratorOrder order) {
    Lumped system = new Lumped((time, value) -> time < 0.5 ? 1 : Double.NaN, value -> 0);

    assertThat(failure(order, system, REST.clone()))
        .matches(
            "Rosenbrock method of order "
                + order.number
                + ": the step fell to \\d\\.\\d{3}e-15 at time 0\\.5000, error over tolerance NaN");
  }

  /** {@code s' = s^3} from 1 is {@code (1 - 2 t)^(-1/2)}. */
  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void endsWhereTheSolutionRunsAway(IntegratorOrder order) {
    Lumped system = new Lumped((time, value) -> value * value * value, value -> 3 * value * value);

    assertThat(failure(order, system, REST.clone()))
        .matches(
            "Rosenbrock method of order "
                + order.number
                + ": the step fell to \\d\\.\\d{3}e-1\\d at time 0\\.5000, error over tolerance .+");
  }

  @Test
  void endsWhereStepsAreTooShortToArrive() {
    Lumped system = new Lumped((time, value) -> 0, value -> 0);
    RosenbrockIntegrator integrator =
        IntegratorOrder.THIRD.integrator(system, new Tolerance(1e-6, 1e-6, 1e-6));

    IntegrationFailure failure =
        assertThrows(
            IntegrationFailure.class,
            () -> integrator.integrate(0, 1, 0x1p-20, 0x1p-20, REST.clone(), step -> true));

    assertThat(failure)
        .hasMessage(
            "Rosenbrock method of order 3: 100000 steps did not reach the end at time 0.09537,"
                + " error over tolerance 0.000");
  }

  @Test
  void leavesTheStartInPlace() {
    double[] state = REST.clone();

    failure(
        IntegratorOrder.THIRD,
        new Lumped((time, value) -> value * value * value, value -> 3 * value * value),
        state);

    assertThat(state).isEqualTo(REST);
  }

  private static String failure(IntegratorOrder order, BorderedSystem system, double[] state) {
    RosenbrockIntegrator integrator = order.integrator(system, new Tolerance(1e-6, 1e-6, 1e-6));
    return assertThrows(
            IntegrationFailure.class,
            () -> integrator.integrate(0, 2, 0x1p-4, 0x1p-4, state, step -> true))
        .getMessage();
  }

  /** Nodes at rest beside a lumped state that moves by a law of its own. */
  private record Lumped(DoubleBinaryOperator rate, DoubleUnaryOperator slope)
      implements BorderedSystem {
    @Override
    public int nodes() {
      return 3;
    }

    @Override
    public void rates(double time, double[] state, double[] rates) {
      rates[3] = rate.applyAsDouble(time, state[3]);
    }

    @Override
    public void linearise(
        double time, double[] state, BorderedTridiagonal jacobian, double[] timeSlope) {
      jacobian.corner = slope.applyAsDouble(state[3]);
    }
  }
}
