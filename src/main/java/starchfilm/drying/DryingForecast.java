package starchfilm.drying;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import starchfilm.casting.Spot;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Extrapolation;

/**
 * How a plate dries.
 *
 * @param spots the thin edge, the nominal thickness and the thick spot
 * @param curve the drying curve, from the pour on
 * @param startMoisture moisture of the fresh paste (kg water per kg dry solids)
 * @param equilibriumMoisture moisture it will keep, in the middle case: with the air of the day
 *     before it is dry and as it lies then (kg/kg)
 * @param restingActivity water activity it comes to rest at, in the middle case, with that air and
 *     on its bench (ratio)
 * @param verdict whether it dries at all
 * @param spreadDrivers what the range comes from, largest first
 * @param extrapolations rules used outside their range
 * @param logEndsEarly true where a room log ended before the film was dry and was repeated
 */
public record DryingForecast(
    Map<Spot, SpotForecast> spots,
    List<CurvePoint> curve,
    double startMoisture,
    double equilibriumMoisture,
    double restingActivity,
    DryingVerdict verdict,
    List<SpreadDriver> spreadDrivers,
    List<Extrapolation> extrapolations,
    boolean logEndsEarly) {
  /** Copies the collections. */
  public DryingForecast {
    spots = Collections.unmodifiableMap(new EnumMap<>(spots));
    curve = List.copyOf(curve);
    spreadDrivers = List.copyOf(spreadDrivers);
    extrapolations = List.copyOf(extrapolations);
  }

  /**
   * One spot.
   *
   * @param spot which
   * @return its forecast
   */
  public SpotForecast at(Spot spot) {
    return Objects.requireNonNull(spots.get(spot), "forecast for every spot");
  }

  /** Where the drying curve ends (s since the pour). */
  public double curveEndS() {
    return curve.get(curve.size() - 1).timeS();
  }

  /**
   * When a milestone comes for the plate: in the spot that counts for it.
   *
   * @param milestone which
   * @return time since the pour (s); infinite in the cases in which it never comes
   */
  public Band timeS(Milestone milestone) {
    return at(milestone.spot()).at(milestone).timeS();
  }

  /**
   * When the plate can be peeled: on average, for its thick spot follows when it is lifted.
   *
   * @return time since the pour (s); infinite in the cases in which it never can
   */
  public Band peelableS() {
    return timeS(Milestone.PEELABLE);
  }

  /**
   * When the plate is dry through: in its thick spot.
   *
   * @return time since the pour (s); infinite in the cases in which it never is
   */
  public Band dryThroughS() {
    return timeS(Milestone.DRY_THROUGH);
  }
}
