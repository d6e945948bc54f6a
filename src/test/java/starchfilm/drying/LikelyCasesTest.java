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
  void twentyFourGiveTheRangeOfThousandsWithinSixPercent(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    isNear(prepared, CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared)), 0.06);
  }

  /** Weighings narrow what is open. */
  @ParameterizedTest
  @MethodSource("plates")
  void twentyFourGiveANarrowRangeWithinThreePercent(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    double[][] covariance = TEXTBOOK.covariance();
    for (double[] row : covariance) {
      Arrays.setAll(row, k -> row[k] / 25);
    }
    isNear(prepared, ParameterDistribution.learnt(new double[covariance.length], covariance), 0.03);
  }

  /** A wish or a pour may ask for a date that holds in 99 of 100: beyond all cases. */
  @ParameterizedTest
  @MethodSource("plates")
  void twentyFourGiveTheDateThatHoldsIn99Of100(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    ParameterDistribution model = CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared));
    LikelyCases likely = LikelyCases.of(prepared, model, DryingForecaster.DRAWS);
    SpotSolution[] few = solved(prepared, likely.cases());
    SpotSolution[] many = solved(prepared, model.draws(4096));
    double asked = Quantiles.of(DryingForecaster.times(many, Milestone.DRY_THROUGH), 0.99);
    assertThat(Quantiles.of(sample(likely, few, Milestone.DRY_THROUGH), 0.99))
        .isCloseTo(asked, within(0.15 * asked));
  }

  private static void isNear(PreparedCase prepared, ParameterDistribution model, double share) {
    LikelyCases likely = LikelyCases.of(prepared, model, DryingForecaster.DRAWS);
    SpotSolution[] few = solved(prepared, likely.cases());
    SpotSolution[] many = solved(prepared, model.draws(4096));
    for (Milestone milestone : Milestone.values()) {
      Band band = Quantiles.band(sample(likely, few, milestone));
      Band asked = Quantiles.band(DryingForecaster.times(many, milestone));
      assertThat(band.low()).isCloseTo(asked.low(), within(share * asked.low()));
      assertThat(band.middle()).isCloseTo(asked.middle(), within(share * asked.middle()));
      assertThat(band.high()).isCloseTo(asked.high(), within(share * asked.high()));
    }
  }

  private static double[] sample(LikelyCases likely, SpotSolution[] few, Milestone milestone) {
    return LikelyCases.sample(
        DryingForecaster.times(few, milestone),
        likely.along(Spot.THICK_SPOT, one -> one.at(milestone)));
  }

  private static SpotSolution[] solved(PreparedCase prepared, ParameterSample[] cases) {
    return DryingForecaster.solve(prepared, Spot.THICK_SPOT, cases);
  }

  private static SpotSolution middle(PreparedCase prepared) {
    return DryingForecaster.solveOne(prepared, Spot.NOMINAL, TEXTBOOK.mean());
  }

  /** Where a film may stay soft, its times are those of the rest, and the rest must be enough. */
  @Test
  void areTwiceAsManyWhereThePlateMayStaySoft() {
    PreparedCase usual = PreparedCase.of(Castings.USUAL);
    assertThat(LikelyCases.of(usual, TEXTBOOK, 24).cases()).hasSize(24);
    PreparedCase damp =
        PreparedCase.of(
            Castings.plate(2, Castings.paste(0.08, 0.2), Castings.room(20, 90, 0.1), 20));
    assertThat(LikelyCases.of(damp, TEXTBOOK, 24).cases()).hasSize(48);
  }

  /** Five points more of humidity would keep it wet, so the slope is found the other way. */
  @Test
  void followsTheSlopeOfARoomThatIsAlmostTooDamp() {
    Casting drying = Castings.plate(2, Castings.paste(0.08, 0.2), Castings.room(20, 90, 0.1), 20);
    PreparedCase prepared = PreparedCase.of(drying);
    ParameterDistribution model = CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared));
    ParameterSample[] cases = LikelyCases.of(prepared, model, DryingForecaster.DRAWS).cases();
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
    assertThat(LikelyCases.of(prepared, TEXTBOOK, 16).cases()).isEqualTo(TEXTBOOK.draws(32));
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
