package starchfilm.drying;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import starchfilm.casting.Spot;

/**
 * How one spot of the plate dries.
 *
 * @param spot which
 * @param wetThicknessM its thickness when poured (m)
 * @param dryThicknessM its thickness at the moisture it will keep (m)
 * @param milestones when each milestone comes
 */
public record SpotForecast(
    Spot spot,
    double wetThicknessM,
    double dryThicknessM,
    Map<Milestone, MilestoneForecast> milestones) {
  public SpotForecast {
    milestones = Collections.unmodifiableMap(new EnumMap<>(milestones));
  }

  /**
   * One milestone.
   *
   * @param milestone which
   * @return when it comes
   */
  public MilestoneForecast at(Milestone milestone) {
    return Objects.requireNonNull(milestones.get(milestone), "forecast for every milestone");
  }
}
