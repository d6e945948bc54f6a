package starchfilm.numerics.evidence;

/**
 * A figure that goes into the model, with its standard uncertainty.
 *
 * @param value the best value
 * @param sd its standard uncertainty, in the value's unit; at least 0
 */
public record Estimate(double value, double sd) {
  /** Checks that both are finite numbers and the uncertainty is not negative. */
  public Estimate {
    if (!Double.isFinite(value) || !(sd >= 0) || Double.isInfinite(sd)) {
      throw new IllegalArgumentException(
          "an estimate needs a finite value and an uncertainty of 0 or more, not "
              + value
              + " and "
              + sd);
    }
  }

  /**
   * A figure taken as exact.
   *
   * @param value the value
   * @return the value without uncertainty
   */
  public static Estimate exact(double value) {
    return new Estimate(value, 0);
  }

  /**
   * A figure known only to lie between two ends, every place between them equally likely.
   *
   * <p>{@code value = (a + b)/2, sd = (b - a)/sqrt(12)}. Source: JCGM 100:2008 (GUM), 4.3.7,
   * equations 6 and 7 (recalled).
   *
   * @param from one end
   * @param to the other end
   * @return the middle with the standard uncertainty of the rectangle
   */
  public static Estimate between(double from, double to) {
    return new Estimate((from + to) / 2, Math.abs(to - from) / Math.sqrt(12));
  }

  /**
   * The same estimate in another unit.
   *
   * @param factor what value and uncertainty are multiplied by
   * @return the scaled estimate
   */
  public Estimate times(double factor) {
    return new Estimate(value * factor, sd * Math.abs(factor));
  }

  /**
   * The sum of two independent estimates.
   *
   * @param other the other
   * @return the sum, with the uncertainties added in squares
   */
  public Estimate plus(Estimate other) {
    return new Estimate(value + other.value, Math.hypot(sd, other.sd));
  }

  /**
   * The difference of two independent estimates.
   *
   * @param other what is taken off
   * @return the difference, with the uncertainties added in squares
   */
  public Estimate minus(Estimate other) {
    return new Estimate(value - other.value, Math.hypot(sd, other.sd));
  }

  /**
   * The product of two independent estimates, to first order.
   *
   * <p>{@code u^2 = (b u_a)^2 + (a u_b)^2}. Source: JCGM 100:2008 (GUM), 5.1.2, equation 10
   * (recalled).
   *
   * @param other the other
   * @return the product
   */
  public Estimate times(Estimate other) {
    return new Estimate(value * other.value, Math.hypot(sd * other.value, value * other.sd));
  }

  /**
   * The quotient of two independent estimates, to first order.
   *
   * @param other the divisor, not 0
   * @return the quotient
   */
  public Estimate over(Estimate other) {
    double quotient = value / other.value;
    return new Estimate(quotient, Math.hypot(sd / other.value, quotient * other.sd / other.value));
  }

  /**
   * The spread of the logarithm of a positive figure that is known to a relative standard deviation
   * r, {@code sqrt[ln(1 + r^2)]}. What was noted is taken as the middle, so that the mean of a
   * figure known to 50 % lies 12 % above it. Source: any text on the log-normal distribution.
   *
   * @param relativeSd r, 0 or more
   */
  public static double sdOfLog(double relativeSd) {
    return Math.sqrt(Math.log1p(relativeSd * relativeSd));
  }
}
