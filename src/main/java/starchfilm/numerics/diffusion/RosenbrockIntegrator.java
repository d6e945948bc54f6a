package starchfilm.numerics.diffusion;

import java.util.Locale;

/**
 * Integrates a {@link BorderedSystem} with a linearly implicit, L-stable method whose step adapts
 * to a {@link Tolerance}.
 *
 * <p>The step follows the usual rule {@code h_new = h min(6, max(0.2, 0.88 err^(-1/order)))}; after
 * a refused step it may not grow at once. Where the error grows from step to step, as it does while
 * a film dries, it is taken to go on so, {@code h_new' = h_new h/h_old (err_old/err)^(1/order)},
 * and one step in twelve is refused instead of one in five (Gustafsson 1994). Source: Hairer and
 * Wanner 1996, Solving Ordinary Differential Equations II, 2nd ed., section IV.8 (recalled). One
 * object serves one thread; nothing is allocated after construction.
 */
public final class RosenbrockIntegrator {
  /** Sign, exponent and the three highest bits of the mantissa of a double. */
  private static final long EIGHTHS = -1L << 49;

  private static final double SAFETY = 0.88;
  private static final double MOST_GROWTH = 6;
  private static final double MOST_SHRINKAGE = 0.2;

  /** An error below this tells nothing of its trend. */
  private static final double LEAST_ERROR = 1e-2;

  /** A step this small against the time reached cannot move the clock. */
  private static final double SMALLEST_RELATIVE_STEP = 1e-14;

  /** A forecast takes some tens of steps, a reference at 1e-10 some thousands. */
  private static final int MOST_ATTEMPTS = 100_000;

  private final BorderedSystem system;
  private final RosenbrockMethod method;
  private final Tolerance tolerance;
  private final int nodes;
  private final int length;
  private final BorderedTridiagonal jacobian;
  private final double[] timeSlope;
  private final double[][] stages;
  private final double[] stageState;
  private final double[] stageRates;
  private final Step step;

  /**
   * An integrator of order 3, the cheapest at the accuracy of a forecast.
   *
   * @param system the system
   * @param tolerance how far a step may be off
   */
  public RosenbrockIntegrator(BorderedSystem system, Tolerance tolerance) {
    this(system, RosenbrockMethod.rodas3(), tolerance);
  }

  RosenbrockIntegrator(BorderedSystem system, RosenbrockMethod method, Tolerance tolerance) {
    this.system = system;
    this.method = method;
    this.tolerance = tolerance;
    this.nodes = system.nodes();
    this.length = nodes + 2;
    this.jacobian = new BorderedTridiagonal(nodes);
    this.timeSlope = new double[length];
    this.stages = new double[method.stages()][length];
    this.stageState = new double[length];
    this.stageRates = new double[length];
    this.step = new Step(length);
  }

  /**
   * Integrates from a time until an end or until the listener says so.
   *
   * @param start when the state holds
   * @param end when to stop, after {@code start}
   * @param firstStep the first step to try, above 0
   * @param longestStep no step is longer, above 0
   * @param state the state at the start, replaced by the state at the end of the last step
   * @param listener sees every accepted step
   * @return the time reached
   * @throws IntegrationFailure where the step falls below rounding, as it does where a rate is not
   *     a number, or where 100 000 steps do not reach the end
   */
  public double integrate(
      double start,
      double end,
      double firstStep,
      double longestStep,
      double[] state,
      StepListener listener) {
    begin(start, state);
    double time = start;
    double h = Math.min(Math.min(firstStep, longestStep), end - start);
    double error = Double.NaN;
    double lastStep = 0;
    double lastError = 0;
    boolean refused = false;
    int attempts = 0;
    while (time < end) {
      system.linearise(time, step.startState, jacobian, timeSlope);
      while (true) {
        // The share of h only keeps the bound above 0 at time 0, where any step may be tried.
        if (!(h > SMALLEST_RELATIVE_STEP * Math.max(Math.abs(time), h * 1e-3))) {
          throw failure("the step fell to " + scientific(h), time, error);
        }
        if (++attempts > MOST_ATTEMPTS) {
          throw failure(MOST_ATTEMPTS + " steps did not reach the end", time, error);
        }
        boolean last = time + h >= end;
        if (last) {
          h = end - time;
        }
        error = attempt(time, h);
        double factor = SAFETY * Math.pow(error, -1.0 / method.order());
        if (error <= 1) {
          if (lastStep > 0) {
            factor *= Math.min(1, h / lastStep * Math.pow(lastError / error, 1.0 / method.order()));
          }
          lastStep = h;
          lastError = Math.max(LEAST_ERROR, error);
        }
        factor =
            Double.isNaN(factor)
                ? MOST_SHRINKAGE
                : Math.min(MOST_GROWTH, Math.max(MOST_SHRINKAGE, factor));
        if (error <= 1) {
          step.end = last ? end : time + h;
          time = step.end;
          h = Math.min(longestStep, stepOfLadder(h * (refused ? Math.min(1, factor) : factor)));
          refused = false;
          break;
        }
        refused = true;
        h = stepOfLadder(h * factor);
      }
      system.rates(time, step.endState, step.endRates);
      boolean goOn = listener.accepted(step);
      step.advance();
      if (!goOn) {
        break;
      }
    }
    System.arraycopy(step.startState, 0, state, 0, length);
    return time;
  }

  /**
   * Integrates with given steps, whatever their error. Two cases solved with the same steps differ
   * smoothly in all that distinguishes them, as they must where their difference is taken. Source:
   * Bock 1981, internal numerical differentiation, in Modelling of Chemical Reaction Systems
   * (recalled).
   *
   * @param start when the state holds
   * @param ends when each step ends, rising from above {@code start}
   * @param state the state at the start, replaced by the state at the end of the last step
   * @param listener sees every step; what it says is not heard
   */
  public void follow(double start, double[] ends, double[] state, StepListener listener) {
    begin(start, state);
    for (double end : ends) {
      system.linearise(step.start, step.startState, jacobian, timeSlope);
      attempt(step.start, end - step.start);
      step.end = end;
      system.rates(end, step.endState, step.endRates);
      listener.accepted(step);
      step.advance();
    }
    System.arraycopy(step.startState, 0, state, 0, length);
  }

  private void begin(double start, double[] state) {
    System.arraycopy(state, 0, step.startState, 0, length);
    step.earlier = start;
    step.start = start;
    system.rates(start, step.startState, step.startRates);
  }

  /**
   * The next shorter of eight lengths an octave, to which the mantissa is cut. Where rates are
   * rough, as in a room that was logged, a step hangs on the one before so closely that rounding
   * would grow from step to step until two machines took different ones.
   */
  private static double stepOfLadder(double h) {
    return Double.longBitsToDouble(Double.doubleToRawLongBits(h) & EIGHTHS);
  }

  /** Tries one step; its end lies in {@code step.endState}. */
  private double attempt(double time, double h) {
    jacobian.factor(1 / (h * method.gamma()));
    double[] previousRates = step.startRates;
    for (int i = 0; i < stages.length; i++) {
      double[] k = stages[i];
      double[] rates = stageRates;
      if (i == 0) {
        rates = step.startRates;
      } else if (method.ownRates()[i]) {
        combine(method.a()[i], stageState);
        system.rates(time + method.alpha()[i] * h, stageState, stageRates);
      } else {
        rates = previousRates;
      }
      previousRates = rates;
      double byTime = h * method.gammaOfStage()[i];
      for (int n = 0; n < length; n++) {
        k[n] = rates[n] + byTime * timeSlope[n];
      }
      double[] c = method.c()[i];
      for (int j = 0; j < i; j++) {
        double weight = c[j] / h;
        if (weight != 0) {
          double[] earlier = stages[j];
          for (int n = 0; n < length; n++) {
            k[n] += weight * earlier[n];
          }
        }
      }
      jacobian.solve(k);
    }
    combine(method.m(), step.endState);
    return error();
  }

  /** The state at the start of the step plus a weighted sum of the stages. */
  private void combine(double[] weights, double[] out) {
    System.arraycopy(step.startState, 0, out, 0, length);
    accumulate(weights, out);
  }

  private void accumulate(double[] weights, double[] out) {
    for (int j = 0; j < weights.length; j++) {
      double weight = weights[j];
      if (weight != 0) {
        double[] k = stages[j];
        for (int n = 0; n < length; n++) {
          out[n] += weight * k[n];
        }
      }
    }
  }

  /** The step's error over what is allowed: root mean square over the nodes, or the border's. */
  private double error() {
    double[] k = stages[stages.length - 1];
    double[] from = step.startState;
    double[] to = step.endState;
    double sum = 0;
    for (int n = 0; n < nodes; n++) {
      double allowed =
          tolerance.node() + tolerance.relative() * Math.max(Math.abs(from[n]), Math.abs(to[n]));
      double part = k[n] / allowed;
      sum += part * part;
    }
    double border = Math.abs(k[nodes]) / tolerance.border();
    double atNodes = Math.sqrt(sum / nodes);
    // A NaN on either side is passed on and refuses the step.
    return Math.max(border, atNodes);
  }

  private IntegrationFailure failure(String what, double time, double error) {
    return new IntegrationFailure(
        "Rosenbrock method of order "
            + method.order()
            + ": "
            + what
            + " at time "
            + scientific(time)
            + ", error over tolerance "
            + scientific(error));
  }

  private static String scientific(double value) {
    return String.format(Locale.ROOT, "%.4g", value);
  }
}
