package starchfilm.learning.summary;

import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * Figures learnt of one factor, in the factor's deviation: a natural logarithm where it multiplies,
 * else in its own unit.
 *
 * @param factor which
 * @param deviation the most likely deviation from the textbook
 * @param sd its standard deviation now
 * @param sdBefore its standard deviation in the textbook, for the same parts
 */
public record ParameterLearnt(
    UncertainParameter factor, double deviation, double sd, double sdBefore) {
  private static final double HARDLY = 0.9;

  /**
   * Coverage factor beyond which what was learnt is no longer believed: 1 in 100 lies outside (JCGM
   * 100:2008, 6.3.3, recalled).
   */
  private static final double BELIEVED = 3;

  /** Checks that neither standard deviation is negative. */
  public ParameterLearnt {
    if (!(sd >= 0 && sdBefore >= 0)) {
      throw new IllegalArgumentException("a standard deviation is 0 or more");
    }
  }

  /**
   * Tells whether the weighings narrow it.
   *
   * @return false where its standard deviation is hardly smaller than before
   */
  public boolean isTold() {
    return sd < HARDLY * sdBefore;
  }

  /**
   * Tells whether it lies so far from the textbook that something was more likely noted wrongly.
   *
   * @return true where it is off by more than three of the textbook's standard deviations
   */
  public boolean isHardlyBelieved() {
    return isTold() && Math.abs(deviation) > BELIEVED * sdBefore;
  }
}
