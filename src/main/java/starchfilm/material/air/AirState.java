package starchfilm.material.air;

/**
 * The air over a plate at one moment.
 *
 * @param temperatureK temperature (K)
 * @param relativeHumidity vapour pressure over saturation pressure (ratio, 0 to 1)
 * @param speedMPerS speed along the plate (m/s, 0 or more)
 */
public record AirState(double temperatureK, double relativeHumidity, double speedMPerS) {
  /**
   * The same air at another speed.
   *
   * @param otherMPerS speed (m/s)
   * @return the air
   */
  public AirState withSpeed(double otherMPerS) {
    return new AirState(temperatureK, relativeHumidity, otherMPerS);
  }
}
