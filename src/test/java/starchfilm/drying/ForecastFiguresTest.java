package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.Quantiles;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Extrapolation;

/** How the figures of one forecast belong together. */
class ForecastFiguresTest {
  private static final int DRAWS = 200;
  private static final DryingForecaster FORECASTER =
      new DryingForecaster(ParameterDistribution.textbook(), DRAWS);
  private final DryingForecast usual = FORECASTER.forecast(Castings.USUAL);

  @Test
  void oneSpotAloneIsTheSameAsAmongThree() {
    for (Spot spot : Spot.values()) {
      SpotForecast alone = FORECASTER.forecast(Castings.USUAL, spot);
      assertThat(alone).isEqualTo(usual.at(spot));
      assertThat(alone.milestones()).hasSize(Milestone.values().length);
    }
    assertThat(usual.spots()).containsOnlyKeys(Spot.values());
    Casting damp = Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(20, 100, 0.1), 20);
    assertThat(FORECASTER.forecast(damp, Spot.NOMINAL))
        .isEqualTo(FORECASTER.forecast(damp).at(Spot.NOMINAL));
  }

  @Test
  void theMiddleCaseIsOneSolve() {
    double middle =
        FORECASTER
            .middleCaseS(Castings.USUAL, Spot.THICK_SPOT)
            .applyAsDouble(Milestone.DRY_THROUGH);
    SpotSolution trace = SolvedPlates.spot(Castings.USUAL, Spot.THICK_SPOT, ParameterSample.NONE);
    double exact = trace.milestoneS[Milestone.DRY_THROUGH.ordinal()];
    assertThat(middle).isCloseTo(exact, within(1e-3 * exact));
    Band band = usual.at(Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).timeS();
    assertThat(middle).isBetween(band.low(), band.high());
  }

  /** Dry times later than peelable ones everywhere, so their middle is that of the dry times. */
  @Test
  void readyTimesAreThoseOfTheForecast() {
    double[] ready =
        new DryingForecaster(ParameterDistribution.textbook(), DRAWS)
            .readyS(Castings.USUAL, Spot.NOMINAL);
    Band band = Quantiles.band(ready);
    Band forecast = usual.at(Spot.NOMINAL).at(Milestone.DRY_THROUGH).timeS();
    assertThat(band.low()).isCloseTo(forecast.low(), within(2e-3 * forecast.low()));
    assertThat(band.middle()).isCloseTo(forecast.middle(), within(2e-3 * forecast.middle()));
    assertThat(band.high()).isCloseTo(forecast.high(), within(2e-3 * forecast.high()));
    Casting damp = Castings.plate(3, Castings.paste(0.08, 0.3), Castings.room(20, 100, 0.1), 20);
    assertThat(new DryingForecaster(ParameterDistribution.textbook(), 3).readyS(damp, Spot.NOMINAL))
        .containsOnly(Double.POSITIVE_INFINITY);
    assertThatThrownBy(() -> new DryingForecaster(ParameterDistribution.textbook(), 0))
        .hasMessage("a forecast needs at least 1 draw, not 0");
  }

  /** Where it is peelable last, as in a damp room, that is when it is ready. */
  @Test
  void readyIsDryAndPeelable() {
    Casting damp = Castings.plate(3, Castings.paste(0.08, 0.4), Castings.room(20, 84, 0.1), 20);
    double[] ready =
        new DryingForecaster(ParameterDistribution.textbook(), DRAWS).readyS(damp, Spot.NOMINAL);
    SpotForecast spot = FORECASTER.forecast(damp, Spot.NOMINAL);
    double latest =
        Math.max(
            spot.at(Milestone.PEELABLE).timeS().middle(),
            spot.at(Milestone.DRY_THROUGH).timeS().middle());
    assertThat(Quantiles.band(ready).middle()).isGreaterThanOrEqualTo(latest);
  }

  @Test
  void theCurveRunsFromThePourToALittlePastDry() {
    List<CurvePoint> curve = usual.curve();
    double late = usual.at(Spot.THICK_SPOT).at(Milestone.DRY_THROUGH).timeS().high();
    assertThat(curve).hasSize(73);
    assertThat(curve.get(0).timeS()).isZero();
    assertThat(curve.get(36).timeS()).isCloseTo(0.55 * late, within(1e-3));
    assertThat(curve.get(72).timeS()).isCloseTo(1.1 * late, within(1e-3));
    assertThat(usual.curveEndS()).isEqualTo(curve.get(72).timeS());
    assertThat(curve.get(0).nominal().middle())
        .isCloseTo(usual.startMoisture(), within(0.1 * usual.startMoisture()));
    for (int i = 1; i < curve.size(); i++) {
      assertThat(curve.get(i).nominal().middle())
          .isLessThanOrEqualTo(curve.get(i - 1).nominal().middle() + 1e-3);
    }
    CurvePoint half = curve.get(24);
    assertThat(half.thinEdge()).isLessThan(half.nominal().middle());
    assertThat(half.nominal().middle()).isLessThan(half.thickSpot());
    assertThat(curve.get(72).nominal().middle())
        .isCloseTo(usual.equilibriumMoisture(), within(0.03));
  }

  /** Solids stay: thickness goes with the volume per kilogram of them. Densities as in `recipe`. */
  @Test
  void thicknessFollowsTheVolume() {
    Composition paste = Castings.USUAL.composition();
    double wet = volume(paste.waterKgPerKgDry());
    double dry = volume(usual.equilibriumMoisture());
    double[] ratios = {0.75, 1, 1.25};
    Spot[] spots = {Spot.THIN_EDGE, Spot.NOMINAL, Spot.THICK_SPOT};
    for (int i = 0; i < spots.length; i++) {
      SpotForecast spot = usual.at(spots[i]);
      assertThat(spot.wetThicknessM()).isCloseTo(0.003 * ratios[i], within(1e-12));
      assertThat(spot.dryThicknessM()).isCloseTo(0.003 * ratios[i] * dry / wet, within(1e-12));
    }
  }

  private static double volume(double moisture) {
    return (1 / 1.3) / 1500 + (0.3 / 1.3) / 1258 + moisture / 997;
  }

  @Test
  void flagsColdAirAndDampAir() {
    DryingForecast cold =
        FORECASTER.forecast(
            Castings.plate(1, Castings.paste(0.08, 0.3), Castings.room(3, 95, 0.1), 20));
    assertThat(cold.extrapolations())
        .extracting(Extrapolation::rule)
        .contains("diffusivity of water", "equilibrium moisture content");
    assertThat(usual.extrapolations()).isEmpty();
  }

  /** Air of a room moves by 0.03 m/s at least; what is noted as stiller is taken so, and said. */
  @Test
  void flagsAirStillerThanAnyRooms() {
    DryingForecast still =
        FORECASTER.forecast(
            Castings.plate(1, Castings.paste(0.08, 0.3), Castings.room(20, 50, 0.02), 20));
    assertThat(still.extrapolations())
        .singleElement()
        .satisfies(
            found -> {
              assertThat(found.rule()).isEqualTo("exchange with still air");
              assertThat(found.given()).isEqualTo(0.02);
            });
    assertThat(
            FORECASTER
                .forecast(
                    Castings.plate(1, Castings.paste(0.08, 0.3), Castings.room(20, 50, 0.03), 20))
                .extrapolations())
        .isEmpty();
  }

  /** One factor alone varies, so it is the whole range; none, and nothing is said. */
  @Test
  void theRangeComesFromWhatVaries() {
    for (UncertainParameter factor :
        List.of(
            UncertainParameter.AIR_SIDE,
            UncertainParameter.THICKNESS,
            UncertainParameter.HUMIDITY)) {
      DryingForecast forecast =
          DryingForecaster.ofOnePlate(only(factor, 0.05), 64).forecast(Castings.USUAL);
      assertThat(forecast.spreadDrivers()).extracting(SpreadDriver::factor).containsExactly(factor);
      assertThat(forecast.spreadDrivers().get(0).share()).isCloseTo(1, within(1e-12));
    }
    assertThat(
            DryingForecaster.ofOnePlate(only(UncertainParameter.AIR_SIDE, 1e-8), 64)
                .forecast(Castings.USUAL)
                .spreadDrivers())
        .isEmpty();
  }

  /**
   * A film in a room dries in proportion to its thickness, nearly: 5 % of thickness count about as
   * much as 5 % of the air side, and both together are the whole, the larger first.
   */
  @Test
  void sharesAddUp() {
    double[][] covariance =
        new double[UncertainParameter.values().length][UncertainParameter.values().length];
    covariance[UncertainParameter.THICKNESS.ordinal()][UncertainParameter.THICKNESS.ordinal()] =
        0.0025;
    covariance[UncertainParameter.AIR_SIDE.ordinal()][UncertainParameter.AIR_SIDE.ordinal()] =
        0.0004;
    ParameterDistribution model =
        ParameterDistribution.learnt(new double[covariance.length], covariance);
    List<SpreadDriver> drivers =
        DryingForecaster.ofOnePlate(model, 128).forecast(Castings.USUAL).spreadDrivers();
    assertThat(drivers)
        .extracting(SpreadDriver::factor)
        .containsExactly(UncertainParameter.THICKNESS, UncertainParameter.AIR_SIDE);
    assertThat(drivers.get(0).share() + drivers.get(1).share()).isCloseTo(1, within(1e-12));
    assertThat(drivers.get(0).share()).isBetween(0.8, 0.99);
  }

  /** They follow from slopes, however few cases make the range. */
  @Test
  void fewCasesTellTheSameDriversAsMany() {
    ParameterDistribution textbook = ParameterDistribution.textbook();
    assertThat(new DryingForecaster(textbook, 20).forecast(Castings.USUAL).spreadDrivers())
        .isEqualTo(new DryingForecaster(textbook, 128).forecast(Castings.USUAL).spreadDrivers());
  }

  private static ParameterDistribution only(UncertainParameter factor, double sd) {
    double[][] covariance =
        new double[UncertainParameter.values().length][UncertainParameter.values().length];
    covariance[factor.ordinal()][factor.ordinal()] = sd * sd;
    return ParameterDistribution.learnt(new double[covariance.length], covariance);
  }
}
