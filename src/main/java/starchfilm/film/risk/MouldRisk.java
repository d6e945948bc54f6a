package starchfilm.film.risk;

/**
 * The risk that a plate grows mould before it is dry.
 *
 * <p>The hours in which the wettest part of the thick spot lets mould grow are added up, each
 * weighted with its speed by {@link MouldGrowth}. Below 24 weighted hours the risk is low, to 48
 * watch, to 96 likely, beyond expected (judged; a freshly boiled paste in a clean kitchen is
 * assumed, and no preservative but the vinegar's acid).
 *
 * @param level how likely
 * @param weightedHours hours at full growing speed that the drying amounts to
 * @param growthFromS when growth may first show, since the pour (s); positive infinity for never
 */
public record MouldRisk(RiskLevel level, double weightedHours, double growthFromS) {
  private static final double WATCH_FROM_H = 24;

  /** Weighted hours after which growth may show. */
  static final double SHOWS_AFTER_H = 48;

  private static final double EXPECTED_FROM_H = 96;

  static RiskLevel level(double weightedHours) {
    if (weightedHours < WATCH_FROM_H) {
      return RiskLevel.LOW;
    }
    if (weightedHours < SHOWS_AFTER_H) {
      return RiskLevel.WATCH;
    }
    return weightedHours < EXPECTED_FROM_H ? RiskLevel.LIKELY : RiskLevel.EXPECTED;
  }
}
