package starchfilm.material.air;

/** How well dry air conducts heat. */
public interface AirConductivity {
  /**
   * Thermal conductivity of dry air.
   *
   * @param temperatureK temperature (K)
   * @return conductivity (W/(m K))
   */
  double conductivityWPerMK(double temperatureK);
}
