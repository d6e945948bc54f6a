package starchfilm.material.air;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Diffusion coefficient of water vapour in air.
 *
 * <p>{@code D = 1.87e-10 T^2.072 / p}, D in m2/s, T in K, p in standard atmospheres.
 *
 * <p>Valid for: 282 to 450 K. Outside: the power law runs on.
 *
 * <p>Source: Marrero and Mason 1972, Gaseous diffusion coefficients, J. Phys. Chem. Ref. Data 1:3,
 * table of recommended fits (recalled). Another common form, {@code 2.19e-5 (T/273.15)^1.81}, lies
 * 1 to 3 % higher.
 */
public final class MarreroMason1972 {
  /** Where the formula is published. */
  public static final Source SOURCE =
      new Source("Marrero and Mason 1972, J. Phys. Chem. Ref. Data 1:3", Check.RECALLED);

  private static final double COEFFICIENT = 1.87e-10;
  private static final double EXPONENT = 2.072;

  /**
   * Diffusion coefficient of water vapour in air.
   *
   * @param temperatureK temperature (K)
   * @param pressurePa total pressure (Pa)
   * @return diffusion coefficient (m2/s)
   */
  public double m2PerS(double temperatureK, double pressurePa) {
    double pressureAtm = pressurePa / HumidAir.STANDARD_PRESSURE_PA;
    return COEFFICIENT * Math.pow(temperatureK, EXPONENT) / pressureAtm;
  }
}
