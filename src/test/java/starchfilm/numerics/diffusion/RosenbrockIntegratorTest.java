package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How an integration walks: its ends, its longest step, its listener, its tolerance. */
class RosenbrockIntegratorTest {
  private static final Tolerance TOLERANCE = new Tolerance(1e-4, 1e-4, 1e-4);

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void walksWithoutGapsToTheEnd(IntegratorOrder order) {
    List<Double> places = new ArrayList<>(List.of(0.1));

    double reached =
        order
            .integrator(new ProtheroRobinson(5), TOLERANCE)
            .integrate(
                0.1,
                7.3,
                1e-3,
                0.5,
                start(),
                step -> {
                  assertThat(step.start()).isEqualTo(places.get(places.size() - 1));
                  assertThat(step.end() - step.start()).isBetween(0.0, 0.5 + 1e-12);
                  return places.add(step.end());
                });

    assertThat(reached).isEqualTo(7.3);
    assertThat(places).endsWith(7.3);
  }

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void stopsWithTheStepAtWhichTheListenerSaysSo(IntegratorOrder order) {
    double[] state = start();
    double[] seen = new double[2];

    double reached =
        order
            .integrator(new ProtheroRobinson(5), TOLERANCE)
            .integrate(
                0,
                7,
                1e-3,
                0.5,
                state,
                step -> {
                  seen[0] = step.end();
                  seen[1] = step.atEnd(0);
                  return step.end() < 2;
                });

    assertThat(reached).isBetween(2.0, 2.5).isEqualTo(seen[0]);
    assertThat(state[0]).isEqualTo(seen[1]);
  }

  @Test
  void doesNothingBetweenEqualTimes() {
    double[] state = start();

    double reached =
        IntegratorOrder.THIRD
            .integrator(new ProtheroRobinson(5), TOLERANCE)
            .integrate(3, 3, 1, 1, state, step -> true);

    assertThat(reached).isEqualTo(3);
    assertThat(state).isEqualTo(start());
  }

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void refusesAFirstStepThatIsTooLong(IntegratorOrder order) {
    List<Double> ends = new ArrayList<>();
    double[] state = start();

    order
        .integrator(new ProtheroRobinson(1), TOLERANCE)
        .integrate(0, 6, 6, 6, state, step -> ends.add(step.end()));

    assertThat(ends.get(0)).isLessThan(6);
    assertThat(state[0]).isCloseTo(Math.cos(6), within(20 * 1e-4));
  }

  /** An L-stable, stiffly accurate method follows the curve however stiff the pull to it. */
  @ParameterizedTest
  @ValueSource(doubles = {1, 1e3, 1e6, 1e9})
  void followsAStiffPullInFewSteps(double stiffness) {
    for (IntegratorOrder order : IntegratorOrder.values()) {
      List<Double> ends = new ArrayList<>();
      double[] state = start();

      order
          .integrator(new ProtheroRobinson(stiffness), TOLERANCE)
          .integrate(0, 6, 0.01, 6, state, step -> ends.add(step.end()));

      assertThat(state[0]).isCloseTo(Math.cos(6), within(10 * 1e-4));
      assertThat(ends).hasSizeLessThan(100);
    }
  }

  /** A value far from the curve is on it after one long step, without a trace of overshoot. */
  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void dampsAStiffStartInOneStep(IntegratorOrder order) {
    double[] state = {2, 2, 2, 2, 0};

    order.integrateInSteps(new ProtheroRobinson(1e9), 1, 0, 0.1, state);

    assertThat(state[0]).isCloseTo(Math.cos(0.1), within(1e-3));
  }

  @Test
  void refusesAToleranceOfNothing() {
    assertThat(assertThrows(IllegalArgumentException.class, () -> new Tolerance(1e-4, 0, 1e-4)))
        .hasMessage("tolerances must be above 0, not relative 1.0E-4, node 0.0, border 1.0E-4");
    assertThrows(IllegalArgumentException.class, () -> new Tolerance(Double.NaN, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Tolerance(1, 1, -1));
  }

  private static double[] start() {
    return ProtheroRobinson.start();
  }
}
