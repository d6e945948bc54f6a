package starchfilm.drying;

import java.util.Comparator;
import java.util.stream.Stream;

/**
 * Whether a room dries a plate, read from its solved likely cases: a word never contradicts the
 * times that stand below it.
 */
public enum DryingVerdict {
  /** In at least nine of ten likely cases the film becomes firm enough to peel. */
  DRIES,
  /** In some likely cases the film comes to rest too moist to peel, in others it becomes firm. */
  MAY_STAY_SOFT,
  /** In at least nine of ten likely cases the film comes to rest too moist to peel. */
  NEVER_PEELABLE,
  /** In most likely cases the film hardly dries or takes up water, and it peels in next to none. */
  TOO_DAMP;

  /** Activity beyond which the resting moisture is not asked for: it grows without bound at 1. */
  static final double DAMPEST = 0.995;

  /** What happens in one case of ten is no rule, and is left out of a verdict; ours. */
  private static final double SELDOM = 0.1;

  private static final double MOSTLY = 0.5;

  /** Share of the fresh paste's moisture that a film must lose to be called drying; ours. */
  private static final double LEAST_LOSS = 0.5;

  /** A film that keeps its own weight of water is a gel and no film; ours. */
  private static final double WETTEST_FILM = 1;

  /** How one likely case ends. */
  enum CaseOutcome {
    /** It becomes firm, if it is given the time. */
    FIRM,
    /** It comes to rest too moist to peel. */
    SOFT,
    /** It does not come to rest as a film at all. */
    WET
  }

  /** Whether a film that rests at a moisture is called dry there at all, firm or not. */
  static boolean dries(double restingMoisture, double startMoisture) {
    return restingMoisture <= Milestone.FIRM_MOISTURE
        || restingMoisture <= Math.min(WETTEST_FILM, (1 - LEAST_LOSS) * startMoisture);
  }

  /**
   * The verdict on likely cases.
   *
   * @param cases of one spot; at least one
   */
  static DryingVerdict of(SpotSolution[] cases) {
    double firm = share(cases, CaseOutcome.FIRM);
    if (firm > SELDOM) {
      return firm >= 1 - SELDOM ? DRIES : MAY_STAY_SOFT;
    }
    return share(cases, CaseOutcome.WET) > MOSTLY ? TOO_DAMP : NEVER_PEELABLE;
  }

  /** The verdict on the spot that dries best. */
  static DryingVerdict ofBest(SpotSolution[]... spots) {
    return Stream.of(spots).map(DryingVerdict::of).min(Comparator.naturalOrder()).orElseThrow();
  }

  /** Whether a case counts where the times of a milestone are stated, under this verdict. */
  boolean tells(Milestone milestone, CaseOutcome outcome) {
    return switch (this) {
      case DRIES, MAY_STAY_SOFT -> outcome == CaseOutcome.FIRM;
      case NEVER_PEELABLE ->
          switch (milestone) {
            case SKIN_DRY, PEELABLE -> false;
            case DRY_THROUGH -> outcome != CaseOutcome.WET;
          };
      case TOO_DAMP -> false;
    };
  }

  private static double share(SpotSolution[] cases, CaseOutcome outcome) {
    int found = 0;
    for (SpotSolution one : cases) {
      found += one.outcome() == outcome ? 1 : 0;
    }
    return (double) found / cases.length;
  }
}
