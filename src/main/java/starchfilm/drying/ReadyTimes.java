package starchfilm.drying;

import java.util.Arrays;
import starchfilm.casting.Casting;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;

/**
 * When one spot of a plate is ready in many likely cases, and nothing else: what a search asks
 * again and again.
 *
 * <p>Ready means peelable and dry through. The cases are those of {@link DryingForecaster} with the
 * same model and count, so a plate that differs only in its pour is compared case by case: the
 * times rise smoothly with its thickness. Immutable; safe to share.
 */
public final class ReadyTimes {
  private final ParameterDistribution factors;
  private final int draws;

  /**
   * Times in likely cases.
   *
   * @param factors what is known of the factors
   * @param draws how many likely cases to solve, at least 1
   */
  public ReadyTimes(ParameterDistribution factors, int draws) {
    if (draws < 1) {
      throw new IllegalArgumentException("ready times need at least 1 draw, not " + draws);
    }
    this.factors = factors;
    this.draws = draws;
  }

  /**
   * When a spot is ready.
   *
   * @param drying the plate
   * @param spot which of its spots
   * @return time since the pour (s), one a likely case, in the order of the draws; positive
   *     infinity where it is not ready within {@link DryingForecaster#HORIZON_S}
   */
  public double[] of(Casting drying, Spot spot) {
    PreparedCase prepared = PreparedCase.of(drying);
    SpotSolution middle = DryingForecaster.middle(prepared, factors);
    ParameterDistribution model = CastingUncertainty.addedTo(factors, prepared, middle);
    SpotSolution[] traces =
        DryingForecaster.solve(prepared, spot, LikelyCases.of(prepared, model, draws));
    return Arrays.stream(traces)
        .mapToDouble(one -> Math.max(one.at(Milestone.PEELABLE), one.at(Milestone.DRY_THROUGH)))
        .toArray();
  }
}
