package starchfilm.material.air;

import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/** The pressure of water vapour at rest over pure liquid water. */
public interface SaturationPressure {
  /**
   * Saturation pressure over liquid water.
   *
   * @param temperatureK temperature (K)
   * @return saturation pressure (Pa)
   */
  double pa(double temperatureK);

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
