package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.Quantiles;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.numerics.evidence.Band;

/** A band of few likely cases against one of thousands that follow no slope. */
class LikelyCasesTest {
  private static final ParameterDistribution TEXTBOOK = ParameterDistribution.textbook();

  static Stream<Casting> plates() {
    return Stream.of(
        Castings.USUAL,
        Castings.plate(1, Castings.paste(0.05, 0.2), Castings.room(25, 35, 0.4), 60),
        Castings.plate(6, Castings.paste(0.06, 0.35), Castings.room(18, 55, 0), 70));
  }

  @ParameterizedTest
  @MethodSource("plates")
  void twentyGiveTheRangeOfThousandsWithinTenPercent(Casting drying) {
    isNear(drying, DryingForecaster.FEWEST_DRAWS, 0.1);
  }

  @ParameterizedTest
  @MethodSource("plates")
  void fortyEightGiveItWithinSixPercent(Casting drying) {
    isNear(drying, DryingForecaster.DRAWS, 0.06);
  }

  /** Weighings narrow what is open; there a few cases do what many do elsewhere. */
  @ParameterizedTest
  @MethodSource("plates")
  void twentyGiveANarrowRangeWithinThreePercent(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    double[][] covariance = TEXTBOOK.covariance();
    for (double[] row : covariance) {
      Arrays.setAll(row, k -> row[k] / 25);
    }
    ParameterDistribution narrow =
        ParameterDistribution.learnt(new double[covariance.length], covariance);
    assertThat(LikelyCases.of(prepared, TEXTBOOK).isNarrow()).isFalse();
    assertThat(LikelyCases.of(prepared, narrow).isNarrow()).isTrue();
    assertThat(DryingForecaster.ofOnePlate(narrow, DryingForecaster.DRAWS).forecast(drying))
        .isEqualTo(
            DryingForecaster.ofOnePlate(narrow, DryingForecaster.FEWEST_DRAWS).forecast(drying));
    isNear(prepared, narrow, DryingForecaster.FEWEST_DRAWS, 0.03);
  }

  /** A wish or a pour may ask for a date that holds in 99 of 100: there the slowest case stands. */
  @ParameterizedTest
  @MethodSource("plates")
  void theSlowestOfThemIsNearTheDateThatHoldsIn99Of100(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    ParameterDistribution model = CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared));
    SpotSolution[] few =
        solved(prepared, LikelyCases.of(prepared, model).draws(DryingForecaster.DRAWS));
    SpotSolution[] many = solved(prepared, model.draws(4096));
    double asked = Quantiles.of(DryingForecaster.times(many, Milestone.DRY_THROUGH), 0.99);
    assertThat(Quantiles.of(DryingForecaster.times(few, Milestone.DRY_THROUGH), 0.99))
        .isCloseTo(asked, within(0.15 * asked));
  }

  private static void isNear(Casting drying, int count, double share) {
    PreparedCase prepared = PreparedCase.of(drying);
    isNear(
        prepared, CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared)), count, share);
  }

  private static void isNear(
      PreparedCase prepared, ParameterDistribution model, int count, double share) {
    SpotSolution[] few = solved(prepared, LikelyCases.of(prepared, model).draws(count));
    SpotSolution[] many = solved(prepared, model.draws(4096));
    for (Milestone milestone : Milestone.values()) {
      Band band = Quantiles.band(DryingForecaster.times(few, milestone));
      Band asked = Quantiles.band(DryingForecaster.times(many, milestone));
      assertThat(band.low()).isCloseTo(asked.low(), within(share * asked.low()));
      assertThat(band.middle()).isCloseTo(asked.middle(), within(share * asked.middle()));
      assertThat(band.high()).isCloseTo(asked.high(), within(share * asked.high()));
    }
  }

  private static SpotSolution[] solved(PreparedCase prepared, ParameterSample[] cases) {
    return DryingForecaster.solve(prepared, Spot.THICK_SPOT, cases);
  }

  private static SpotSolution middle(PreparedCase prepared) {
    return DryingForecaster.solveOne(prepared, Spot.NOMINAL, TEXTBOOK.mean());
  }

  /** Five points more of humidity would keep it wet, so the slope is found the other way. */
  @Test
  void followsTheSlopeOfARoomThatIsAlmostTooDamp() {
    Casting drying = Castings.plate(2, Castings.paste(0.08, 0.2), Castings.room(20, 90, 0.1), 20);
    PreparedCase prepared = PreparedCase.of(drying);
    ParameterDistribution model = CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared));
    ParameterSample[] cases = LikelyCases.of(prepared, model).draws(DryingForecaster.DRAWS);
    assertThat(cases).isNotEqualTo(model.draws(DryingForecaster.DRAWS));
    double[] few = DryingForecaster.times(solved(prepared, cases), Milestone.DRY_THROUGH);
    double[] many =
        DryingForecaster.times(solved(prepared, model.draws(4096)), Milestone.DRY_THROUGH);
    assertThat(Quantiles.finiteShare(many)).isBetween(0.5, 0.95);
    assertThat(Quantiles.finiteShare(few)).isCloseTo(Quantiles.finiteShare(many), within(0.05));
    assertThat(Quantiles.of(few, 0.5))
        .isCloseTo(Quantiles.of(many, 0.5), within(0.06 * Quantiles.of(many, 0.5)));
  }

  /** Where the thick spot never dries in the likeliest case there is no slope to follow. */
  @Test
  void spreadsEvenlyWhereNothingDries() {
    Casting damp = Castings.plate(3, Castings.paste(0.08, 0.4), Castings.room(20, 95, 0.1), 20);
    PreparedCase prepared = PreparedCase.of(damp);
    assertThat(LikelyCases.of(prepared, TEXTBOOK).draws(32)).isEqualTo(TEXTBOOK.draws(32));
  }

  /**
   * Laminar transfer goes with the square root of the speed (Incropera et al., section 7.2,
   * recalled), so a speed known to 40 % makes the transfer uncertain by another 20 %.
   */
  @Test
  void anUnsureDraughtMakesHalfAsUnsureATransfer() {
    Casting sure = Castings.USUAL;
    Casting unsure =
        sure.with(
            new DryingPlace(
                "room", sure.room(), new RoomUncertainty(0, 0, 0.4), OptionalDouble.empty()));
    assertThat(square(unsure) - square(sure)).isCloseTo(0.2 * 0.2, within(1e-9));
  }

  private static double square(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    double sd =
        CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared))
            .sd(UncertainParameter.AIR_SIDE);
    return sd * sd;
  }
}
