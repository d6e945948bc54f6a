package starchfilm.today;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.Casting;
import starchfilm.casting.FaceChange;
import starchfilm.casting.Spot;
import starchfilm.change.Change;
import starchfilm.drying.Milestone;
import starchfilm.film.risk.MouldRisk;
import starchfilm.film.risk.RiskForecaster;
import starchfilm.film.risk.RiskLevel;
import starchfilm.forecast.TrialForecast;

/**
 * What is still open to a plate that will mould before it is dry: the one change that helps most.
 *
 * <p>Each is made and the middle case of the plate solved again. A rack takes the film from when it
 * is peelable; other air is taken as if it had been there from the pour on, which tells more than
 * it still does for a plate that has stood for days; the answer says so.
 *
 * @param kind what is changed
 * @param from its figure as it is, in the SI unit of its setting; of a rack the time (s)
 * @param to its figure then
 * @param growthFromS when mould may first show then (s since the pour); infinite where it is not to
 *     be expected
 */
public record MouldRelief(Kind kind, double from, double to, double growthFromS) {
  /** What can still be changed. */
  public enum Kind {
    /** Moving air. */
    MOVING_AIR,
    /** Drier air. */
    DRIER_AIR,
    /** Warmer air. */
    WARMER_AIR,
    /** Onto a rack, once it can be peeled. */
    RACK
  }

  private static final Map<Kind, Change> AIR =
      new EnumMap<>(
          Map.of(
              Kind.MOVING_AIR, Change.FAN,
              Kind.DRIER_AIR, Change.DRIER_ROOM,
              Kind.WARMER_AIR, Change.WARMER_ROOM));

  private record Rerun(MouldRelief relief, double weightedHours) {}

  /**
   * The change that helps most.
   *
   * @param forecast the plate's forecast
   * @return the change; empty where mould is not likely, or nothing lessens it
   */
  static Optional<MouldRelief> of(TrialForecast forecast) {
    MouldRisk now = forecast.risks().mould();
    if (now.level().compareTo(RiskLevel.LIKELY) < 0) {
      return Optional.empty();
    }
    Casting casting = forecast.trial().casting();
    List<Rerun> reruns = new ArrayList<>();
    AIR.forEach(
        (kind, change) ->
            change
                .clearStep(casting)
                .ifPresent(
                    step ->
                        reruns.add(rerun(forecast, kind, step.from(), step.to(), step.after()))));
    double atS = forecast.drying().at(Spot.NOMINAL).at(Milestone.PEELABLE).timeS().middle();
    if (casting.faces().isEmpty() && Double.isFinite(atS)) {
      List<FaceChange> both = List.of(new FaceChange(atS, FaceChange.OpenFaces.BOTH));
      reruns.add(rerun(forecast, Kind.RACK, atS, atS, casting.with(both)));
    }
    return reruns.stream()
        .filter(rerun -> rerun.weightedHours() < now.weightedHours())
        .min(Comparator.comparingDouble(Rerun::weightedHours))
        .map(Rerun::relief);
  }

  private static Rerun rerun(
      TrialForecast forecast, Kind kind, double from, double to, Casting changed) {
    MouldRisk mould =
        new RiskForecaster(forecast.weighed().known().factors()).forecast(changed).mould();
    boolean expected = mould.level().compareTo(RiskLevel.LIKELY) >= 0;
    return new Rerun(
        new MouldRelief(kind, from, to, expected ? mould.growthFromS() : Double.POSITIVE_INFINITY),
        mould.weightedHours());
  }
}
