package starchfilm.drying;

import java.util.Arrays;
import starchfilm.drying.DryingVerdict.CaseOutcome;

/** What one solve of one spot gave; filled by {@link SpotSolver}, one a thread. */
final class SpotSolution {
  /** Time of each milestone (s), positive infinity where it did not come. */
  final double[] milestoneS = new double[Milestone.values().length];

  /** Dry solids (kg/m2). */
  double solidsKgPerM2;

  /** Moisture of the fresh paste (kg/kg). */
  double startMoisture;

  /** Moisture it keeps in the end, as the air and its place on bench or rack are then (kg/kg). */
  double restingMoisture;

  /** Whether it comes to rest too moist to peel. */
  boolean staysSoft;

  /** Water activity at that moisture, before the case's own spread of the isotherm (ratio). */
  double restingActivity;

  /** Moisture averaged over the thickness (kg/kg) at the times asked for. */
  double[] curve = new double[0];

  /** What the water balance leaves open, over the water at the start. */
  double balanceError;

  private double[] endsS = new double[64];
  private int steps;

  /**
   * Moisture averaged over the thickness (kg/kg): what there was less what has left.
   *
   * @param leftKgPerM2 water that has left (kg/m2)
   */
  double meanMoisture(double leftKgPerM2) {
    return startMoisture - leftKgPerM2 / solidsKgPerM2;
  }

  double at(Milestone milestone) {
    return milestoneS[milestone.ordinal()];
  }

  /** When it is peelable and dry through (s), positive infinity where it never is. */
  double readyS() {
    return Math.max(at(Milestone.PEELABLE), at(Milestone.DRY_THROUGH));
  }

  /** The coolest it gets while it has more water than solids (K). */
  double coolestWetK;

  /** The most frost at a stretch, degrees below freezing times how long, while it is wet (K s). */
  double frostKs;

  /** How this case ends. */
  CaseOutcome outcome() {
    if (!staysSoft) {
      return CaseOutcome.FIRM;
    }
    return at(Milestone.DRY_THROUGH) < Double.POSITIVE_INFINITY
        ? CaseOutcome.SOFT
        : CaseOutcome.WET;
  }

  /** Notes the end of a step that was taken (s). */
  void stepped(double endS) {
    if (steps == endsS.length) {
      endsS = Arrays.copyOf(endsS, 2 * steps);
    }
    endsS[steps++] = endS;
  }

  /** When each step of the integrator ended (s). */
  double[] stepEndsS() {
    return Arrays.copyOf(endsS, steps);
  }

  void clear(int curvePoints) {
    steps = 0;
    coolestWetK = Double.POSITIVE_INFINITY;
    frostKs = 0;
    Arrays.fill(milestoneS, Double.POSITIVE_INFINITY);
    if (curve.length != curvePoints) {
      curve = new double[curvePoints];
    }
  }
}
