package starchfilm.drying;

import java.util.EnumMap;
import java.util.Map;
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
    milestones = new EnumMap<>(milestones);
  }

  @Override
  public Map<Milestone, MilestoneForecast> milestones() {
    return new EnumMap<>(milestones);
  }

  /**
   * One milestone.
   *
   * @param milestone which
   * @return when it comes
   */
  public MilestoneForecast at(Milestone milestone) {
    MilestoneForecast found = milestones.get(milestone);
    if (found == null) {
      throw new IllegalArgumentException("no forecast for " + milestone);
    }
    return found;
  }
}
