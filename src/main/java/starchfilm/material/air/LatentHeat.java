package starchfilm.material.air;

import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/** The heat that turns liquid water into vapour. */
public interface LatentHeat {
  /**
   * Latent heat of vaporisation of pure water.
   *
   * @param temperatureK temperature of the surface (K)
   * @return latent heat (J/kg)
   */
  double jPerKg(double temperatureK);

  /**
   * Where the formula is published.
   *
   * @return the source
   */
  Source source();

  /**
   * Where the formula holds.
   *
   * @return temperatures (K)
   */
  ValidRange range();
}
