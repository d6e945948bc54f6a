package starchfilm.material.air;

import static starchfilm.numerics.units.Nature.GAS_CONSTANT_J_PER_MOL_K;

/**
 * Air and water vapour as a mixture of ideal gases.
 *
 * <p>Valid for: rooms near one atmosphere and up to 100 C, where the ideal law is good to 0.5 %.
 */
public final class HumidAir {

  /** One standard atmosphere (Pa). Source: by definition. */
  public static final double STANDARD_PRESSURE_PA = 101325;

  /** Molar mass of water (kg/mol). Source: ASHRAE Handbook Fundamentals 2017, chapter 1. */
  public static final double WATER_KG_PER_MOL = 18.015268e-3;

  /** Molar mass of dry air (kg/mol). Source: ASHRAE Handbook Fundamentals 2017, chapter 1. */
  public static final double DRY_AIR_KG_PER_MOL = 28.966e-3;

  /**
   * How much lighter than air a vapour molecule is (ratio, 0.378): {@code 1 - M_w/M_a}, the
   * coefficient of the virtual density.
   */
  public static final double LIGHTNESS_OF_VAPOUR = 1 - WATER_KG_PER_MOL / DRY_AIR_KG_PER_MOL;

  /** Specific heat of dry air (J/(kg K)). Source: ASHRAE Fundamentals 2017, chapter 1. */
  public static final double DRY_AIR_J_PER_KG_K = 1006;

  /** Specific heat of water vapour (J/(kg K)). Source: ASHRAE Fundamentals 2017, chapter 1. */
  public static final double VAPOUR_J_PER_KG_K = 1860;

  private HumidAir() {}

  /**
   * Density of humid air.
   *
   * <p>{@code rho = (p - 0.378 e) M_a/(R T)}: the density dry air would have at the lower
   * ("virtual") pressure, for vapour is lighter than air.
   *
   * @param temperatureK temperature (K)
   * @param vapourPressurePa pressure of the vapour (Pa)
   * @param pressurePa total pressure (Pa)
   * @return density (kg/m3)
   */
  public static double densityKgPerM3(
      double temperatureK, double vapourPressurePa, double pressurePa) {
    return (pressurePa - LIGHTNESS_OF_VAPOUR * vapourPressurePa)
        * DRY_AIR_KG_PER_MOL
        / (GAS_CONSTANT_J_PER_MOL_K * temperatureK);
  }

  /**
   * Heat that a volume of humid air takes up per kelvin, at constant pressure.
   *
   * @param temperatureK temperature (K)
   * @param vapourPressurePa pressure of the vapour (Pa)
   * @param pressurePa total pressure (Pa)
   * @return volumetric heat capacity (J/(m3 K))
   */
  public static double heatCapacityJPerM3K(
      double temperatureK, double vapourPressurePa, double pressurePa) {
    double dryAir = (pressurePa - vapourPressurePa) * (DRY_AIR_KG_PER_MOL * DRY_AIR_J_PER_KG_K);
    double vapour = vapourPressurePa * (WATER_KG_PER_MOL * VAPOUR_J_PER_KG_K);
    return (dryAir + vapour) / (GAS_CONSTANT_J_PER_MOL_K * temperatureK);
  }
}
