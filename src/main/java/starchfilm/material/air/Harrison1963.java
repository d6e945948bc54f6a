package starchfilm.material.air;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.units.Units;

/**
 * Latent heat of vaporisation of water as a straight line.
 *
 * <p>{@code lambda = 2501 - 2.361 t} kJ/kg, t in C.
 *
 * <p>Valid for: 0 to 60 C, within 0.1 % of IAPWS-IF97. Outside: the line runs on; at 95 C it is 0.3
 * % high.
 *
 * <p>Source: Harrison 1963, as equation 3-1 of Allen et al. 1998, Crop evapotranspiration, FAO
 * Irrigation and Drainage Paper 56, annex 3 (recalled).
 */
public final class Harrison1963 {
  /** Where the formula is published. */
  public static final Source SOURCE =
      new Source(
          "Harrison 1963, in Allen et al. 1998, FAO Irrigation and Drainage Paper 56, annex 3,"
              + " equation 3-1",
          Check.RECALLED);

  private static final double AT_ZERO_J_PER_KG = 2501e3;
  private static final double SLOPE_J_PER_KG_K = -2361;

  /**
   * Latent heat of vaporisation of pure water.
   *
   * @param temperatureK temperature of the surface (K)
   * @return latent heat (J/kg)
   */
  public double jPerKg(double temperatureK) {
    return AT_ZERO_J_PER_KG + SLOPE_J_PER_KG_K * (temperatureK - Units.ZERO_CELSIUS_K);
  }
}
