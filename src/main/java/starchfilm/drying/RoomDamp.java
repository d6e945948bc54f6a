package starchfilm.drying;

import starchfilm.drying.DryingForecast.RoomVerdict;

/** Tells rooms that dry a film from rooms that do not. */
final class RoomDamp {
  /** Activity beyond which the resting moisture is not asked for: it grows without bound at 1. */
  static final double DAMPEST = 0.995;

  /** Share of the fresh paste's moisture that a film must lose to be called drying; ours. */
  private static final double LEAST_LOSS = 0.5;

  /** A film that keeps its own weight of water is a gel and no film; ours. */
  private static final double WETTEST_FILM = 1;

  private RoomDamp() {}

  /** Whether a film that rests at a moisture is called dry there at all. */
  static boolean dries(double restingMoisture, double startMoisture) {
    return restingMoisture <= Math.min(WETTEST_FILM, (1 - LEAST_LOSS) * startMoisture);
  }

  static RoomVerdict verdict(double restingMoisture, double startMoisture) {
    if (!dries(restingMoisture, startMoisture)) {
      return RoomVerdict.TOO_DAMP;
    }
    return restingMoisture + MilestoneDetector.DRY_MARGIN > Milestone.FIRM_MOISTURE
        ? RoomVerdict.NEVER_PEELABLE
        : RoomVerdict.DRIES;
  }
}
