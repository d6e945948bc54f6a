package starchfilm.drying;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;

/**
 * What the range of a forecast comes from.
 *
 * <p>A factor's share is the variance that its own slope explains: {@code (b_k sd_k)^2} over their
 * sum, {@code b_k} being how the logarithm of the thick spot's dry-through changes with that factor
 * alone. Source: sigma-normalised derivatives, Saltelli et al. 2008, Global Sensitivity Analysis,
 * section 1.2.3 (recalled).
 */
final class SpreadDrivers {
  private SpreadDrivers() {}

  /**
   * The shares, the largest first.
   *
   * @param slopes from {@link LikelyCases#slopes}
   * @return nothing where they are not known
   */
  static List<SpreadDriver> of(ParameterDistribution model, double[] slopes) {
    double[] alone = slopes.length == 0 ? slopes : model.perFactor(slopes);
    double total = Arrays.stream(alone).map(slope -> slope * slope).sum();
    return total == 0
        ? List.of()
        : Arrays.stream(UncertainParameter.values())
            .map(factor -> new SpreadDriver(factor, square(alone[factor.ordinal()]) / total))
            .filter(driver -> driver.share() > 0)
            .sorted(Comparator.comparingDouble(SpreadDriver::share).reversed())
            .toList();
  }

  private static double square(double value) {
    return value * value;
  }
}
