package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import starchfilm.casting.Castings;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.ingredient.StarchKind;

/** What plates share and what one teaches another, for one parameter at a time, by hand. */
class LearningPartsTest {
  private static final Map<StarchKind, Double> CORN = Map.of(StarchKind.CORN, 1.0);
  private static final PlateKey SHED = new PlateKey("shed", CORN, false);
  private static final PlateKey KITCHEN = new PlateKey("kitchen", CORN, false);
  private static final PlateKey POTATO =
      new PlateKey("shed", Map.of(StarchKind.POTATO, 1.0), false);

  /** Common, room's and kind's share of the variance; with the plate's own they are the whole. */
  @ParameterizedTest
  @CsvSource({
    "AIR_SIDE, 0.75",
    "DIFFUSIVITY, 0.85",
    "ISOTHERM, 0.85",
    "BENCH, 0.75",
    "HUMIDITY, 0.5",
    "AIR_TEMPERATURE, 0.5",
    "THICKNESS, 0.4",
    "SOLIDS, 0.25"
  })
  void platesShareAPartOfEachSpread(UncertainParameter parameter, double shared) {
    int i = parameter.ordinal();
    Normal untaught = SharedParameters.untaught().of(SHED);
    assertThat(untaught.mean().getEntry(i)).isZero();
    assertThat(untaught.sd(i)).isCloseTo(Math.sqrt(shared) * parameter.spread(), within(1e-12));
    assertThat(untaught.widened(PlateModel.ownVariances(false)).sd(i))
        .isCloseTo(parameter.spread(), within(1e-12));
    // The same where the space has a place for the room and the kind, but nothing was learnt.
    assertThat(
            SummedLikelihood.nothing(new DesignMatrix(List.of(SHED, POTATO)))
                .factors()
                .of(SHED)
                .sd(i))
        .isCloseTo(untaught.sd(i), within(1e-12));
  }

  /** Of two starches half and half each brings half of its part: 2 x 0.25 of the kind's share. */
  @Test
  void mixedStarchTakesEachKindsPartByItsShare() {
    PlateKey half =
        new PlateKey("shed", Map.of(StarchKind.CORN, 0.5, StarchKind.POTATO, 0.5), false);
    int i = UncertainParameter.DIFFUSIVITY.ordinal();
    double sd = 0.5 * Math.sqrt(0.5 + 0.35 / 2);
    assertThat(SharedParameters.untaught().of(half).sd(i)).isCloseTo(sd, within(1e-12));
    DesignMatrix space = new DesignMatrix(List.of(SHED, POTATO));
    assertThat(SummedLikelihood.nothing(space).factors().of(half).sd(i))
        .isCloseTo(sd, within(1e-12));
  }

  /** A weighed pour is known within 2 %, whatever the hand; the rest of the plate as before. */
  @Test
  void aWeighedPourSharesNoThickness() {
    int i = UncertainParameter.THICKNESS.ordinal();
    PlateKey weighed = new PlateKey("shed", CORN, true);
    assertThat(PlateModel.ownVariances(true)[i]).isCloseTo(0.02 * 0.02, within(1e-15));
    assertThat(PlateModel.ownVariances(true)[0]).isEqualTo(PlateModel.ownVariances(false)[0]);
    DesignMatrix space = new DesignMatrix(List.of(weighed));
    assertThat(SummedLikelihood.nothing(space).factors().of(weighed).sd(i)).isZero();
    assertThat(OwnScatter.drying().sd(UncertainParameter.THICKNESS)).isCloseTo(0.02, within(1e-9));
    assertThat(OwnScatter.drying().sd(UncertainParameter.SOLIDS))
        .isCloseTo(0.03 * Math.sqrt(0.75), within(1e-9));
    assertThat(OwnScatter.drying().sd(UncertainParameter.UNEVENNESS)).isCloseTo(0, within(1e-8));
  }

  /**
   * One plate in the shed says 0.4 of the air side, with a standard uncertainty of 0.2. Shared
   * before: V = 0.75 x 0.35^2, of which 0.30 are common; so the shed learns {@code V/(V + 0.2^2)}
   * of it, the kitchen 0.30/0.75 of that.
   */
  @Test
  void aRoomLearnsItsOwnAndAnotherOnlyWhatIsCommon() {
    int i = UncertainParameter.AIR_SIDE.ordinal();
    double common = 0.30 * 0.35 * 0.35;
    double shared = 0.75 * 0.35 * 0.35;
    SharedParameters learnt = SharedParameters.after(List.of(lesson(SHED, i, 0.4, 0.2)));
    double gain = shared / (shared + 0.04);
    assertThat(learnt.of(SHED).mean().getEntry(i)).isCloseTo(0.4 * gain, within(1e-9));
    assertThat(learnt.of(SHED).sd(i)).isCloseTo(Math.sqrt(shared * (1 - gain)), within(1e-9));
    assertThat(learnt.of(KITCHEN).mean().getEntry(i))
        .isCloseTo(0.4 * gain * common / shared, within(1e-9));
    assertThat(learnt.of(KITCHEN).sd(i))
        .isCloseTo(Math.sqrt(shared - common * common / (shared + 0.04)), within(1e-9));
    // The air of a room does not ask which starch lies in it.
    assertThat(learnt.of(POTATO).mean().getEntry(i)).isCloseTo(0.4 * gain, within(1e-9));
    assertThat(learnt.seenThrough(learnt.space().common()).mean().getEntry(i))
        .isCloseTo(0.4 * gain * common / shared, within(1e-9));
    assertThat(learnt.seenThrough(learnt.space().ofRoom("shed")).mean().getEntry(i))
        .isCloseTo(0.4 * gain, within(1e-9));
    assertThat(learnt.seenThrough(learnt.space().ofKind(StarchKind.CORN)).mean().getEntry(i))
        .isZero();
  }

  /** Diffusivity goes with the starch, in whatever room. */
  @Test
  void aStarchLearnsItsOwnInWhateverRoom() {
    int i = UncertainParameter.DIFFUSIVITY.ordinal();
    double common = 0.50 * 0.25;
    double shared = 0.85 * 0.25;
    SharedParameters learnt = SharedParameters.after(List.of(lesson(SHED, i, 0.4, 0.2)));
    double mean = 0.4 * shared / (shared + 0.04);
    assertThat(learnt.of(KITCHEN).mean().getEntry(i)).isCloseTo(mean, within(1e-9));
    assertThat(learnt.of(POTATO).mean().getEntry(i))
        .isCloseTo(mean * common / shared, within(1e-9));
    assertThat(learnt.seenThrough(learnt.space().ofKind(StarchKind.CORN)).mean().getEntry(i))
        .isCloseTo(mean, within(1e-9));
    assertThat(learnt.seenThrough(learnt.space().ofRoom("shed")).mean().getEntry(i)).isZero();
  }

  /** A lesson taken out again leaves what the others taught. */
  @Test
  void lessonsAddUpAndAreTakenOutAgain() {
    int i = UncertainParameter.AIR_SIDE.ordinal();
    PlateLikelihood one = lesson(SHED, i, 0.4, 0.2);
    PlateLikelihood other = lesson(KITCHEN, i, -0.3, 0.1);
    SummedLikelihood both = SummedLikelihood.of(List.of(one, other));
    DesignMatrix space = new DesignMatrix(List.of(SHED, KITCHEN));
    double alone = SummedLikelihood.of(space, List.of(one)).factors().of(SHED).mean().getEntry(i);
    assertThat(both.minus(other).factors().of(SHED).mean().getEntry(i))
        .isCloseTo(alone, within(1e-9));
    assertThat(both.minus(other).plus(other).factors().of(KITCHEN).mean().getEntry(i))
        .isCloseTo(both.factors().of(KITCHEN).mean().getEntry(i), within(1e-9));
    assertThat(both.factors().of(KITCHEN).mean().getEntry(i)).isNegative();
    assertThat(both.factors().seenThrough(space.ofRoom("shed")).mean().getEntry(i))
        .isCloseTo(both.factors().of(SHED).mean().getEntry(i), within(1e-12));
    SharedParameters from = SummedLikelihood.nothing(space).factors();
    SharedParameters halfWay = from.movedTowards(both.factors(), 0.5);
    assertThat(halfWay.of(KITCHEN).mean().getEntry(i))
        .isCloseTo(both.factors().of(KITCHEN).mean().getEntry(i) / 2, within(1e-12));
    assertThat(halfWay.of(KITCHEN).sd(i)).isEqualTo(both.factors().of(KITCHEN).sd(i));
  }

  /**
   * Weighings that bind a deviation with 1/0.01 at 0.3, of a plate whose own part has 0.04: {@code
   * S = I/(1 + I V)} = 20, {@code eta = (b + I theta)/(1 + I V)} = 6.4.
   */
  @Test
  void thePlatesOwnPartIsAveragedOutOfItsLesson() {
    int i = UncertainParameter.AIR_SIDE.ordinal();
    double[] own = new double[VarianceShares.COUNT];
    own[i] = 0.04;
    PlateFit fit = fit(i, 0.3, 100, 2, new double[] {1, 1});
    PlateLikelihood lesson = PlateLikelihood.of("a.json", SHED, 2, fit, own);
    assertThat(lesson.precision().getEntry(i, i)).isCloseTo(20, within(1e-9));
    assertThat(lesson.pull().getEntry(i)).isCloseTo(32.0 / 5, within(1e-9));
    assertThat(lesson.file()).isEqualTo("a.json");
    assertThat(lesson.weighings()).isEqualTo(2);
  }

  /** A prior variance of 0.04 and an information of 100: {@code 0.04/(1 + 4)} is left. */
  @Test
  void aFitNarrowsWhatWasKnown() {
    int i = UncertainParameter.AIR_SIDE.ordinal();
    Normal prior = normal(0.04);
    Normal after = fit(i, 0.3, 100, 0, new double[] {1}).posterior(prior);
    assertThat(after.mean().getEntry(i)).isEqualTo(0.3);
    assertThat(after.sd(i)).isCloseTo(Math.sqrt(0.008), within(1e-6));
    assertThat(after.sd(i + 1)).isCloseTo(0.2, within(1e-6));
  }

  @Test
  void aReadingThatHardlyCountsIsDoubted() {
    assertThat(fit(0, 0, 1, 0, new double[] {0.2, 0.3, 0.29, 1}).doubted()).containsExactly(0, 2);
  }

  /** No weighing binds a parameter 10 times as sharply as the textbook, nor pulls it 12 spreads. */
  @ParameterizedTest
  @CsvSource({"0.4, 0.2, true", "0.4, 0.0349, false", "0.4, 0.0351, true", "6, 0.1, false"})
  void whatWeighingsCannotTeachIsNoLesson(double value, double sd, boolean teachable) {
    assertThat(lesson(SHED, UncertainParameter.AIR_SIDE.ordinal(), value, sd).isTeachable())
        .isEqualTo(teachable);
  }

  @Test
  void aNegativePrecisionIsNoLesson() {
    RealMatrix precision = new Array2DRowRealMatrix(VarianceShares.COUNT, VarianceShares.COUNT);
    precision.setEntry(2, 2, -1e-6 / (0.15 * 0.15));
    RealVector none = new ArrayRealVector(VarianceShares.COUNT);
    assertThat(new PlateLikelihood("a.json", SHED, 1, precision, none).isTeachable()).isFalse();
    assertThatThrownBy(() -> new PlateLikelihood("a.json", SHED, 0, precision, none))
        .hasMessage("a plate teaches every parameter by its weighings");
    assertThatThrownBy(
            () ->
                new PlateLikelihood(
                    "a.json", SHED, 1, new Array2DRowRealMatrix(2, 2), new ArrayRealVector(8)))
        .hasMessage("a plate teaches every parameter by its weighings");
    assertThatThrownBy(
            () -> new PlateLikelihood("a.json", SHED, 1, precision, new ArrayRealVector(2)))
        .hasMessage("a plate teaches every parameter by its weighings");
  }

  /** Rounding leaves a billionth of the largest precision, which is still a lesson. */
  @ParameterizedTest
  @CsvSource({"5e-8, true", "2e-7, false"})
  void whatRoundingLeavesBelowZeroIsALesson(double below, boolean teachable) {
    RealMatrix precision = new Array2DRowRealMatrix(VarianceShares.COUNT, VarianceShares.COUNT);
    precision.setEntry(0, 0, 90 / Math.pow(VarianceShares.factor(0).spread(), 2));
    precision.setEntry(1, 1, -below / Math.pow(VarianceShares.factor(1).spread(), 2));
    RealVector none = new ArrayRealVector(VarianceShares.COUNT);
    assertThat(new PlateLikelihood("a.json", SHED, 1, precision, none).isTeachable())
        .isEqualTo(teachable);
  }

  /** A factor known exactly has no spread, and the others keep theirs and what binds them. */
  @Test
  void aFactorKnownExactlyStopsNoFit() {
    Normal known = normal(0.04);
    known.covariance().setEntry(0, 0, 0);
    known.covariance().setEntry(1, 2, 0.01);
    known.covariance().setEntry(2, 1, 0.01);
    RealMatrix lower = known.lower();
    RealMatrix product = lower.multiply(lower.transpose());
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      for (int j = 0; j < VarianceShares.COUNT; j++) {
        assertThat(product.getEntry(i, j))
            .isCloseTo(known.covariance().getEntry(i, j), within(1e-12));
      }
    }
  }

  /** Fitted deviations correlate as they were found to; what is not fitted stands beside them. */
  @Test
  void whatIsKnownOfAPlateIsWhatItsForecastTakes() {
    Normal known = normal(0.04);
    known.covariance().setEntry(0, 1, 0.012);
    known.mean().setEntry(0, 0.1);
    ParameterDistribution model = known.model(0.09, 0.25);
    assertThat(model.mean().of(UncertainParameter.AIR_SIDE)).isCloseTo(0.1, within(1e-12));
    assertThat(model.sd(UncertainParameter.AIR_SIDE)).isCloseTo(0.2, within(1e-6));
    // Both halves of the matrix are brought to their mean.
    assertThat(model.covariance()[0][1]).isCloseTo(0.006, within(1e-6));
    assertThat(model.sd(UncertainParameter.PLASTICISER)).isCloseTo(0.3, within(1e-6));
    assertThat(model.sd(UncertainParameter.UNEVENNESS)).isCloseTo(0.5, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"0.5, 0.4", "0.6, 0.5", "-0.5, 1.5"})
  void sharesOfStarchMakeAWhole(double corn, double potato) {
    assertThatThrownBy(
            () ->
                new PlateKey(
                    "shed", Map.of(StarchKind.CORN, corn, StarchKind.POTATO, potato), false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("shares ");
  }

  @Test
  void aStarchWithoutAShareMayBeNamed() {
    Map<StarchKind, Double> shares = Map.of(StarchKind.CORN, 1.0, StarchKind.POTATO, 0.0);
    assertThat(new PlateKey("shed", shares, false).starchShares()).isEqualTo(shares);
  }

  /**
   * Masses read on a scale that was not tared are off by one amount, whatever it is: what is left
   * of their misses has no mean, weighted by their errors; a tared one keeps its own.
   */
  @Test
  void anUnknownTareIsTakenOffAllThatShareIt() {
    List<Weighing> weighings =
        List.of(
            new Weighing(3600, 0.110, 0.001, false, false),
            new Weighing(7200, 0.105, 0.002, false, false),
            new Weighing(10_800, 0.100, 0.001, false, false),
            new Weighing(14_400, 0.050, 0.001, false, true));
    PlateReadings readings = new PlateReadings(Castings.USUAL, weighings, () -> {});
    double[] middle = new double[VarianceShares.COUNT];
    double[] expected = readings.expectedKg(middle);
    RealVector weights = new ArrayRealVector(new double[] {1, 0.5, 1, 1});
    double[] misses = readings.centred(readings.missesKg(middle), weights);
    double off = 0;
    double of = 0;
    for (int i = 0; i < 3; i++) {
      double weight = weights.getEntry(i) / Math.pow(readings.get(i).sdKg(), 2);
      off += weight * (readings.get(i).massKg() - expected[i]);
      of += weight;
    }
    for (int i = 0; i < 3; i++) {
      assertThat(misses[i])
          .isCloseTo(readings.get(i).massKg() - expected[i] - off / of, within(1e-12));
    }
    assertThat(misses[3]).isCloseTo(0.050 - expected[3], within(1e-12));
    // A tare of their own for those from 7,200 s on: two levels, each without a mean.
    PlateReadings twoLevels = new PlateReadings(Castings.USUAL, weighings, 7200, false, () -> {});
    double[] apart = twoLevels.centred(twoLevels.missesKg(middle), weights);
    assertThat(apart[0]).isCloseTo(0, within(1e-12));
    assertThat(apart[1] * apart[2]).isNegative();
    assertThat(apart[3]).isCloseTo(0, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource
  void sharesOfAParametersVarianceAddUp(UncertainParameter parameter) {
    VarianceShares shares = VarianceShares.of(parameter);
    assertThat(shares.common() + shares.room() + shares.kind() + shares.plate())
        .isCloseTo(1, within(1e-12));
  }

  /** A lesson on one parameter alone: a value with its standard uncertainty. */
  private static PlateLikelihood lesson(PlateKey plate, int parameter, double value, double sd) {
    RealMatrix precision = new Array2DRowRealMatrix(VarianceShares.COUNT, VarianceShares.COUNT);
    precision.setEntry(parameter, parameter, 1 / (sd * sd));
    RealVector pull = new ArrayRealVector(VarianceShares.COUNT);
    pull.setEntry(parameter, value / (sd * sd));
    return new PlateLikelihood("plate.json", plate, 3, precision, pull);
  }

  private static PlateFit fit(
      int parameter, double at, double information, double slope, double[] weights) {
    RealVector deviations = new ArrayRealVector(VarianceShares.COUNT);
    deviations.setEntry(parameter, at);
    RealMatrix bound = new Array2DRowRealMatrix(VarianceShares.COUNT, VarianceShares.COUNT);
    bound.setEntry(parameter, parameter, information);
    RealVector slopes = new ArrayRealVector(VarianceShares.COUNT);
    slopes.setEntry(parameter, slope);
    return new PlateFit(
        deviations,
        bound,
        slopes,
        new ArrayRealVector(weights),
        new ArrayRealVector(weights.length));
  }

  private static Normal normal(double variance) {
    RealMatrix covariance = new Array2DRowRealMatrix(VarianceShares.COUNT, VarianceShares.COUNT);
    for (int i = 0; i < VarianceShares.COUNT; i++) {
      covariance.setEntry(i, i, variance);
    }
    return new Normal(new ArrayRealVector(VarianceShares.COUNT), covariance);
  }
}
