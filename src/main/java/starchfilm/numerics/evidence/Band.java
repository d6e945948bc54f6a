package starchfilm.numerics.evidence;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * A forecast figure with its range: the values that 10, 50 and 90 % of the likely cases stay below.
 *
 * <p>An end may be positive infinity (a time that never comes); no part may be NaN.
 *
 * @param low the 10 % point
 * @param middle the median
 * @param high the 90 % point
 */
public record Band(double low, double middle, double high) {
  /** The standard normal's 90 % point. Source: any table of the normal distribution. */
  public static final double Z90 = 1.2815515655446004;

  /** Checks the order. */
  public Band {
    if (!(low <= middle && middle <= high)) {
      throw new IllegalArgumentException(
          "a band must be in order, not " + low + ", " + middle + ", " + high);
    }
  }

  /**
   * A figure without a range.
   *
   * @param value the figure
   * @return both ends and the middle at it
   */
  public static Band exact(double value) {
    return new Band(value, value, value);
  }

  /**
   * A band around a median whose logarithm is normal.
   *
   * @param median the median; above 0
   * @param factor the factor that one standard deviation multiplies or divides by; at least 1
   * @return the 10, 50 and 90 % points
   */
  public static Band logNormal(double median, double factor) {
    double reach = Math.pow(factor, Z90);
    return new Band(median / reach, median, median * reach);
  }

  /**
   * A band around a normal mean.
   *
   * @param mean the mean
   * @param sd the standard deviation, in the mean's unit; at least 0
   * @return the 10, 50 and 90 % points
   */
  public static Band normal(double mean, double sd) {
    return new Band(mean - Z90 * sd, mean, mean + Z90 * sd);
  }

  /** Low end, middle and high end. */
  public DoubleStream points() {
    return DoubleStream.of(low, middle, high);
  }

  /**
   * The band of a figure.
   *
   * @param figure with its standard uncertainty, as of a normal
   * @return the 10, 50 and 90 % points
   */
  public static Band of(Estimate figure) {
    return normal(figure.value(), figure.sd());
  }

  /**
   * The middle with the standard uncertainty of a normal that has these ends.
   *
   * @return the estimate; the inverse of {@link #of}
   */
  public Estimate estimate() {
    return new Estimate(middle, (high - low) / (2 * Z90));
  }

  /**
   * The band of what a figure is the logarithm of.
   *
   * @param logarithm with its standard uncertainty, as of a normal
   * @return the 10, 50 and 90 % points
   */
  public static Band exp(Estimate logarithm) {
    return of(logarithm).map(Math::exp);
  }

  /**
   * The band of another figure.
   *
   * @param figure how it follows from this one; it rises with it
   * @return the same points of it
   */
  public Band map(DoubleUnaryOperator figure) {
    return new Band(
        figure.applyAsDouble(low), figure.applyAsDouble(middle), figure.applyAsDouble(high));
  }

  /**
   * The same band in another unit.
   *
   * @param factor what each part is multiplied by; above 0
   * @return the scaled band
   */
  public Band times(double factor) {
    return map(part -> part * factor);
  }
}
