package starchfilm.numerics.diffusion;

/**
 * One accepted step, to be read at any time within it.
 *
 * <p>Within the step a component is the polynomial of degree 5 that takes value and rate at both
 * ends and at the start of the step before (Hermite); in a first step, or one much longer than the
 * step before, that of degree 3 through its own ends. The rate of a stiff component is its small
 * error many times enlarged, so its values within a long step are to be trusted less. The arrays
 * belong to the integrator and are overwritten by the next step.
 */
public final class Step {
  /**
   * Over a step so much longer than the one before, the polynomial of degree 5 would enlarge the
   * rounding of its start by the cube of this, and more; no step grows so much on its own.
   */
  private static final double MOST_GROWTH = 8;

  double[] earlierState;
  double[] earlierRates;
  double[] startState;
  double[] startRates;
  double[] endState;
  double[] endRates;
  double earlier;
  double start;
  double end;

  Step(int length) {
    earlierState = new double[length];
    earlierRates = new double[length];
    startState = new double[length];
    startRates = new double[length];
    endState = new double[length];
    endRates = new double[length];
  }

  /** The end becomes the start, the start the one before. */
  void advance() {
    double[] state = earlierState;
    double[] rates = earlierRates;
    earlierState = startState;
    earlierRates = startRates;
    earlier = start;
    startState = endState;
    startRates = endRates;
    start = end;
    endState = state;
    endRates = rates;
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
    return end - start < MOST_GROWTH * (start - earlier)
        ? quintic(component, time)
        : cubic(component, time);
  }

  private double cubic(int component, double time) {
    double length = end - start;
    double x = (time - start) / length;
    double from = startState[component];
    double rise = endState[component] - from;
    double left = startRates[component] * length;
    double right = endRates[component] * length;
    return from + x * (left + x * (3 * rise - 2 * left - right + x * (left + right - 2 * rise)));
  }

  /** Newton's divided differences over the three times, each taken twice. */
  private double quintic(int component, double time) {
    double before = start - earlier;
    double within = end - start;
    double both = end - earlier;
    double slope0 = earlierRates[component];
    double slope1 = startRates[component];
    double slope2 = endRates[component];
    double mean01 = (startState[component] - earlierState[component]) / before;
    double mean12 = (endState[component] - startState[component]) / within;
    double second0 = (mean01 - slope0) / before;
    double second1 = (slope1 - mean01) / before;
    double second2 = (mean12 - slope1) / within;
    double second3 = (slope2 - mean12) / within;
    double third0 = (second1 - second0) / before;
    double third1 = (second2 - second1) / both;
    double third2 = (second3 - second2) / within;
    double fourth0 = (third1 - third0) / both;
    double fourth1 = (third2 - third1) / both;
    double fifth = (fourth1 - fourth0) / both;
    double from0 = time - earlier;
    double from1 = time - start;
    double from2 = time - end;
    double inner = fourth0 + from2 * fifth;
    double middle = second0 + from1 * (third0 + from1 * inner);
    return earlierState[component] + from0 * (slope0 + from0 * middle);
  }
}
