package starchfilm.drying.uncertainty;

import java.util.Arrays;

/**
 * One likely case: how far each {@link UncertainParameter} is from its middle.
 *
 * <p>A deviation is a natural logarithm for a log-normal factor; points over 100, kelvin or a
 * relative share for the others.
 */
public final class ParameterSample {
  /** Every factor at its middle. */
  public static final ParameterSample NONE =
      new ParameterSample(new double[UncertainParameter.values().length]);

  private final double[] values;

  private ParameterSample(double[] values) {
    this.values = values;
  }

  /**
   * Deviations in the order of {@link UncertainParameter}.
   *
   * @param values one a factor
   * @return the deviations
   */
  public static ParameterSample of(double... values) {
    if (values.length != UncertainParameter.values().length) {
      throw new IllegalArgumentException(
          "deviations need one value a factor, not " + values.length);
    }
    return new ParameterSample(values.clone());
  }

  /**
   * These deviations with one of them changed.
   *
   * @param factor which
   * @param value its new deviation
   * @return the changed deviations
   */
  public ParameterSample with(UncertainParameter factor, double value) {
    double[] changed = values.clone();
    changed[factor.ordinal()] = value;
    return new ParameterSample(changed);
  }

  /**
   * One deviation.
   *
   * @param factor of which factor
   * @return the deviation
   */
  public double of(UncertainParameter factor) {
    return values[factor.ordinal()];
  }

  /**
   * What a factor multiplies by.
   *
   * @param factor which
   * @return the exponential of its deviation where it is log-normal, else 1 plus its deviation
   */
  public double multiplier(UncertainParameter factor) {
    double value = of(factor);
    return factor.isLogNormal() ? Math.exp(value) : 1 + value;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ParameterSample that && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(values);
  }

  @Override
  public String toString() {
    return Arrays.toString(values);
  }
}
