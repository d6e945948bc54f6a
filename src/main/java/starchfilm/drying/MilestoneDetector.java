package starchfilm.drying;

import static starchfilm.drying.Milestone.FIRM_MOISTURE;

import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.sorption.FilmIsotherm;
import starchfilm.material.wetfilm.FilmMaterial;
import starchfilm.numerics.diffusion.Step;
import starchfilm.numerics.diffusion.StepListener;

/**
 * Follows one integration: finds the milestones between the steps and reads off the drying curve.
 *
 * <p>One object serves one thread.
 */
final class MilestoneDetector implements StepListener {
  /** How close to its resting moisture a film is called dry through (kg/kg); ours. */
  static final double DRY_MARGIN = 0.02;

  /** Moisture at which a step's end counts as being at the milestone (kg/kg). */
  private static final double NEAR_ENOUGH = 0.005;

  private static final int MOST_SKIN_RETRIES = 4;
  private static final double LEAST_RETRY_SHARE = 0.02;
  private static final double MOST_RETRY_SHARE = 0.98;

  private static final int ROOT_ROUNDS = 60;
  private static final double ROOT_RELATIVE = 1e-9;

  /** Kept, for {@code values()} makes a new array at every call, and this is called every step. */
  private static final Milestone[] MILESTONES = Milestone.values();

  private final int nodes;
  private final RestingActivity resting;
  private final double[] curveTimesS;
  private OpenFaces open = OpenFaces.UPPER;
  private SpotSolution trace = new SpotSolution();
  private FilmIsotherm isotherm;
  private double isothermFactor;
  private double humidityShift;
  private int nextCurvePoint;
  private int skinRetries;
  private final boolean constantRest;
  private double constantRestMoisture;

  MilestoneDetector(
      int nodes,
      RestingActivity resting,
      boolean constantRest,
      FilmIsotherm isotherm,
      double[] curveTimesS) {
    this.nodes = nodes;
    this.resting = resting;
    this.constantRest = constantRest;
    this.isotherm = isotherm;
    this.curveTimesS = curveTimesS;
  }

  void become(ParameterSample deviations, FilmMaterial material, SpotSolution target) {
    trace = target;
    isotherm = material.isotherm();
    isothermFactor = deviations.multiplier(UncertainParameter.ISOTHERM);
    humidityShift = deviations.of(UncertainParameter.HUMIDITY);
    nextCurvePoint = 0;
    skinRetries = 0;
    if (constantRest) {
      constantRestMoisture = restingAt(0);
    }
  }

  void setOpenFaces(OpenFaces faces) {
    open = faces;
  }

  /** Moisture at rest with the room, over the day before a moment (kg/kg). */
  double restingMoisture(double timeS) {
    return constantRest ? constantRestMoisture : restingAt(timeS);
  }

  private double restingAt(double timeS) {
    double activity = resting.at(timeS) + humidityShift;
    return isothermFactor * isotherm.moisture(Math.min(RoomDamp.DAMPEST, Math.max(0, activity)));
  }

  @Override
  public boolean accepted(Step step) {
    if (approachesSkinDry(step)) {
      return true;
    }
    for (Milestone milestone : MILESTONES) {
      int index = milestone.ordinal();
      if (trace.milestoneS[index] == Double.POSITIVE_INFINITY
          && excess(milestone, step, step.end(), governing(milestone, step)) <= 0) {
        trace.milestoneS[index] = crossing(milestone, step);
      }
    }
    readCurve(step);
    trace.steps++;
    return trace.milestoneS[Milestone.DRY_THROUGH.ordinal()] == Double.POSITIVE_INFINITY
        || nextCurvePoint < curveTimesS.length;
  }

  /**
   * The face dries faster than a long step tells from its ends, so a step that carries it past its
   * milestone is asked for again, up to where the milestone should be, a few times over.
   */
  private boolean approachesSkinDry(Step step) {
    if (trace.milestoneS[Milestone.SKIN_DRY.ordinal()] != Double.POSITIVE_INFINITY
        || skinRetries == MOST_SKIN_RETRIES) {
      return false;
    }
    int node = governing(Milestone.SKIN_DRY, step);
    double atEnd = step.atEnd(node) - FIRM_MOISTURE;
    double atStart = step.atStart(node) - FIRM_MOISTURE;
    if (atEnd > 0 || atStart <= 0 || atEnd > -NEAR_ENOUGH) {
      return false;
    }
    skinRetries++;
    double share =
        Math.min(MOST_RETRY_SHARE, Math.max(LEAST_RETRY_SHARE, atStart / (atStart - atEnd)));
    step.retryUntil(step.start() + share * (step.end() - step.start()));
    return true;
  }

  private void readCurve(Step step) {
    while (nextCurvePoint < curveTimesS.length && curveTimesS[nextCurvePoint] <= step.end()) {
      double time = Math.max(step.start(), curveTimesS[nextCurvePoint]);
      // What is left is what there was less what the tally says has left.
      trace.curve[nextCurvePoint] =
          trace.startMoisture - step.at(nodes + 1, time) / trace.solidsKgPerM2;
      nextCurvePoint++;
    }
  }

  /** The node whose moisture decides on a milestone at the end of a step. */
  private int governing(Milestone milestone, Step step) {
    if (milestone == Milestone.SKIN_DRY) {
      return switch (open) {
        case UPPER -> nodes - 1;
        case TURNED -> 0;
        case BOTH -> step.atEnd(0) > step.atEnd(nodes - 1) ? 0 : nodes - 1;
      };
    }
    int wettest = 0;
    for (int i = 1; i < nodes; i++) {
      if (step.atEnd(i) > step.atEnd(wettest)) {
        wettest = i;
      }
    }
    return wettest;
  }

  /** How far a node is above a milestone's moisture; at most 0 once it is reached. */
  private double excess(Milestone milestone, Step step, double timeS, int node) {
    double moisture = timeS == step.end() ? step.atEnd(node) : step.at(node, timeS);
    if (milestone != Milestone.DRY_THROUGH) {
      return moisture - FIRM_MOISTURE;
    }
    double rest = restingMoisture(timeS);
    return RoomDamp.dries(rest, trace.startMoisture)
        ? moisture - rest - DRY_MARGIN
        : Double.POSITIVE_INFINITY;
  }

  /**
   * When a milestone that a step ends beyond was reached within it, by the Illinois rule. Source:
   * Dowell and Jarratt 1971, BIT 11:168 (recalled).
   */
  private double crossing(Milestone milestone, Step step) {
    int node = governing(milestone, step);
    double other = step.start();
    double latest = step.end();
    double atOther = excess(milestone, step, other, node);
    double atLatest = excess(milestone, step, latest, node);
    if (atOther <= 0 || Double.isInfinite(atOther)) {
      return atOther <= 0 ? other : latest;
    }
    for (int round = 0; round < ROOT_ROUNDS; round++) {
      double next = latest - atLatest * (latest - other) / (atLatest - atOther);
      double atNext = excess(milestone, step, next, node);
      if (atNext <= 0 == atLatest <= 0) {
        atOther /= 2;
      } else {
        other = latest;
        atOther = atLatest;
      }
      boolean settled = Math.abs(next - latest) < ROOT_RELATIVE * next;
      latest = next;
      atLatest = atNext;
      if (settled || atNext == 0) {
        break;
      }
    }
    return latest;
  }
}
