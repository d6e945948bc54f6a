package starchfilm.material.air;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Saturation pressure of water, the auxiliary equation of the international steam tables.
 *
 * <p>{@code ln(p/p_c) = (T_c/T)(a1 v + a2 v^1.5 + a3 v^3 + a4 v^3.5 + a5 v^4 + a6 v^7.5)}, with
 * {@code v = 1 - T/T_c}.
 *
 * <p>Valid for: 273.16 K to 647.096 K. Outside: below the triple point it runs on smoothly over
 * supercooled liquid water, not over ice (at -5 C within 0.1 % of the Smithsonian tables); above
 * the critical point it is NaN.
 *
 * <p>Source: Wagner and Pruss 1993, J. Phys. Chem. Ref. Data 22:783, equation 1; IAPWS release
 * SR1-86(1992) (recalled; confirmed to 0.03 % against IAPWS-IF97 from 0.01 to 95 C).
 *
 * <p>Deviation: half powers are formed with one square root, because this sits in the innermost
 * loop of the solver.
 */
public final class WagnerPruss1993 {
  /** Where the formula is published. */
  public static final Source SOURCE =
      new Source(
          "Wagner and Pruss 1993, J. Phys. Chem. Ref. Data 22:783, equation 1", Check.RECALLED);

  private static final double CRITICAL_K = 647.096;
  private static final double CRITICAL_PA = 22.064e6;
  private static final double A1 = -7.85951783;
  private static final double A2 = 1.84408259;
  private static final double A3 = -11.7866497;
  private static final double A4 = 22.6807411;
  private static final double A5 = -15.9618719;
  private static final double A6 = 1.80122502;

  /**
   * Saturation pressure over liquid water.
   *
   * @param temperatureK temperature (K)
   * @return saturation pressure (Pa)
   */
  public double pa(double temperatureK) {
    double v = 1 - temperatureK / CRITICAL_K;
    double root = Math.sqrt(v);
    double v3 = v * v * v;
    double whole = v * A1 + v3 * (A3 + v * A5);
    double half = root * (v * A2 + v3 * (A4 + v3 * v * A6));
    return CRITICAL_PA * Math.exp(CRITICAL_K / temperatureK * (whole + half));
  }
}
