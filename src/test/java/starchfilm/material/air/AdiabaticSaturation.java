package starchfilm.material.air;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import starchfilm.numerics.units.Units;

/**
 * The thermodynamic wet-bulb temperature: that of air brought to saturation by water of the same
 * temperature, with no heat from outside.
 *
 * <p>{@code W = [(2501 - 2.326 t*) W_s* - 1.006 (t - t*)]/(2501 + 1.86 t - 4.186 t*)}, with W
 * humidity ratio, t dry bulb, t* wet bulb (C), W_s* the humidity ratio of saturated air at t*.
 *
 * <p>Valid for: wet bulbs above 0 C. Outside: {@link #wetBulbK} refuses, for over ice the formula
 * is another.
 *
 * <p>Source: ASHRAE Handbook Fundamentals 2017, chapter 1, equation 33 (recalled; within 0.02 K of
 * the psychrolib reference library).
 */
public final class AdiabaticSaturation {
  private static final double ACCURACY_K = 1e-9;
  private static final int MAX_EVALUATIONS = 200;

  private final WagnerPruss1993 saturation;
  private final double pressurePa;

  /**
   * Sets the surroundings.
   *
   * @param saturation the saturation pressure to use
   * @param pressurePa total pressure (Pa)
   */
  public AdiabaticSaturation(WagnerPruss1993 saturation, double pressurePa) {
    this.saturation = saturation;
    this.pressurePa = pressurePa;
  }

  /**
   * Wet-bulb temperature of air.
   *
   * @param temperatureK dry-bulb temperature (K)
   * @param relativeHumidity relative humidity (ratio, 0 to 1)
   * @return wet-bulb temperature (K)
   * @throws IllegalArgumentException if the wet bulb would lie below 0 C
   */
  public double wetBulbK(double temperatureK, double relativeHumidity) {
    double humidityRatio =
        humidityRatio(relativeHumidity * saturation.pa(temperatureK), pressurePa);
    double lowestK = Units.ZERO_CELSIUS_K;
    if (!(humidityRatioAt(temperatureK, lowestK) <= humidityRatio)) {
      throw new IllegalArgumentException(
          "wet bulb: air at "
              + (temperatureK - Units.ZERO_CELSIUS_K)
              + " C and relative humidity "
              + relativeHumidity
              + " has its wet bulb below 0 C, where water freezes; allowed are wet bulbs above 0"
              + " C; give warmer or damper air");
    }
    if (relativeHumidity >= 1) {
      return temperatureK;
    }
    return new BrentSolver(ACCURACY_K)
        .solve(
            MAX_EVALUATIONS,
            wetBulbK -> humidityRatioAt(temperatureK, wetBulbK) - humidityRatio,
            lowestK,
            temperatureK);
  }

  /**
   * Humidity ratio that belongs to a dry and a wet bulb.
   *
   * @param temperatureK dry-bulb temperature (K)
   * @param wetBulbK wet-bulb temperature (K)
   * @return kg vapour per kg dry air; negative where no air has this pair
   */
  public double humidityRatioAt(double temperatureK, double wetBulbK) {
    double dryC = temperatureK - Units.ZERO_CELSIUS_K;
    double wetC = wetBulbK - Units.ZERO_CELSIUS_K;
    double saturated = humidityRatio(saturation.pa(wetBulbK), pressurePa);
    return ((2501 - 2.326 * wetC) * saturated - 1.006 * (dryC - wetC))
        / (2501 + 1.86 * dryC - 4.186 * wetC);
  }

  /**
   * Kilograms of vapour per kilogram of dry air: ASHRAE Handbook Fundamentals 2017, chapter 1,
   * equation 20 (recalled).
   */
  static double humidityRatio(double vapourPa, double pressurePa) {
    return 0.621945 * vapourPa / (pressurePa - vapourPa);
  }
}
