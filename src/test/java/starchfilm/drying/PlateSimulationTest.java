package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.FaceChange;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Spot;
import starchfilm.drying.PlateSimulation.Steps;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.numerics.diffusion.ReferenceIntegrator;
import starchfilm.numerics.diffusion.Tolerance;

/** What a scale under a plate shows, out of the same equations as the forecast. */
class PlateSimulationTest {
  private static final double HOUR_S = 3_600;
  private static final Casting PLATE = Castings.USUAL;

  @Test
  void atThePourTheScaleShowsThePaste() {
    double[] masses = new double[1];
    new PlateSimulation(PLATE, 0).filmMassesKg(ParameterSample.NONE, masses);

    double poured =
        PLATE.pour().wetThicknessM().value()
            * PLATE.plate().areaM2()
            * PLATE.composition().pasteDensityKgPerM3();
    assertThat(masses[0]).isCloseTo(poured, within(1e-12));
  }

  @Test
  void whileTheWholePlateIsWetOnlyWaterLeavesAndUnevennessDoesNotShow() {
    // In the constant-rate period the room alone sets the pace, whatever the thickness below.
    double[] uneven = new double[2];
    double[] even = new double[2];
    new PlateSimulation(PLATE, 0, 12 * HOUR_S).filmMassesKg(ParameterSample.NONE, uneven);
    new PlateSimulation(withUnevenness(PLATE, 0), 0, 12 * HOUR_S)
        .filmMassesKg(ParameterSample.NONE, even);

    assertThat(uneven[0]).isCloseTo(even[0], within(1e-12));
    assertThat(uneven[0] - uneven[1]).isCloseTo(even[0] - even[1], within(0.01 * even[0]));
  }

  @Test
  void inTheEndTheScaleShowsSolidsWithTheirRestingMoisture() {
    double late = 40 * 24 * HOUR_S;
    PlateSimulation simulation = new PlateSimulation(PLATE, 0, late);
    double[] masses = new double[2];
    simulation.filmMassesKg(ParameterSample.NONE, masses);

    double resting =
        new DryingForecaster(ParameterDistribution.textbook(), 20)
            .forecast(PLATE)
            .equilibriumMoisture();
    double solids = masses[0] * PLATE.composition().drySolids();
    assertThat(masses[1]).isCloseTo(solids * (1 + resting), within(2e-3 * masses[1]));
  }

  @Test
  void showsTheSameTwiceAndMoreOfAThickerPour() {
    PlateSimulation simulation = new PlateSimulation(PLATE, 0, 12 * HOUR_S);
    double[] once = new double[2];
    simulation.filmMassesKg(ParameterSample.NONE, once);
    double[] twice = once.clone();
    simulation.filmMassesKg(ParameterSample.NONE, twice);
    assertThat(twice).containsExactly(once);

    double[] thicker = new double[2];
    simulation.filmMassesKg(
        ParameterSample.NONE.with(UncertainParameter.THICKNESS, Math.log(1.1)), thicker);
    assertThat(thicker[0]).isCloseTo(1.1 * once[0], within(1e-12));
  }

  @Test
  void aThickPartKeepsItsWaterWhenTheNominalSpotIsDry() {
    PlateSimulation even = new PlateSimulation(withUnevenness(PLATE, 0));
    double dryS = even.milestoneS(Milestone.DRY_THROUGH, Spot.NOMINAL, ParameterSample.NONE);
    double[] unevenMass = new double[1];
    double[] evenMass = new double[1];
    new PlateSimulation(PLATE, dryS).filmMassesKg(ParameterSample.NONE, unevenMass);
    new PlateSimulation(withUnevenness(PLATE, 0), dryS)
        .filmMassesKg(ParameterSample.NONE, evenMass);

    assertThat(unevenMass[0]).isGreaterThan(1.02 * evenMass[0]);
  }

  @Test
  void milestonesAreThoseOfTheForecastsMiddleCase() {
    double forecast =
        new DryingForecaster(ParameterDistribution.textbook(), 20)
            .middleCaseS(PLATE, Spot.THICK_SPOT)
            .applyAsDouble(Milestone.DRY_THROUGH);

    assertThat(
            new PlateSimulation(PLATE)
                .milestoneS(Milestone.DRY_THROUGH, Spot.THICK_SPOT, ParameterSample.NONE))
        .isEqualTo(forecast);
  }

  @Test
  void theSlopeInTheDiffusivityIsThatOfAFineSolve() {
    // Water's diffusivity hardly moves a weight under way, so its slope is the first to drown in
    // the roughness of a solve. Half a decigram is less than any kitchen scale shows.
    double[] timesS = {6 * HOUR_S, 24 * HOUR_S, 60 * HOUR_S};
    Casting even = withUnevenness(PLATE, 0);
    ParameterSample more = ParameterSample.NONE.with(UncertainParameter.DIFFUSIVITY, 1);
    double[] base = new double[3];
    double[] moved = new double[3];
    PlateSimulation simulation = new PlateSimulation(even, timesS);
    simulation.filmMassesKg(more, simulation.filmMassesKg(ParameterSample.NONE, base), moved);

    double[] fineBase = fineMasses(even, timesS, ParameterSample.NONE);
    double[] fineMoved = fineMasses(even, timesS, more);
    for (int i = 0; i < timesS.length; i++) {
      assertThat(moved[i] - base[i]).isCloseTo(fineMoved[i] - fineBase[i], within(5e-5));
    }
  }

  @Test
  void aTurnedPlateWithItsOwnStepsIsTheSame() {
    double[] own = new double[2];
    double[] followed = new double[2];
    PlateSimulation turned =
        new PlateSimulation(
            PLATE.with(List.of(new FaceChange(10 * HOUR_S, OpenFaces.BOTH))),
            8 * HOUR_S,
            30 * HOUR_S);
    Steps steps = turned.filmMassesKg(ParameterSample.NONE, own);

    turned.filmMassesKg(ParameterSample.NONE, steps, followed);

    assertThat(followed).containsExactly(own);
  }

  private static double[] fineMasses(Casting drying, double[] timesS, ParameterSample deviations) {
    SpotSolution trace = new SpotSolution();
    new SpotSolver(
            PreparedCase.of(drying),
            timesS,
            SpotSolver.grid(drying, SpotSolver.nodes(drying)),
            system -> ReferenceIntegrator.of(system, new Tolerance(2e-6, 5e-7, 0.1)))
        .solve(Spot.NOMINAL, deviations, timesS[timesS.length - 1], trace);
    return Arrays.stream(trace.curve)
        .map(moisture -> drying.plate().areaM2() * trace.solidsKgPerM2 * (1 + moisture))
        .toArray();
  }

  private static Casting withUnevenness(Casting drying, double unevenness) {
    return drying.with(drying.pour().withUnevenness(unevenness));
  }

  @Test
  void aPlateThatIsNeverWeighedHasNoMasses() {
    double[] none = {};
    PlateSimulation simulation = new PlateSimulation(PLATE);
    simulation.filmMassesKg(
        ParameterSample.NONE, simulation.filmMassesKg(ParameterSample.NONE, none), none);
    assertThat(simulation.milestoneS(Milestone.PEELABLE, Spot.NOMINAL, ParameterSample.NONE))
        .isPositive()
        .isFinite();
  }

  @Test
  void refusesTimesThatGoBack() {
    assertThatThrownBy(() -> new PlateSimulation(PLATE, 10, 5))
        .hasMessage("times of weighing must be 0 s or more and in order, not [10.0, 5.0]");
    assertThatThrownBy(() -> new PlateSimulation(PLATE, -1)).hasMessageContaining("not [-1.0]");
  }
}
