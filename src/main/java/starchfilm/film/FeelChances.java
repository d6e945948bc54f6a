package starchfilm.film;

import java.util.EnumMap;
import java.util.Map;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How likely each feel is, as far as the glass transition is known.
 *
 * @param aboveGlassK middle of x = T - Tg of the fresh film (K)
 * @param sdK standard deviation of x (K, above 0)
 * @param hardeningK how far ageing has moved a film far above its glass transition (K)
 * @param sticky whether the plasticiser alone makes it tacky
 */
public record FeelChances(double aboveGlassK, double sdK, double hardeningK, boolean sticky) {
  private static final int CASES = 100;

  /**
   * Of a hundred equally likely films, how many have each feel.
   *
   * @return whole numbers that add up to 100, the likeliest first; feels that no film has are left
   *     out
   */
  public Map<Feel, Integer> ofHundred() {
    NormalDistribution likely = new NormalDistribution(null, aboveGlassK, sdK);
    Map<Feel, Integer> counts = new EnumMap<>(Feel.class);
    for (int i = 0; i < CASES; i++) {
      double fresh = likely.inverseCumulativeProbability((i + 0.5) / CASES);
      counts.merge(FeelInTheHand.of(Ageing.aged(fresh, hardeningK), sticky), 1, Integer::sum);
    }
    return counts;
  }
}
