package starchfilm.numerics.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a step tells between its ends. */
class StepTest {
  private static final double END = 2;
  private static final Tolerance ANYTHING_GOES = new Tolerance(1e30, 1e30, 1e30);

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void isExactAtItsEnds(IntegratorOrder order) {
    watch(
        order,
        16,
        step -> {
          for (int component = 0; component < 5; component++) {
            assertThat(step.at(component, step.start()))
                .isCloseTo(step.startState[component], within(1e-14));
            assertThat(step.at(component, step.end()))
                .isCloseTo(step.atEnd(component), within(1e-14));
          }
          return true;
        });
  }

  @ParameterizedTest
  @EnumSource(IntegratorOrder.class)
  void isAsAccurateBetweenItsEndsAsTheMethodAtThem(IntegratorOrder order) {
    double coarse = errorBetween(order, 16);
    double middle = errorBetween(order, 32);
    double fine = errorBetween(order, 64);

    assertThat(ObservedOrder.of(coarse, middle)).isGreaterThan(order.number - 0.2);
    assertThat(ObservedOrder.of(middle, fine)).isGreaterThan(order.number - 0.2);
  }

  @Test
  void reproducesAPolynomialOfDegreeThreeInAFirstStep() {
    Step step = stepOver(3, 1, 1.5);

    assertThat(step.at(0, 1.2)).isCloseTo(Math.pow(1.2, 3), within(1e-14));
    assertThat(stepOver(4, 1, 1.5).at(0, 1.2)).isNotCloseTo(Math.pow(1.2, 4), within(1e-4));
  }

  @Test
  void reproducesAPolynomialOfDegreeFiveInLaterSteps() {
    Step step = stepOver(5, 0.8, 1, 1.5);

    assertThat(step.at(0, 1.2)).isCloseTo(Math.pow(1.2, 5), within(1e-13));
  }

  /** A first step may be far shorter than the second; its rounding must not be enlarged. */
  @Test
  void leavesOutAStepBeforeThatWasFarShorter() {
    Step step = stepOver(3, 1 - 1e-7, 1, 1.5);

    assertThat(step.at(0, 1.2)).isCloseTo(Math.pow(1.2, 3), within(1e-14));
  }

  /** The last of some steps over a power of time. */
  private static Step stepOver(int exponent, double... times) {
    Step step = new Step(1);
    step.earlier = times[0];
    step.start = times[0];
    fill(exponent, times[0], step.startState, step.startRates);
    for (int i = 1; i < times.length; i++) {
      step.end = times[i];
      fill(exponent, times[i], step.endState, step.endRates);
      if (i < times.length - 1) {
        step.advance();
      }
    }
    return step;
  }

  private static void fill(int exponent, double time, double[] state, double[] rates) {
    state[0] = Math.pow(time, exponent);
    rates[0] = exponent * Math.pow(time, exponent - 1);
  }

  private static double errorBetween(IntegratorOrder order, int steps) {
    double[] largest = {0};
    watch(
        order,
        steps,
        step -> {
          largest[0] = Math.max(largest[0], errorWithin(step));
          return true;
        });
    return largest[0];
  }

  /** Of a node, the lumped state and the tally, at nine times between the ends. */
  private static double errorWithin(Step step) {
    double largest = 0;
    for (int i = 1; i < 10; i++) {
      double time = step.start() + i / 10.0 * (step.end() - step.start());
      double atNode = Math.abs(step.at(0, time) - Math.cos(time));
      double atBorder = Math.abs(step.at(3, time) - Math.cos(time));
      double atTally = Math.abs(step.at(4, time) - Math.sin(time));
      largest = Math.max(largest, Math.max(atNode, Math.max(atBorder, atTally)));
    }
    return largest;
  }

  private static void watch(IntegratorOrder order, int steps, StepListener listener) {
    order
        .integrator(new ProtheroRobinson(1), ANYTHING_GOES)
        .integrate(0, END, END / steps, END / steps, ProtheroRobinson.start(), listener);
  }
}
