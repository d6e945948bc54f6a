package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.numerics.diffusion.RosenbrockIntegrator;
import starchfilm.numerics.diffusion.Tolerance;

/** How a spot stands between the ends of steps. */
class MomentReaderTest {
  private static final Tolerance FINE = new Tolerance(1e-6, 1e-7, 0.01);

  static Stream<Casting> plates() {
    return Stream.concat(
        Stream.of(
            Castings.USUAL,
            Castings.USUAL.with(List.of(new FaceChange(10 * 3600, OpenFaces.BOTH))),
            Castings.plate(1, Castings.paste(0.06, 0), Castings.room(20, 50, 0.1), 60)),
        Stream.concat(AnyPlates.of(3).stream(), AnyPlates.logged(2).stream()));
  }

  /** Both take the same steps but the last, which may be off by a thousandth. */
  @ParameterizedTest
  @MethodSource("plates")
  void theAverageIsThatOfTheCurve(Casting plate) {
    double[] timesS = timesS(plate);
    SpotSolution solved = new SpotSolution();
    new SpotSolver(PreparedCase.of(plate), timesS)
        .solve(Spot.THICK_SPOT, ParameterSample.NONE, DryingForecaster.HORIZON_S, solved);

    List<SpotMoment> moments = moments(plate, timesS);

    for (int i = 0; i < timesS.length; i++) {
      assertThat(moments.get(i).timeS()).isEqualTo(timesS[i]);
      assertThat(moments.get(i).meanMoisture()).isCloseTo(solved.curve[i], within(1e-3));
    }
  }

  /**
   * The solver's own error, root mean square of the moisture, is up to 1 % in the logged rooms
   * here; twice that is allowed. Curves of single nodes would be off by a fifth and more.
   */
  @ParameterizedTest
  @MethodSource("plates")
  void skinAndCoreAreThoseOfAFineSolve(Casting plate) {
    double[] timesS = timesS(plate);
    PreparedCase prepared = PreparedCase.of(plate);
    SpotSolver fine =
        new SpotSolver(
            prepared,
            new double[0],
            SpotSolver.grid(plate, SpotSolver.nodes(plate)),
            system -> new RosenbrockIntegrator(system, FINE));
    List<SpotMoment> moments = moments(plate, timesS);
    List<SpotMoment> asked = fine.moments(Spot.THICK_SPOT, ParameterSample.NONE, timesS);
    double skin = 0;
    double core = 0;
    for (int i = 0; i < timesS.length; i++) {
      double allowed = Math.max(0.3, asked.get(i).meanMoisture());
      skin += square((moments.get(i).skinMoisture() - asked.get(i).skinMoisture()) / allowed);
      core += square((moments.get(i).coreMoisture() - asked.get(i).coreMoisture()) / allowed);
      assertThat(moments.get(i).skinMoisture())
          .isLessThanOrEqualTo(moments.get(i).coreMoisture() + 1e-9);
    }
    assertThat(Math.sqrt(skin / timesS.length)).isLessThan(0.02);
    assertThat(Math.sqrt(core / timesS.length)).isLessThan(0.02);
  }

  private static double square(double value) {
    return value * value;
  }

  private static List<SpotMoment> moments(Casting plate, double[] timesS) {
    return new SpotSolver(PreparedCase.of(plate), new double[0])
        .moments(Spot.THICK_SPOT, ParameterSample.NONE, timesS);
  }

  /** From the pour to dry-through, closer together at first. */
  private static double[] timesS(Casting plate) {
    double dryS =
        SolvedPlates.spot(plate, Spot.THICK_SPOT, ParameterSample.NONE).at(Milestone.DRY_THROUGH);
    double[] timesS = new double[41];
    Arrays.setAll(
        timesS, i -> Math.min(dryS, DryingForecaster.HORIZON_S) * Math.pow(i / 40.0, 1.5));
    return timesS;
  }
}
