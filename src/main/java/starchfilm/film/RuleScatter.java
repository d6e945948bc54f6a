package starchfilm.film;

import starchfilm.numerics.evidence.Band;

/**
 * How far a new laboratory's figure lies from a rule: one standard deviation, as a factor or as a
 * difference.
 *
 * @param scale whether figures scatter by a factor or by a difference
 * @param oneSigma one standard deviation: a factor of at least 1, or a difference of at least 0 in
 *     the property's unit
 */
record RuleScatter(ScatterScale scale, double oneSigma) {
  /** The scale on which the scatter is normal. */
  enum ScatterScale {
    /** The logarithm of the property is normal. */
    FACTOR,
    /** The property itself is normal. */
    DIFFERENCE
  }

  /** Figures scatter by a factor, times or divided by. */
  static RuleScatter factor(double oneSigma) {
    return new RuleScatter(ScatterScale.FACTOR, oneSigma);
  }

  /** Figures scatter by a difference, plus or minus, in the property's unit. */
  static RuleScatter plusMinus(double oneSigma) {
    return new RuleScatter(ScatterScale.DIFFERENCE, oneSigma);
  }

  /**
   * The band around a rule's value, with the uncertainty of what went in added in squares.
   *
   * @param middle the rule's value at the best input; 0 or more
   * @param below the rule's value with the input one standard deviation lower
   * @param above the rule's value with the input one standard deviation higher
   * @param moreLogSd standard deviation of the logarithm that other influences add; only a scatter
   *     by a factor takes it
   * @return 10, 50 and 90 % points
   */
  Band band(double middle, double below, double above, double moreLogSd) {
    if (scale == ScatterScale.DIFFERENCE) {
      return Band.normal(middle, Math.hypot(oneSigma, (above - below) / 2));
    }
    if (middle == 0) {
      // A bone-dry film has no moisture, and no factor changes that.
      return new Band(0, 0, 0);
    }
    double fromInput = Math.log(above / below) / 2;
    double logSd =
        Math.sqrt(Math.pow(Math.log(oneSigma), 2) + fromInput * fromInput + moreLogSd * moreLogSd);
    return Band.logNormal(middle, Math.exp(logSd));
  }
}
