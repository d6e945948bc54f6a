package starchfilm.drying;

import static starchfilm.drying.Milestone.FIRM_MOISTURE;
import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Arrays;
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

  /**
   * A film that is as dry as air of this humidity would make it is called dry through, however dry
   * the air is: the last of its water leaves ever more slowly, and it takes that up again as soon
   * as it is brought into a room (ratio); ours.
   */
  static final double DRY_ENOUGH_ACTIVITY = 0.2;

  /** A film with more water than solids would freeze about as water does (kg/kg). */
  private static final double WET_MOISTURE = 1;

  /** How exactly a mark's moment is looked for (s). */
  private static final double DATED_TO_S = 0.1;

  /** What is looked for in every step. */
  private enum Mark {
    /** The open face is firm; of two the wetter one. */
    SKIN_FIRM,
    /** The wettest point is firm. */
    FIRM,
    /** The wettest point is about as dry as air and place would make it at that time. */
    AT_REST,
    /** Both at once. */
    FIRM_AND_AT_REST
  }

  /** Kept, for {@code values()} makes a new array at every call, and this is called every step. */
  private static final Mark[] MARKS = Mark.values();

  private final int nodes;
  private final PlateExchange exchange;
  private final RestingActivity resting;
  private final double settledFromS;
  private final double[] curveTimesS;
  private SpotSolution trace = new SpotSolution();
  private FilmIsotherm isotherm;
  private double isothermFactor;
  private int nextCurvePoint;

  /** Degrees below freezing times how long, since it was last above (K s). */
  private double frostKs;

  /** When each mark was reached (s), positive infinity until then. */
  private final double[] reachedS = new double[MARKS.length];

  /** Moisture of a film that need not be any drier (kg/kg). */
  private double dryEnoughMoisture;

  /** Moisture at rest as last asked for (kg/kg), and for when (s); any time in a constant room. */
  private double restMoisture;

  private double restAtS;

  MilestoneDetector(
      int nodes,
      PlateExchange exchange,
      double settledFromS,
      FilmMaterial material,
      double[] curveTimesS) {
    this.nodes = nodes;
    this.exchange = exchange;
    this.resting = new RestingActivity(exchange);
    this.settledFromS = settledFromS;
    this.isotherm = material.isotherm();
    this.curveTimesS = curveTimesS;
  }

  void setCase(ParameterSample deviations, FilmMaterial material, SpotSolution target) {
    trace = target;
    isotherm = material.isotherm();
    isothermFactor = deviations.multiplier(UncertainParameter.ISOTHERM);
    nextCurvePoint = 0;
    frostKs = 0;
    Arrays.fill(reachedS, Double.POSITIVE_INFINITY);
    facesChanged(0);
  }

  /** The film lies otherwise from now on, and comes to rest with something else. */
  void facesChanged(double timeS) {
    resting.restart(timeS);
    dryEnoughMoisture = held(DRY_ENOUGH_ACTIVITY, timeS);
    restMoisture = moistureAt(timeS);
    restAtS = timeS;
  }

  /** Moisture at rest with the room, over the day before a moment (kg/kg). */
  private double restingMoisture(double timeS) {
    if (timeS != restAtS && !exchange.inConstantRoom()) {
      restMoisture = moistureAt(timeS);
      restAtS = timeS;
    }
    return restMoisture;
  }

  private double moistureAt(double timeS) {
    return held(Math.min(DryingVerdict.DAMPEST, resting.at(timeS)), timeS);
  }

  /** What this case's film holds at an activity, as warm as it rests. */
  private double held(double activity, double timeS) {
    return isothermFactor * isotherm.moisture(activity, resting.temperatureK(timeS));
  }

  /**
   * Says what the film keeps in the end, and when it was dry through: when it was firm and at rest,
   * or, where it comes to rest too moist to be firm, when it came to rest.
   */
  void finish(double endS) {
    double timeS = Math.max(endS, DAY_S);
    trace.restingActivity = Math.min(DryingVerdict.DAMPEST, resting.at(timeS));
    trace.restingMoisture = restingMoisture(timeS);
    double firmS = reachedS[Mark.FIRM.ordinal()];
    double dryS = reachedS[Mark.FIRM_AND_AT_REST.ordinal()];
    boolean soft = trace.restingMoisture > FIRM_MOISTURE;
    if (soft && Double.isInfinite(dryS)) {
      double restS = reachedS[Mark.AT_REST.ordinal()];
      dryS = reached(Mark.FIRM) ? Math.max(firmS, restS) : restS;
    }
    trace.staysSoft = soft && !reached(Mark.FIRM);
    trace.milestoneS[Milestone.SKIN_DRY.ordinal()] = reachedS[Mark.SKIN_FIRM.ordinal()];
    trace.milestoneS[Milestone.PEELABLE.ordinal()] = firmS;
    trace.milestoneS[Milestone.DRY_THROUGH.ordinal()] = dryS;
  }

  private boolean reached(Mark mark) {
    return reachedS[mark.ordinal()] < Double.POSITIVE_INFINITY;
  }

  @Override
  public boolean accepted(Step step) {
    int wettest = wettest(step);
    for (Mark mark : MARKS) {
      if (reachedS[mark.ordinal()] == Double.POSITIVE_INFINITY) {
        int node = mark == Mark.SKIN_FIRM ? slowestFace(step) : wettest;
        if (excess(mark, step, step.end(), node) <= 0) {
          reachedS[mark.ordinal()] = crossing(mark, step, node);
        }
      }
    }
    double rest = restingMoisture(step.end());
    if (step.atEnd(wettest) > WET_MOISTURE) {
      double endK = step.atEnd(nodes);
      trace.coolestWetK = Math.min(trace.coolestWetK, endK);
      // What froze in one night thaws the next day.
      frostKs =
          endK < ZERO_CELSIUS_K
              ? frostKs + (ZERO_CELSIUS_K - endK) * (step.end() - step.start())
              : 0;
      trace.frostKs = Math.max(trace.frostKs, frostKs);
    }
    readCurve(step);
    trace.stepped(step.end());
    boolean softForEver =
        step.end() >= settledFromS
            && rest > FIRM_MOISTURE
            && (reached(Mark.AT_REST) || !DryingVerdict.dries(rest, trace.startMoisture));
    boolean done = softForEver || reached(Mark.FIRM_AND_AT_REST);
    return !done || nextCurvePoint < curveTimesS.length;
  }

  /** Reads the drying curve off a step. */
  void readCurve(Step step) {
    while (nextCurvePoint < curveTimesS.length && curveTimesS[nextCurvePoint] <= step.end()) {
      double time = Math.max(step.start(), curveTimesS[nextCurvePoint]);
      trace.curve[nextCurvePoint] = trace.meanMoisture(step.at(nodes + 1, time));
      nextCurvePoint++;
    }
  }

  /** The open face that is wetter at the end of a step. */
  private int slowestFace(Step step) {
    OpenFaces open = exchange.openFaces();
    int upper = nodes - 1;
    return open.lower() && (!open.upper() || step.atEnd(0) > step.atEnd(upper)) ? 0 : upper;
  }

  private int wettest(Step step) {
    int wettest = 0;
    for (int i = 1; i < nodes; i++) {
      if (step.atEnd(i) > step.atEnd(wettest)) {
        wettest = i;
      }
    }
    return wettest;
  }

  /** How far a node is above a mark's moisture; at most 0 once it is reached. */
  private double excess(Mark mark, Step step, double timeS, int node) {
    double moisture = timeS == step.end() ? step.atEnd(node) : step.at(node, timeS);
    double aboveFirm = moisture - FIRM_MOISTURE;
    if (mark == Mark.SKIN_FIRM || mark == Mark.FIRM) {
      return aboveFirm;
    }
    double rest = restingMoisture(timeS);
    if (!DryingVerdict.dries(rest, trace.startMoisture)) {
      return Double.POSITIVE_INFINITY;
    }
    double aboveRest = moisture - Math.max(rest, dryEnoughMoisture) - DRY_MARGIN;
    return mark == Mark.AT_REST ? aboveRest : Math.max(aboveFirm, aboveRest);
  }

  /** When a mark that a step ends beyond was reached within it: its first moment, by halves. */
  private double crossing(Mark mark, Step step, int node) {
    double before = step.start();
    double after = step.end();
    while (after - before > DATED_TO_S) {
      double middle = (before + after) / 2;
      if (excess(mark, step, middle, node) > 0) {
        before = middle;
      } else {
        after = middle;
      }
    }
    return after;
  }
}
