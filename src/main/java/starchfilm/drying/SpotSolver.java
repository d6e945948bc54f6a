package starchfilm.drying;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import starchfilm.casting.Casting;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Pour;
import starchfilm.casting.Spot;
import starchfilm.drying.PlateSection.LayerColumn;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.recipe.Composition;
import starchfilm.material.wetfilm.FilmMaterial;
import starchfilm.numerics.diffusion.DiffusionSystem;
import starchfilm.numerics.diffusion.FluxPotential.PotentialReader;
import starchfilm.numerics.diffusion.Grid;
import starchfilm.numerics.diffusion.RosenbrockIntegrator;
import starchfilm.numerics.diffusion.StepListener;
import starchfilm.numerics.diffusion.Tolerance;

/**
 * Solves the moisture equations for one spot of a plate in one likely case after another.
 *
 * <p>{@code dX/dt = d/dxi [(D(X,T)/v(X)^2) dX/dxi]} over {@code 0 <= xi <= m}, xi the dry solids
 * per area counted from the plate, m those of the whole layer; the faces and T follow {@link
 * PlateExchange}. The layer starts even and at the temperature that paste and plate mix to. One
 * object serves one thread; a solve allocates nothing but for a change of the paste itself.
 */
final class SpotSolver {
  /** Nodes of a layer that is open above; what more of them change stands in src/docs/model.md. */
  private static final int NODES = 5;

  /** Nodes of a layer that is turned or lifted: an odd number, so that one is in its middle. */
  private static final int NODES_OF_BOTH_FACES = 7;

  /**
   * How far one step in time may be off. Milestones are then off by less than a tenth of what so
   * few likely cases leave open.
   */
  static final Tolerance TOLERANCE = new Tolerance(1e-3, 2e-4, 0.2);

  /**
   * No step over a room that varies is longer, lest it pass over a change of weather (s). Over a
   * log averaged over hours, three hours move no milestone by more than one hour does.
   */
  private static final double LONGEST_STEP_S = 3 * HOUR_S;

  private static final double COARSENESS = 3;
  private static final double FIRST_STEP_S = 2;

  private final PreparedCase prepared;
  private final Grid grid;
  private final PotentialReader reader;
  private final PlateExchange exchange;
  private final DiffusionSystem system;
  private final RosenbrockIntegrator integrator;
  private final MilestoneDetector detector;
  private final double[] state;
  private final double longestStepS;
  private final int curvePoints;

  SpotSolver(PreparedCase prepared, double[] curveTimesS) {
    this(
        prepared,
        curveTimesS,
        grid(prepared.drying(), nodes(prepared.drying())),
        system -> new RosenbrockIntegrator(system, TOLERANCE));
  }

  SpotSolver(
      PreparedCase prepared,
      double[] curveTimesS,
      Grid grid,
      Function<DiffusionSystem, RosenbrockIntegrator> integrator) {
    this.prepared = prepared;
    this.grid = grid;
    Casting drying = prepared.drying();
    this.reader = prepared.material().potential().reader();
    this.exchange = new PlateExchange(drying, prepared.material().isotherm());
    this.system = new DiffusionSystem(grid, reader, exchange, 1);
    this.integrator = integrator.apply(system);
    this.detector =
        new MilestoneDetector(
            grid.nodes(), exchange, settledFromS(drying), prepared.material(), curveTimesS);
    this.state = new double[grid.nodes() + 2];
    this.longestStepS = drying.room().isConstant() ? Double.MAX_VALUE : LONGEST_STEP_S;
    this.curvePoints = curveTimesS.length;
  }

  /** The nodes that a plate is solved on. */
  static int nodes(Casting drying) {
    return drying.faces().isEmpty() ? NODES : NODES_OF_BOTH_FACES;
  }

  /** A grid that is fine at every face that is ever open. */
  static Grid grid(Casting drying, int nodes) {
    return drying.faces().isEmpty()
        ? Grid.fineAtUpperFace(nodes, COARSENESS)
        : Grid.fineAtBothFaces(nodes, COARSENESS);
  }

  /** From when on every day is like the one before and no face is opened any more (s). */
  private static double settledFromS(Casting drying) {
    double known = drying.room().knownUntilS();
    double settled =
        drying.room().isConstant()
            ? 0
            : DAY_S + (Double.isInfinite(known) ? 0 : Math.max(0, known));
    for (FaceChange change : drying.faces()) {
      settled = Math.max(settled, change.timeS());
    }
    return settled;
  }

  /**
   * Solves one spot in one likely case until it is dry through and the curve is read, or until the
   * horizon.
   */
  void solve(Spot spot, ParameterSample deviations, double horizonS, SpotSolution trace) {
    trace.clear(curvePoints);
    pour(spot, deviations, trace);
    detector.finish(advance(0, horizonS, FIRST_STEP_S, detector));
    double left = system.mean(state) * trace.solidsKgPerM2 + state[state.length - 1];
    double start = trace.startMoisture * trace.solidsKgPerM2;
    trace.balanceError = Math.abs(left - start) / start;
  }

  /**
   * Reads the drying curve of one spot in one likely case, with the steps that another case took.
   *
   * @param stepEndsS when each step ends (s), from {@link SpotSolution#stepEndsS}
   */
  void curve(Spot spot, ParameterSample deviations, double[] stepEndsS, SpotSolution trace) {
    trace.clear(curvePoints);
    pour(spot, deviations, trace);
    StepListener reader =
        step -> {
          detector.readCurve(step);
          return true;
        };
    advance(
        0,
        stepEndsS[stepEndsS.length - 1],
        FIRST_STEP_S,
        (fromS, untilS, firstStepS) -> {
          integrator.follow(fromS, between(stepEndsS, fromS, untilS), state, reader);
          return untilS;
        });
  }

  private static double[] between(double[] timesS, double afterS, double untilS) {
    return Arrays.stream(timesS).filter(time -> time > afterS && time <= untilS).toArray();
  }

  /** Solves one spot in one likely case and tells how it stands at given moments. */
  List<SpotMoment> moments(Spot spot, ParameterSample deviations, double[] timesS) {
    SpotSolution poured = new SpotSolution();
    pour(spot, deviations, poured);
    int nodes = system.nodes();
    MomentReader moments = new MomentReader(timesS, nodes, exchange, poured, state[nodes]);
    advance(0, timesS[timesS.length - 1], FIRST_STEP_S, moments);
    return moments.moments();
  }

  /**
   * Solves the average thickness and tells how moist it is from the plate up at given moments, each
   * the end of a step.
   */
  List<LayerColumn> columns(ParameterSample deviations, double[] timesS, int layers) {
    double[] positions = grid.positions();
    Composition composition = prepared.material(deviations).composition();
    SpotSolution poured = new SpotSolution();
    pour(Spot.NOMINAL, deviations, poured);
    List<LayerColumn> columns = new ArrayList<>(timesS.length);
    double time = 0;
    for (double next : timesS) {
      if (next > time) {
        advance(time, next, time == 0 ? FIRST_STEP_S : next - time, step -> true);
        time = next;
      }
      columns.add(PlateSection.column(composition, poured.solidsKgPerM2, positions, state, layers));
    }
    return columns;
  }

  /** Takes on one spot and one likely case, with the paste just poured. */
  private void pour(Spot spot, ParameterSample deviations, SpotSolution trace) {
    FilmMaterial material = prepared.material(deviations);
    reader.switchTo(material.potential());
    Pour pour = prepared.drying().pour();
    Composition composition = material.composition();
    trace.startMoisture = PreparedCase.startMoisture(composition, deviations);
    double wetThicknessM =
        pour.wetThicknessM().value()
            * spot.thicknessRatio(
                pour.unevenness() * deviations.multiplier(UncertainParameter.UNEVENNESS))
            * deviations.multiplier(UncertainParameter.THICKNESS);
    trace.solidsKgPerM2 = wetThicknessM / composition.volumeM3PerKgDry(trace.startMoisture);
    system.setSize(trace.solidsKgPerM2, deviations.multiplier(UncertainParameter.DIFFUSIVITY));
    exchange.setCase(deviations, material, trace.solidsKgPerM2);
    exchange.setOpenFaces(OpenFaces.UPPER);
    int nodes = system.nodes();
    Arrays.fill(state, 0, nodes, trace.startMoisture);
    // While the air is that of the pour: whoever watches asks for later air at once.
    state[nodes] = exchange.startTemperatureK(pour.pasteTemperatureK(), trace.startMoisture);
    state[nodes + 1] = 0;
    detector.setCase(deviations, material, trace);
  }

  /** Integrates with the faces as they are; time reached. */
  private interface Stretch {
    double integrate(double fromS, double untilS, double firstStepS);
  }

  private double advance(double fromS, double untilS, double firstStepS, StepListener listener) {
    return advance(
        fromS,
        untilS,
        firstStepS,
        (from, until, first) ->
            integrator.integrate(from, until, first, longestStepS, state, listener));
  }

  /**
   * Integrates over a stretch of time, opening the faces as the plate's owner did; time reached.
   */
  private double advance(double fromS, double untilS, double firstStepS, Stretch stretch) {
    double time = fromS;
    double firstStep = firstStepS;
    for (FaceChange change : prepared.drying().faces()) {
      if (change.timeS() <= time && change.timeS() >= fromS) {
        open(change);
      } else if (change.timeS() > time && change.timeS() < untilS) {
        double reached = stretch.integrate(time, change.timeS(), firstStep);
        if (reached < change.timeS()) {
          return reached;
        }
        time = change.timeS();
        firstStep = FIRST_STEP_S;
        open(change);
      }
    }
    return time < untilS ? stretch.integrate(time, untilS, firstStep) : time;
  }

  private void open(FaceChange change) {
    exchange.setOpenFaces(change.open());
    detector.facesChanged(change.timeS());
  }
}
