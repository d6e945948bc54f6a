package starchfilm.material.air;

import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/** How fast water vapour spreads in still air. */
public interface VapourDiffusivity {
  /**
   * Diffusion coefficient of water vapour in air.
   *
   * @param temperatureK temperature (K)
   * @param pressurePa total pressure (Pa)
   * @return diffusion coefficient (m2/s)
   */
  double m2PerS(double temperatureK, double pressurePa);

  /**
   * Where the formula is published.
   *
   * @return the source
   */
  Source source();

  /**
   * Where the formula was fitted.
   *
   * @return temperatures (K)
   */
  ValidRange range();
}
