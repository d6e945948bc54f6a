package starchfilm.material.air;

/** How much dry air resists being sheared. */
public interface AirViscosity {
  /**
   * Dynamic viscosity of dry air.
   *
   * @param temperatureK temperature (K)
   * @return viscosity (Pa s)
   */
  double viscosityPaS(double temperatureK);
}
