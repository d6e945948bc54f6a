package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.DryingCase;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Plates;
import starchfilm.casting.Room;
import starchfilm.casting.Spot;
import starchfilm.casting.SwingingRoom;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.air.AirState;
import starchfilm.material.wetfilm.FilmMaterial;
import starchfilm.numerics.diffusion.Grid;
import starchfilm.numerics.diffusion.Tolerance;

/** The numerical promises of a forecast: balance, error in time, error of the grid. */
class SpotSolverTest {
  private static final Tolerance EXACT = new Tolerance(1e-9, 1e-10, 1e-7);

  static Stream<DryingCase> plates() {
    return Stream.of(
        Plates.USUAL,
        Plates.plate(1, Plates.paste(0.05, 0.4), Plates.room(22, 55, 0.1), 22),
        Plates.plate(3, Plates.paste(0.08, 0.3), Plates.room(20, 70, 0), 80),
        Plates.plate(8, Plates.paste(0.06, 0.3), Plates.room(25, 40, 0.2), 60),
        Plates.plate(2, Plates.paste(0.08, 0), Plates.room(40, 20, 0.5), 40));
  }

  @ParameterizedTest
  @MethodSource("plates")
  void datesEveryMilestoneWithinOneThousandth(DryingCase drying) {
    SpotSolution forecast =
        solve(drying, Fineness.FORECAST.nodes(), Fineness.FORECAST.tolerance(), false);
    SpotSolution exact = solve(drying, Fineness.FORECAST.nodes(), EXACT, true);
    for (Milestone milestone : Milestone.values()) {
      double reference = exact.milestoneS[milestone.ordinal()];
      assertThat(forecast.milestoneS[milestone.ordinal()])
          .as("%s", milestone)
          .isCloseTo(reference, offset(1e-3 * reference));
    }
  }

  @ParameterizedTest
  @MethodSource("plates")
  void datesEveryMilestoneOfAQuickSolveWithinTwoPercent(DryingCase drying) {
    Fineness quick = Fineness.QUICK;
    SpotSolution coarse = solve(drying, quick.nodes(), quick.tolerance(), false);
    SpotSolution exact = solve(drying, Fineness.FORECAST.nodes(), EXACT, true);
    for (Milestone milestone : Milestone.values()) {
      double reference = exact.milestoneS[milestone.ordinal()];
      assertThat(coarse.milestoneS[milestone.ordinal()])
          .as("%s", milestone)
          .isCloseTo(reference, offset(2e-2 * reference));
    }
  }

  @ParameterizedTest
  @MethodSource("plates")
  void halvingTheCellsMovesDryThroughByLessThanThreePerThousand(DryingCase drying) {
    int dry = Milestone.DRY_THROUGH.ordinal();
    Tolerance tight = new Tolerance(1e-6, 1e-7, 1e-4);
    double forecast = solve(drying, Fineness.FORECAST.nodes(), tight, true).milestoneS[dry];
    double finer = solve(drying, 2 * Fineness.FORECAST.nodes() - 1, tight, true).milestoneS[dry];
    assertThat(forecast).isCloseTo(finer, offset(3e-3 * finer));
  }

  @ParameterizedTest
  @MethodSource("plates")
  void closesTheWaterBalanceForAnyTolerance(DryingCase drying) {
    for (double loose : new double[] {1e-6, 1e-4, 1e-3, 1e-2}) {
      Tolerance tolerance = new Tolerance(loose, loose / 5, 100 * loose);
      assertThat(solve(drying, Fineness.FORECAST.nodes(), tolerance, false).balanceError)
          .isLessThan(1e-9);
    }
  }

  /** Fewer bytes a solve than one array of the state would take: nothing is made step by step. */
  @Test
  void allocatesNothingWhileItSteps() {
    PreparedCase prepared = PreparedCase.of(Plates.USUAL, DryingForecaster.HORIZON_S);
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
    assertThat(each).isLessThan(8L * Fineness.FORECAST.nodes());
  }

  /** More glycerol as a likely case is the same as a plate of a paste that has it. */
  @Test
  void aCaseWithMoreGlycerolIsThatPaste() {
    DryingCase sweeter =
        Plates.plate(
            3,
            FilmMaterial.withGlycerol(Plates.USUAL.composition(), 1.5),
            Plates.room(20, 50, 0.1),
            60);
    double asked = Solved.hoursToDry(sweeter);
    double dryS =
        Solved.spot(
                Plates.USUAL,
                Spot.NOMINAL,
                ParameterSample.NONE.with(UncertainParameter.PLASTICISER, 0.5))
            .milestoneS[Milestone.DRY_THROUGH.ordinal()];
    assertThat(dryS / 3600).isCloseTo(asked, offset(1e-3 * asked));
    assertThat(Math.abs(asked / Solved.hoursToDry(Plates.USUAL) - 1)).isGreaterThan(3e-3);
  }

  /** One object solves one case after another, each as if it were the first. */
  @Test
  void nothingOfACaseStaysForTheNext() {
    DryingCase drying = turned(OpenFaces.BOTH);
    PreparedCase prepared = PreparedCase.of(drying, DryingForecaster.HORIZON_S);
    SpotSolution first = new SpotSolution();
    SpotSolution again = new SpotSolution();
    SpotSolver solver = new SpotSolver(prepared, new double[0]);
    solver.solve(Spot.NOMINAL, ParameterSample.NONE, DryingForecaster.HORIZON_S, first);
    ParameterSample sweeter = ParameterSample.NONE.with(UncertainParameter.PLASTICISER, 0.5);
    solver.solve(Spot.THIN_EDGE, sweeter, DryingForecaster.HORIZON_S, again);
    assertThat(again.milestoneS).isNotEqualTo(first.milestoneS);
    assertThat(again.milestoneS).isEqualTo(Solved.spot(drying, Spot.THIN_EDGE, sweeter).milestoneS);
    solver.solve(Spot.NOMINAL, ParameterSample.NONE, DryingForecaster.HORIZON_S, again);
    assertThat(again.milestoneS).isEqualTo(first.milestoneS);
    assertThat(again.balanceError).isEqualTo(first.balanceError).isLessThan(1e-9);
  }

  @ParameterizedTest
  @MethodSource("varyingPlates")
  void closesTheWaterBalanceInVaryingRoomsAndWhenTurned(DryingCase drying) {
    assertThat(
            solve(drying, Fineness.FORECAST.nodes(), Fineness.FORECAST.tolerance(), false)
                .balanceError)
        .isLessThan(1e-9);
  }

  static Stream<DryingCase> varyingPlates() {
    Room swing = new SwingingRoom(new AirState(288.15, 0.65, 0.1), 6, 0.2, 6 * 3600.0);
    return Stream.of(
        Plates.plate(3, Plates.paste(0.08, 0.3), swing, 60),
        turned(OpenFaces.TURNED),
        turned(OpenFaces.BOTH));
  }

  private static DryingCase turned(OpenFaces open) {
    return Plates.plate(
        4,
        Plates.paste(0.08, 0.3),
        Plates.room(20, 50, 0.1),
        60,
        OptionalDouble.empty(),
        List.of(new FaceChange(50 * 3600.0, open)));
  }

  private static SpotSolution solve(
      DryingCase drying, int nodes, Tolerance tolerance, boolean fourthOrder) {
    PreparedCase prepared = PreparedCase.of(drying, DryingForecaster.HORIZON_S);
    Grid grid = SpotSolver.grid(drying, nodes);
    SpotSolution trace = new SpotSolution();
    new SpotSolver(prepared, new double[0], grid, tolerance, fourthOrder)
        .solve(Spot.NOMINAL, ParameterSample.NONE, DryingForecaster.HORIZON_S, trace);
    return trace;
  }
}
