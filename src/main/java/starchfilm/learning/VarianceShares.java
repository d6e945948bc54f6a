package starchfilm.learning;

import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * How the textbook's spread of a factor divides into a part common to all plates, a part of the
 * room, a part of the starch kind and a part of the plate alone.
 *
 * <p>The shares are of the variance and add up to 1 (judged, no source). The air over a plate goes
 * with the room, the film with the starch; a hygrometer's or a thermometer's error goes half with
 * the room it hangs in; a pour varies from plate to plate more than from hand to hand.
 */
record VarianceShares(double common, double room, double kind, double plate) {
  /**
   * Factors that weighings are fitted with; plasticiser and unevenness are left as they are known.
   */
  static final int COUNT = UncertainParameter.PLASTICISER.ordinal();

  static VarianceShares of(UncertainParameter factor) {
    return switch (factor) {
      case AIR_SIDE -> new VarianceShares(0.30, 0.45, 0, 0.25);
      case DIFFUSIVITY -> new VarianceShares(0.50, 0, 0.35, 0.15);
      case ISOTHERM -> new VarianceShares(0.45, 0, 0.40, 0.15);
      case BENCH -> new VarianceShares(0.35, 0.40, 0, 0.25);
      case HUMIDITY, AIR_TEMPERATURE -> new VarianceShares(0, 0.5, 0, 0.5);
      case THICKNESS -> new VarianceShares(0.40, 0, 0, 0.60);
      case SOLIDS -> new VarianceShares(0.25, 0, 0, 0.75);
      case PLASTICISER, UNEVENNESS -> new VarianceShares(0, 0, 0, 1);
    };
  }

  /** Variance of a share of a factor's spread. */
  static double variance(UncertainParameter factor, double share) {
    return share * factor.spread() * factor.spread();
  }

  /** The fitted factor at an index. */
  static UncertainParameter factor(int index) {
    return UncertainParameter.values()[index];
  }
}
