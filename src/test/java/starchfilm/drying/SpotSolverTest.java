package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.junit.jupiter.api.Assumptions.assumeTrue;
import static starchfilm.numerics.units.Units.DAY_S;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Room;
import starchfilm.casting.Spot;
import starchfilm.casting.SwingingRoom;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.air.AirState;
import starchfilm.material.recipe.Ingredient;
import starchfilm.numerics.diffusion.DiffusionSystem;
import starchfilm.numerics.diffusion.Grid;
import starchfilm.numerics.diffusion.ReferenceIntegrator;
import starchfilm.numerics.diffusion.RosenbrockIntegrator;
import starchfilm.numerics.diffusion.Tolerance;

/** The numerical promises of a forecast: balance, error in time, error of the grid. */
class SpotSolverTest {
  private static final Tolerance EXACT = new Tolerance(1e-9, 1e-10, 1e-7);

  static Stream<Casting> plates() {
    return Stream.of(
        Castings.USUAL,
        Castings.plate(1, Castings.paste(0.05, 0.4), Castings.room(22, 55, 0.1), 22),
        Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(20, 70, 0), 80),
        Castings.plate(8, Castings.paste(0.06, 0.3), Castings.room(25, 40, 0.2), 60),
        Castings.plate(2, Castings.paste(0.08, 0), Castings.room(40, 20, 0.5), 40));
  }

  @ParameterizedTest
  @MethodSource("plates")
  void datesEveryMilestoneWithinTwoThousandths(Casting drying) {
    SpotSolution forecast =
        solve(drying, SpotSolver.nodes(drying), ofForecast(SpotSolver.TOLERANCE));
    SpotSolution exact = solve(drying, SpotSolver.nodes(drying), reference(EXACT));
    for (Milestone milestone : Milestone.values()) {
      double reference = exact.milestoneS[milestone.ordinal()];
      assertThat(forecast.milestoneS[milestone.ordinal()])
          .as("%s", milestone)
          .isCloseTo(reference, offset(2e-3 * reference));
    }
  }

  /** The grid of a plate that is racked is fine at both its faces. */
  static Stream<Casting> platesOnRacksToo() {
    return Stream.concat(plates(), Stream.of(turned(OpenFaces.TURNED), turned(OpenFaces.BOTH)));
  }

  @ParameterizedTest
  @MethodSource("platesOnRacksToo")
  void halvingTheCellsMovesDryThroughByLessThanThreePerThousand(Casting drying) {
    int dry = Milestone.DRY_THROUGH.ordinal();
    Tolerance tight = new Tolerance(1e-6, 1e-7, 1e-4);
    double forecast = solve(drying, SpotSolver.nodes(drying), reference(tight)).milestoneS[dry];
    double finer =
        solve(drying, 2 * SpotSolver.nodes(drying) - 1, reference(tight)).milestoneS[dry];
    assertThat(forecast).isCloseTo(finer, offset(3e-3 * finer));
  }

  @ParameterizedTest
  @MethodSource("plates")
  void closesTheWaterBalanceForAnyTolerance(Casting drying) {
    for (double loose : new double[] {1e-6, 1e-4, 1e-3, 1e-2}) {
      Tolerance tolerance = new Tolerance(loose, loose / 5, 100 * loose);
      assertThat(solve(drying, SpotSolver.nodes(drying), ofForecast(tolerance)).balanceError)
          .isLessThan(1e-9);
    }
  }

  /** Fewer bytes a solve than one number a step would take: nothing is made step by step. */
  @Test
  void allocatesNothingWhileItSteps() {
    PreparedCase prepared = PreparedCase.of(Castings.USUAL);
    SpotSolver solver = new SpotSolver(prepared, new double[0]);
    SpotSolution trace = new SpotSolution();
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    assumeTrue(threads.isThreadAllocatedMemorySupported(), "this JVM does not count bytes");
    for (int i = 0; i < 300; i++) {
      solver.solve(Spot.NOMINAL, ParameterSample.NONE, DryingForecaster.HORIZON_S, trace);
    }
    int solves = 200;
    long before = threads.getCurrentThreadAllocatedBytes();
    for (int i = 0; i < solves; i++) {
      solver.solve(Spot.NOMINAL, ParameterSample.NONE, DryingForecaster.HORIZON_S, trace);
    }
    long each = (threads.getCurrentThreadAllocatedBytes() - before) / solves;
    assertThat(each).isLessThan(8L * trace.stepEndsS().length);
  }

  /** More glycerol as a likely case is the same as a plate of a paste that has it. */
  @Test
  void aCaseWithMoreGlycerolIsThatPaste() {
    Casting sweeter =
        Castings.plate(
            3,
            Castings.USUAL.composition().times(1.5, Ingredient.GLYCEROL),
            Castings.room(20, 50, 0.1),
            60);
    double asked = SolvedPlates.hoursToDry(sweeter);
    double dryS =
        SolvedPlates.spot(
                Castings.USUAL,
                Spot.NOMINAL,
                ParameterSample.NONE.with(UncertainParameter.PLASTICISER, Math.log(1.5)))
            .milestoneS[Milestone.DRY_THROUGH.ordinal()];
    assertThat(dryS / 3600).isCloseTo(asked, offset(1e-3 * asked));
    assertThat(Math.abs(asked / SolvedPlates.hoursToDry(Castings.USUAL) - 1)).isGreaterThan(3e-3);
  }

  /** One object solves one case after another, each as if it were the first. */
  @Test
  void nothingOfACaseStaysForTheNext() {
    Casting drying = turned(OpenFaces.BOTH);
    PreparedCase prepared = PreparedCase.of(drying);
    SpotSolution first = new SpotSolution();
    SpotSolution again = new SpotSolution();
    SpotSolver solver = new SpotSolver(prepared, new double[0]);
    solver.solve(Spot.NOMINAL, ParameterSample.NONE, DryingForecaster.HORIZON_S, first);
    ParameterSample sweeter = ParameterSample.NONE.with(UncertainParameter.PLASTICISER, 0.5);
    solver.solve(Spot.THIN_EDGE, sweeter, DryingForecaster.HORIZON_S, again);
    assertThat(again.milestoneS).isNotEqualTo(first.milestoneS);
    SpotSolution alone = SolvedPlates.spot(drying, Spot.THIN_EDGE, sweeter);
    assertThat(again).usingRecursiveComparison().ignoringFields("endsS").isEqualTo(alone);
    assertThat(again.stepEndsS()).isEqualTo(alone.stepEndsS()).isSorted();
    solver.solve(Spot.NOMINAL, ParameterSample.NONE, DryingForecaster.HORIZON_S, again);
    assertThat(again.milestoneS).isEqualTo(first.milestoneS);
    assertThat(again.balanceError).isEqualTo(first.balanceError).isLessThan(1e-9);
  }

  @ParameterizedTest
  @MethodSource("varyingPlates")
  void closesTheWaterBalanceInVaryingRoomsAndWhenTurned(Casting drying) {
    assertThat(
            solve(drying, SpotSolver.nodes(drying), ofForecast(SpotSolver.TOLERANCE)).balanceError)
        .isLessThan(1e-9);
  }

  static Stream<Casting> varyingPlates() {
    Room swing = new SwingingRoom(new AirState(288.15, 0.65, 0.1), 6, 0.2, 6 * 3600.0);
    return Stream.of(
        Castings.plate(3, Castings.paste(0.08, 0.3), swing, 60),
        turned(OpenFaces.TURNED),
        turned(OpenFaces.BOTH));
  }

  private static Casting turned(OpenFaces open) {
    return Castings.plate(
        4,
        Castings.paste(0.08, 0.3),
        Castings.room(20, 50, 0.1),
        60,
        OptionalDouble.empty(),
        List.of(new FaceChange(50 * 3600.0, open)));
  }

  private static Function<DiffusionSystem, RosenbrockIntegrator> ofForecast(Tolerance tolerance) {
    return system -> new RosenbrockIntegrator(system, tolerance);
  }

  private static Function<DiffusionSystem, RosenbrockIntegrator> reference(Tolerance tolerance) {
    return system -> ReferenceIntegrator.of(system, tolerance);
  }

  private static SpotSolution solve(
      Casting drying, int nodes, Function<DiffusionSystem, RosenbrockIntegrator> integrator) {
    PreparedCase prepared = PreparedCase.of(drying);
    Grid grid = SpotSolver.grid(drying, nodes);
    SpotSolution trace = new SpotSolution();
    new SpotSolver(prepared, new double[0], grid, integrator)
        .solve(Spot.NOMINAL, ParameterSample.NONE, DryingForecaster.HORIZON_S, trace);
    return trace;
  }

  /** The plate is as warm as the room at the pour, not half an hour later. */
  @Test
  void startsAlikeInARoomThatStaysAndInOneThatWarmsUp() {
    Room stays = Castings.room(12, 60, 0.1);
    Room warmsUp = new SwingingRoom(Castings.room(18, 60, 0.1).at(0), 6, 0, DAY_S / 2);
    assertThat(startK(warmsUp)).isCloseTo(startK(stays), offset(1e-9));
  }

  /** Poured it is as moist everywhere as its paste, the open face too. */
  @Test
  void startsEven() {
    SpotMoment pour = pour(Castings.room(20, 50, 0.1));
    double moisture = Castings.paste(0.08, 0.3).waterKgPerKgDry();
    assertThat(pour.meanMoisture()).isCloseTo(moisture, offset(1e-9));
    assertThat(pour.skinMoisture()).isCloseTo(moisture, offset(1e-9));
    assertThat(pour.coreMoisture()).isCloseTo(moisture, offset(1e-9));
  }

  private static double startK(Room room) {
    return pour(room).temperatureK();
  }

  private static SpotMoment pour(Room room) {
    Casting drying = Castings.plate(2, Castings.paste(0.08, 0.3), room, 60);
    return new SpotSolver(PreparedCase.of(drying), new double[0])
        .moments(Spot.NOMINAL, ParameterSample.NONE, new double[] {0})
        .get(0);
  }
}
