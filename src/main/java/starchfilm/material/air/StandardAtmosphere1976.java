package starchfilm.material.air;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Viscosity and thermal conductivity of dry air.
 *
 * <p>{@code mu = 1.458e-6 T^1.5/(T + 110.4)} Pa s; {@code k = 2.64638e-3 T^1.5/(T + 245.4
 * 10^(-12/T))} W/(m K); T in K.
 *
 * <p>Valid for: 200 to 400 K, far inside the range of the source. The moisture of room air changes
 * either by less than 1 % up to 30 C and by about 2 % in saturated air at 40 C; it is left out.
 *
 * <p>Source: U.S. Standard Atmosphere 1976, equations 51 and 53 (recalled; within 1 % of Incropera
 * et al., Fundamentals of Heat and Mass Transfer, table A.4).
 */
public final class StandardAtmosphere1976 {
  /** Where both formulas are published. */
  public static final Source SOURCE =
      new Source("U.S. Standard Atmosphere 1976, equations 51 and 53", Check.RECALLED);

  private static final double VISCOSITY_COEFFICIENT = 1.458e-6;
  private static final double VISCOSITY_SHIFT_K = 110.4;
  private static final double CONDUCTIVITY_COEFFICIENT = 2.64638e-3;
  private static final double CONDUCTIVITY_SHIFT_K = 245.4;
  private static final double CONDUCTIVITY_EXPONENT_K = -12;

  /**
   * Dynamic viscosity of dry air.
   *
   * @param temperatureK temperature (K)
   * @return viscosity (Pa s)
   */
  public double viscosityPaS(double temperatureK) {
    return VISCOSITY_COEFFICIENT
        * temperatureK
        * Math.sqrt(temperatureK)
        / (temperatureK + VISCOSITY_SHIFT_K);
  }

  /**
   * Thermal conductivity of dry air.
   *
   * @param temperatureK temperature (K)
   * @return conductivity (W/(m K))
   */
  public double conductivityWPerMK(double temperatureK) {
    double shiftK = CONDUCTIVITY_SHIFT_K * Math.pow(10, CONDUCTIVITY_EXPONENT_K / temperatureK);
    return CONDUCTIVITY_COEFFICIENT
        * temperatureK
        * Math.sqrt(temperatureK)
        / (temperatureK + shiftK);
  }
}
