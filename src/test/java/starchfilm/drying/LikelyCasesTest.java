package starchfilm.drying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.math3.util.MathArrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.casting.Casting;
import starchfilm.casting.Castings;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.Spot;
import starchfilm.drying.uncertainty.DrawnCases;
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
  void sixteenGiveTheRangeOfThousandsWithinSixPercent(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    isNear(prepared, CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared)), 0.06);
  }

  /** Weighings narrow what is open. */
  @ParameterizedTest
  @MethodSource("plates")
  void eightGiveANarrowRangeWithinThreePercent(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    double[][] covariance = TEXTBOOK.covariance();
    for (double[] row : covariance) {
      Arrays.setAll(row, k -> row[k] / 25);
    }
    ParameterDistribution narrow =
        ParameterDistribution.learnt(new double[covariance.length], covariance);
    assertThat(new LikelyCases(prepared, narrow, DryingForecaster.DRAWS).cases()).hasSize(8);
    isNear(prepared, narrow, 0.03);
  }

  /**
   * About as much open as is just called narrow, for which half the cases do: 1.8, 2.8 and 3.5 % of
   * the plates of the test below.
   */
  @ParameterizedTest
  @MethodSource("plates")
  void eightGiveAWideOneOfNarrowRangesWithinFivePercent(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    ParameterDistribution wide = CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared));
    double[] slopes = new LikelyCases(prepared, wide, DryingForecaster.DRAWS).slopes();
    double share = 0.12 / Math.sqrt(MathArrays.linearCombination(slopes, slopes));
    double[][] covariance = wide.covariance();
    for (double[] row : covariance) {
      Arrays.setAll(row, k -> row[k] * share * share);
    }
    ParameterDistribution narrow =
        ParameterDistribution.learnt(new double[covariance.length], covariance);
    assertThat(new LikelyCases(prepared, narrow, DryingForecaster.DRAWS).cases()).hasSize(8);
    isNear(prepared, narrow, 0.05);
  }

  /**
   * The worst milestone of each spot, root mean square. Against 4096 cases, 44 plates in constant
   * rooms and 20 in logged ones gave 2.3, 2.3 and 3.5 % ({@code -Dstarchfilm.plates=44
   * -Dstarchfilm.cases=4096}); twice that is allowed the few tried here.
   */
  @Test
  void meetTheRangeOfAnyPlate() {
    int plates = Integer.getInteger("starchfilm.plates", 6);
    double[][] errors =
        Stream.concat(
                AnyPlates.of(plates).stream(), AnyPlates.logged(Math.min(20, plates / 2)).stream())
            .flatMap(LikelyCasesTest::errors)
            .toArray(double[][]::new);
    assertThat(rootMeanSquare(errors, 0)).as("10 % point").isLessThan(0.046);
    assertThat(rootMeanSquare(errors, 1)).as("middle").isLessThan(0.046);
    assertThat(rootMeanSquare(errors, 2)).as("90 % point").isLessThan(0.070);
  }

  /** Of each spot that becomes firm in nearly every case: how far its worst milestone is off. */
  private static Stream<double[]> errors(Casting plate) {
    PreparedCase prepared = PreparedCase.of(plate);
    ParameterDistribution model = CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared));
    LikelyCases likely = new LikelyCases(prepared, model, DryingForecaster.DRAWS);
    ParameterSample[] reference =
        DrawnCases.of(model, Integer.getInteger("starchfilm.cases", 1024));
    return Stream.of(Spot.values())
        .map(spot -> errors(spot, prepared, likely, reference))
        .flatMap(Optional::stream);
  }

  private static Optional<double[]> errors(
      Spot spot, PreparedCase prepared, LikelyCases likely, ParameterSample[] reference) {
    SpotSolution[] few = DryingForecaster.solve(prepared, spot, likely.cases());
    SpotSolution[] many = DryingForecaster.solve(prepared, spot, reference);
    if (Arrays.stream(many).filter(one -> one.staysSoft).count() > 0.03 * many.length) {
      return Optional.empty();
    }
    double[] worst = new double[3];
    for (Milestone milestone : Milestone.values()) {
      Band found =
          Quantiles.band(
              LikelyCases.sample(
                  firm(few, milestone), likely.along(spot, one -> one.at(milestone))));
      Band asked = Quantiles.band(LikelyCases.sample(firm(many, milestone), new double[0]));
      worst[0] = Math.max(worst[0], Math.abs(found.low() / asked.low() - 1));
      worst[1] = Math.max(worst[1], Math.abs(found.middle() / asked.middle() - 1));
      worst[2] = Math.max(worst[2], Math.abs(found.high() / asked.high() - 1));
    }
    return Optional.of(worst);
  }

  private static double[] firm(SpotSolution[] cases, Milestone milestone) {
    return Arrays.stream(cases)
        .mapToDouble(one -> one.staysSoft ? Double.NaN : one.at(milestone))
        .toArray();
  }

  private static double rootMeanSquare(double[][] errors, int point) {
    return Math.sqrt(
        Arrays.stream(errors).mapToDouble(one -> one[point] * one[point]).average().orElseThrow());
  }

  /** A wish or a pour may ask for a date that holds in 99 of 100: beyond all cases. */
  @ParameterizedTest
  @MethodSource("plates")
  void sixteenGiveTheDateThatHoldsIn99Of100(Casting drying) {
    PreparedCase prepared = PreparedCase.of(drying);
    ParameterDistribution model = CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared));
    LikelyCases likely = new LikelyCases(prepared, model, DryingForecaster.DRAWS);
    SpotSolution[] few = solved(prepared, likely.cases());
    SpotSolution[] many = solved(prepared, DrawnCases.of(model, 4096));
    double asked = Quantiles.of(DryingForecaster.times(many, Milestone.DRY_THROUGH), 0.99);
    assertThat(Quantiles.of(sample(likely, few, Milestone.DRY_THROUGH), 0.99))
        .isCloseTo(asked, within(0.15 * asked));
  }

  private static void isNear(PreparedCase prepared, ParameterDistribution model, double share) {
    LikelyCases likely = new LikelyCases(prepared, model, DryingForecaster.DRAWS);
    SpotSolution[] few = solved(prepared, likely.cases());
    SpotSolution[] many = solved(prepared, DrawnCases.of(model, 4096));
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
  void areThreeTimesAsManyWhereThePlateMayStaySoft() {
    PreparedCase usual = PreparedCase.of(Castings.USUAL);
    assertThat(new LikelyCases(usual, TEXTBOOK, 16).cases()).hasSize(16);
    PreparedCase damp =
        PreparedCase.of(
            Castings.plate(2, Castings.paste(0.08, 0.2), Castings.room(20, 90, 0.1), 20));
    assertThat(new LikelyCases(damp, TEXTBOOK, 16).cases()).hasSize(48);
  }

  /** Five points more of humidity would keep it wet, so the slope is found the other way. */
  @Test
  void followsTheSlopeOfARoomThatIsAlmostTooDamp() {
    Casting drying = Castings.plate(2, Castings.paste(0.08, 0.2), Castings.room(20, 90, 0.1), 20);
    PreparedCase prepared = PreparedCase.of(drying);
    ParameterDistribution model = CastingUncertainty.addedTo(TEXTBOOK, prepared, middle(prepared));
    ParameterSample[] cases = new LikelyCases(prepared, model, DryingForecaster.DRAWS).cases();
    assertThat(cases).isNotEqualTo(DrawnCases.of(model, DryingForecaster.DRAWS));
    double[] few = DryingForecaster.times(solved(prepared, cases), Milestone.DRY_THROUGH);
    double[] many =
        DryingForecaster.times(solved(prepared, DrawnCases.of(model, 4096)), Milestone.DRY_THROUGH);
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
    assertThat(new LikelyCases(prepared, TEXTBOOK, 16).cases())
        .isEqualTo(DrawnCases.of(TEXTBOOK, 48));
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
