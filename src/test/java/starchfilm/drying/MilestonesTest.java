package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
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
import starchfilm.material.air.AirState;
import starchfilm.numerics.diffusion.RosenbrockIntegrator;

/** What a milestone's moment means, read back from a solve that stops exactly there. */
class MilestonesTest {
  private static final double HOUR_S = 3_600;

  static Stream<Casting> plates() {
    Room swing = new SwingingRoom(new AirState(293.15, 0.5, 0.1), 4, 0.1, 6 * HOUR_S);
    return Stream.of(
        Castings.USUAL,
        Castings.plate(1, Castings.paste(0.05, 0.4), Castings.room(22, 55, 0.1), 22),
        Castings.plate(3, Castings.paste(0.08, 0.3), swing, 60),
        changed(1, OpenFaces.TURNED),
        changed(0, OpenFaces.BOTH),
        changed(1, OpenFaces.BOTH),
        changed(20, OpenFaces.BOTH),
        changed(40, OpenFaces.TURNED));
  }

  private static Casting changed(double hours, OpenFaces open) {
    return Castings.plate(
        3,
        Castings.paste(0.08, 0.3),
        Castings.room(20, 50, 0.1),
        60,
        OptionalDouble.empty(),
        List.of(new FaceChange(hours * HOUR_S, open)));
  }

  /**
   * The skin is at 0.35 when it is skin-dry, the wettest part when it is peelable. Of two skins the
   * wetter decides, while a moment tells the drier, which cracks first.
   */
  @ParameterizedTest
  @MethodSource("plates")
  void comeWhenTheGoverningPartReachesThem(Casting drying) {
    SpotSolution trace = SolvedPlates.spot(drying, Spot.THICK_SPOT, ParameterSample.NONE);
    PreparedCase prepared = PreparedCase.of(drying);
    List<SpotMoment> moments =
        new SpotSolver(prepared, new double[0])
            .moments(Spot.THICK_SPOT, ParameterSample.NONE, trace.milestoneS.clone());
    assertThat(trace.milestoneS).isSorted();
    if (drying.faces().stream().anyMatch(face -> face.open() == OpenFaces.BOTH)) {
      assertThat(moments.get(0).skinMoisture()).isBetween(0.3, 0.345);
    } else {
      assertThat(moments.get(0).skinMoisture()).isCloseTo(0.35, within(0.002));
    }
    assertThat(moments.get(1).coreMoisture()).isCloseTo(0.35, within(0.002));
    double rest =
        prepared
            .material()
            .isotherm()
            .moisture(trace.restingActivity, moments.get(2).temperatureK());
    assertThat(moments.get(2).coreMoisture()).isCloseTo(rest + 0.02, within(0.002));
    assertThat(trace.restingMoisture).isCloseTo(rest, within(0.01));
  }

  /**
   * The curve is what is left of the water: the mean over the thickness, solved up to each time.
   */
  @ParameterizedTest
  @MethodSource("plates")
  void theCurveIsTheMeanMoisture(Casting drying) {
    double[] times = {0, HOUR_S, 5 * HOUR_S, 17 * HOUR_S, 40 * HOUR_S, 60 * HOUR_S};
    PreparedCase prepared = PreparedCase.of(drying);
    SpotSolution trace = new SpotSolution();
    new SpotSolver(prepared, times)
        .solve(Spot.NOMINAL, ParameterSample.NONE, DryingForecaster.HORIZON_S, trace);
    List<SpotMoment> moments =
        new SpotSolver(prepared, new double[0]).moments(Spot.NOMINAL, ParameterSample.NONE, times);
    for (int i = 0; i < times.length; i++) {
      assertThat(trace.curve[i])
          .as("after %s s", times[i])
          .isCloseTo(moments.get(i).meanMoisture(), within(2e-3 * (0.3 + trace.startMoisture)));
    }
    assertThat(trace.curve[0]).isCloseTo(trace.startMoisture, within(1e-9));
  }

  /** A rack from the pour on beats one from 20 hours on, and that beats none. */
  @Test
  void aRackHelpsTheMoreTheSoonerItComes() {
    double atOnce = SolvedPlates.hoursToDry(changed(0, OpenFaces.BOTH));
    double later = SolvedPlates.hoursToDry(changed(20, OpenFaces.BOTH));
    assertThat(atOnce).isLessThan(0.9 * later);
    assertThat(later).isLessThan(0.95 * SolvedPlates.hoursToDry(Castings.USUAL));
  }

  /** Until the plate is turned nothing tells that it will be; turned back, it is as if never. */
  @Test
  void aChangeActsFromItsMomentOn() {
    double[] times = {10 * HOUR_S, 20 * HOUR_S, 30 * HOUR_S};
    List<SpotMoment> never = moments(Castings.USUAL, times);
    List<SpotMoment> racked = moments(changed(20, OpenFaces.BOTH), times);
    for (int i = 0; i < 2; i++) {
      assertThat(racked.get(i).meanMoisture())
          .isCloseTo(never.get(i).meanMoisture(), within(2e-3 * never.get(0).meanMoisture()));
    }
    assertThat(racked.get(2).meanMoisture()).isLessThan(0.95 * never.get(2).meanMoisture());
    assertThat(racked.get(2).skinMoisture()).isLessThanOrEqualTo(racked.get(2).meanMoisture());
    assertThat(racked.get(2).coreMoisture()).isGreaterThanOrEqualTo(racked.get(2).meanMoisture());
  }

  private static List<SpotMoment> moments(Casting drying, double[] timesS) {
    PreparedCase prepared = PreparedCase.of(drying);
    Casting turned = changed(20, OpenFaces.BOTH);
    return new SpotSolver(
            prepared,
            new double[0],
            SpotSolver.grid(turned, SpotSolver.nodes(turned)),
            system -> new RosenbrockIntegrator(system, SpotSolver.TOLERANCE))
        .moments(Spot.NOMINAL, ParameterSample.NONE, timesS);
  }
}
