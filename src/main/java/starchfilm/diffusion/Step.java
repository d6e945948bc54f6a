package starchfilm.diffusion;

/**
 * One accepted step, to be read at any time within it.
 *
 * <p>Between its ends a component is the cubic that takes value and rate at both (Hermite), of
 * order 3. The arrays belong to the integrator and are overwritten by the next step.
 */
public final class Step {
  final double[] startState;
  final double[] startRates;
  double[] endState;
  double[] endRates;
  double start;
  double end;

  Step(int length) {
    startState = new double[length];
    startRates = new double[length];
    endState = new double[length];
    endRates = new double[length];
  }

  /**
   * When the step starts.
   *
   * @return the time
   */
  public double start() {
    return start;
  }

  /**
   * When the step ends.
   *
   * @return the time
   */
  public double end() {
    return end;
  }

  /**
   * One component at the start of the step.
   *
   * @param component its index in the state
   * @return its value
   */
  public double atStart(int component) {
    return startState[component];
  }

  /**
   * One component at the end of the step.
   *
   * @param component its index in the state
   * @return its value
   */
  public double atEnd(int component) {
    return endState[component];
  }

  /**
   * One component within the step.
   *
   * @param component its index in the state
   * @param time between start and end
   * @return its value
   */
  public double at(int component, double time) {
    double length = end - start;
    double x = (time - start) / length;
    double from = startState[component];
    double rise = endState[component] - from;
    double left = startRates[component] * length;
    double right = endRates[component] * length;
    return from + x * (left + x * (3 * rise - 2 * left - right + x * (left + right - 2 * rise)));
  }
}
