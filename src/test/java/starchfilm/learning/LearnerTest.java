package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.learning.Learner.FittedPlate;
import starchfilm.learning.summary.LeftOut;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.numerics.evidence.Band;

/** What learning from many plates has to hold to, whatever the plates. */
class LearnerTest {
  private static final double[] SIX_WEIGHINGS = {0.1, 0.25, 0.4, 0.55, 0.7, 0.9};
  private static final ParameterSample SLOW_AIR =
      ParameterSample.NONE.with(UncertainParameter.AIR_SIDE, Math.log(0.6));
  private static final Path HERE = Path.of("");
  private static final Map<StarchKind, Double> POTATO = Map.of(StarchKind.POTATO, 1.0);

  private final SyntheticPlates plates = new SyntheticPlates(3);

  private List<Trial> dried(int count, ParameterSample truth, String... rooms) {
    return Stream.generate(() -> SyntheticPlates.dried(plates.any(rooms), truth, SIX_WEIGHINGS))
        .limit(count)
        .toList();
  }

  private static ParameterDistribution inRoom(List<Trial> taught, String room) {
    return Workshop.taughtBy(HERE, taught).factors(room, POTATO, false);
  }

  private static double air(ParameterDistribution model) {
    return model.mean().of(UncertainParameter.AIR_SIDE);
  }

  @Test
  void withoutTrialsAllIsTheTextbook() {
    ParameterDistribution known = Workshop.untaught(HERE).factors("shed", POTATO, false);

    for (int i = 0; i < VarianceShares.COUNT; i++) {
      UncertainParameter factor = VarianceShares.factor(i);
      assertThat(known.mean().of(factor)).as("%s", factor).isZero();
      assertThat(known.sd(factor)).as("%s", factor).isCloseTo(factor.spread(), within(1e-9));
    }
  }

  @Test
  void aStrangeRoomIsTheTextbooksPlusWhatRoomsHaveInCommon() {
    List<Trial> taught = dried(4, SLOW_AIR, "shed");
    ParameterDistribution shed = inRoom(taught, "SHED ");
    ParameterDistribution attic = inRoom(taught, "attic");

    // Two fifths of what the shed's plates share may be of all rooms: shares 0.30 and 0.45.
    assertThat(air(shed)).isCloseTo(Math.log(0.6), within(0.15));
    assertThat(air(attic)).isBetween(air(shed) * 0.6, air(shed) * 0.2);
    assertThat(attic.sd(UncertainParameter.AIR_SIDE))
        .isGreaterThan(1.5 * shed.sd(UncertainParameter.AIR_SIDE))
        .isLessThan(UncertainParameter.AIR_SIDE.spread());
  }

  @Test
  void moreWeighingsTeachMoreSurely() {
    List<Trial> six = dried(6, SLOW_AIR, "shed");
    double before = UncertainParameter.AIR_SIDE.spread();
    double apartBefore = Math.abs(Math.log(0.6));
    for (int count : new int[] {1, 3, 6}) {
      ParameterDistribution known = inRoom(six.subList(0, count), "shed");
      double apart = Math.abs(air(known) - Math.log(0.6));
      assertThat(known.sd(UncertainParameter.AIR_SIDE)).as("%d plates", count).isLessThan(before);
      assertThat(apart).as("%d plates", count).isLessThan(apartBefore);
      before = known.sd(UncertainParameter.AIR_SIDE);
      apartBefore = Math.max(apart, 0.05);
    }
  }

  @Test
  void aFewWeighingsInOneRoomAreHeldBackByTheManyOfAnother() {
    List<Trial> many = new ArrayList<>(dried(5, ParameterSample.NONE, "kitchen"));
    Trial lone = SyntheticPlates.dried(plates.any("shed"), SLOW_AIR, 0.3);
    double alone = air(inRoom(List.of(lone), "shed"));
    many.add(lone);
    double among = air(inRoom(many, "shed"));

    assertThat(alone).isNegative();
    assertThat(among).isBetween(alone, 0.0);
  }

  @Test
  void theOrderOfTrialsDoesNotMatter() {
    List<Trial> taught = new ArrayList<>(dried(4, SLOW_AIR, "shed", "kitchen"));
    ParameterDistribution one = inRoom(taught, "shed");
    Collections.reverse(taught);
    ParameterDistribution other = inRoom(taught, "shed");

    for (int i = 0; i < VarianceShares.COUNT; i++) {
      UncertainParameter factor = VarianceShares.factor(i);
      assertThat(other.mean().of(factor))
          .isCloseTo(one.mean().of(factor), within(1e-6 * factor.spread()));
      assertThat(other.sd(factor)).isCloseTo(one.sd(factor), within(1e-6 * factor.spread()));
    }
  }

  @Test
  void aWildReadingIsNamedAndHardlyMovesWhatIsLearnt() {
    List<Trial> sound = dried(3, SLOW_AIR, "shed");
    List<Trial> wild = new ArrayList<>(sound);
    List<Weighing> weighings = new ArrayList<>(sound.get(1).seen().weighings());
    Weighing slip = weighings.get(2);
    // A slip of the pen: 40 g too little.
    weighings.set(2, new Weighing(slip.timeS(), slip.filmMassKg() - 0.040, slip.massSdKg()));
    wild.set(1, SyntheticPlates.weighed(sound.get(1), weighings));

    Workshop misled = Workshop.taughtBy(HERE, wild);

    assertThat(misled.learnt().doubted()).hasSize(1);
    assertThat(misled.learnt().doubted().get(0).sentence())
        .startsWith(sound.get(1).file() + ", weighing at +")
        .contains("would fit the others");
    assertThat(air(misled.factors("shed", POTATO, false)))
        .isCloseTo(air(inRoom(sound, "shed")), within(0.25 * UncertainParameter.AIR_SIDE.spread()));
  }

  @Test
  void aTrialIsForecastWithoutItsOwnLesson() {
    List<Trial> taught = dried(4, SLOW_AIR, "shed");
    Trial last = taught.get(3);
    ParameterDistribution of = Workshop.taughtBy(HERE, taught).atThePour(last).factors();
    ParameterDistribution without =
        Workshop.taughtBy(HERE, taught.subList(0, 3)).atThePour(last).factors();

    for (int i = 0; i < VarianceShares.COUNT; i++) {
      UncertainParameter factor = VarianceShares.factor(i);
      assertThat(of.mean().of(factor))
          .as("%s", factor)
          .isCloseTo(without.mean().of(factor), within(0.1 * factor.spread()));
      assertThat(of.sd(factor))
          .as("%s", factor)
          .isCloseTo(without.sd(factor), within(0.1 * factor.spread()));
    }
  }

  @Test
  void eachWeighingNarrowsThePlatesForecastAndKeepsTheTruthInRange() {
    Trial next = plates.any("shed");
    double truthS = SyntheticPlates.dryThroughS(next, SLOW_AIR);
    List<Double> widths =
        IntStream.of(0, 1, 3)
            .mapToObj(
                count -> {
                  double[] shares = Arrays.copyOf(new double[] {0.15, 0.3, 0.5}, count);
                  Band band =
                      SyntheticPlates.forecast(
                          SyntheticPlates.dried(next, SLOW_AIR, shares),
                          SharedParameters.untaught());
                  if (count > 0) {
                    assertThat(truthS).isBetween(band.low(), band.high());
                  }
                  return Math.log(band.high() / band.low());
                })
            .toList();

    assertThat(widths.get(1)).isLessThan(0.6 * widths.get(0));
    assertThat(widths.get(2)).isLessThan(widths.get(1));
  }

  @Test
  void plainWeighingsOfATextbookPlateTeachNothingWrong() {
    ParameterDistribution known = inRoom(dried(4, ParameterSample.NONE, "shed"), "shed");

    for (int i = 0; i < VarianceShares.COUNT; i++) {
      UncertainParameter factor = VarianceShares.factor(i);
      assertThat(Math.abs(known.mean().of(factor)))
          .as("%s", factor)
          .isLessThan(0.25 * factor.spread());
    }
  }

  /** Learning twice gives the same, to the last digit. */
  @Test
  void learningTwiceGivesTheSame() {
    List<Trial> trials = new MadeUpNotebook(5, HERE).trials(3);
    Learner once = Learner.taughtBy(trials, HERE, () -> {});
    Learner again = Learner.taughtBy(trials, HERE, () -> {});
    assertThat(again.shared().mean()).isEqualTo(once.shared().mean());
    assertThat(again.shared().covariance()).isEqualTo(once.shared().covariance());
  }

  /** Masses less than the solids poured: none can be right, and the others teach all the same. */
  @Test
  void aPlateWithoutAWeighingThatCanBeRightIsNamed() {
    Trial sound = dried(1, SLOW_AIR, "shed").get(0);
    Trial light =
        SyntheticPlates.weighed(plates.any("shed"), List.of(new Weighing(3600, 1e-3, 1e-4)));
    Learner learner = Learner.taughtBy(List.of(light, sound, plates.any("shed")), HERE, () -> {});
    assertThat(learner.plates()).extracting(FittedPlate::trial).containsExactly(sound);
    assertThat(learner.leftOut())
        .containsExactly(
            new LeftOut(
                light.file().toString(),
                "none of its weighings can be right; dry says what is odd"));
    assertThat(Learner.likelihood(light, HERE, SharedParameters.untaught())).isEmpty();
    assertThat(Learner.likelihood(sound, HERE, SharedParameters.untaught()))
        .get()
        .satisfies(lesson -> assertThat(lesson.weighings()).isEqualTo(SIX_WEIGHINGS.length));
  }

  /** Plates of which every other weighing is off by the same factor: two stories of each. */
  private static Learner taughtByTwoStories(int seed, double factor) {
    List<Trial> trials = new ArrayList<>();
    int count = 1 + new Random(seed).nextInt(9);
    for (Trial trial : new MadeUpNotebook(seed, HERE).trials(count)) {
      List<Weighing> weighings = new ArrayList<>(trial.seen().weighings());
      for (int i = 0; i < weighings.size(); i += 2) {
        Weighing was = weighings.get(i);
        weighings.set(i, new Weighing(was.timeS(), factor * was.filmMassKg(), was.massSdKg()));
      }
      trials.add(SyntheticPlates.with(trial, trial.file(), weighings, List.of()));
    }
    return Learner.taughtBy(trials, HERE, () -> {});
  }

  /**
   * Where shared and own deviations are together at their best, no plate could gain by a further
   * step: Newton's decrement of each, its gain in the sum of squares, is near 0.
   */
  @ParameterizedTest
  @CsvSource({"42, 1.54", "52, 1.74", "34, 1.38", "12, 1.60", "45, 1.62"})
  void platesThatTellTwoStoriesStillComeToRest(int seed, double factor) {
    Learner learner = taughtByTwoStories(seed, factor);

    assertThat(learner.leftOut()).isEmpty();
    assertThat(learner.plates())
        .isNotEmpty()
        .allSatisfy(
            plate -> {
              Normal before = plate.model().beforeGivenMeans(learner.shared());
              RealMatrix lower = before.lower();
              RealVector z =
                  new LUDecomposition(lower)
                      .getSolver()
                      .solve(plate.fit().deviations().subtract(before.mean()));
              RealVector left = lower.transpose().operate(plate.fit().slope()).subtract(z);
              RealMatrix bound =
                  lower
                      .transpose()
                      .multiply(plate.fit().information())
                      .multiply(lower)
                      .add(MatrixUtils.createRealIdentityMatrix(z.getDimension()));
              RealVector step = new LUDecomposition(bound).getSolver().solve(left);
              assertThat(left.dotProduct(step)).as(plate.file()).isLessThan(0.02);
            });
  }

  /**
   * Two of some 1,280 made-up notebooks in which full steps from round to round go back and forth
   * for ever: learning comes to rest all the same, and one more round moves nothing.
   */
  @ParameterizedTest
  @CsvSource({"877, 1.474", "1001, 2.17"})
  void platesThatFullStepsSwingToAndFroComeToRest(int seed, double factor) {
    Learner learner = taughtByTwoStories(seed, factor);
    SharedParameters learnt = learner.shared();
    SharedParameters next =
        SharedParameters.after(
            learner.plates().stream().map(plate -> plate.again(learnt).likelihood()).toList());
    for (FittedPlate plate : learner.plates()) {
      Normal before = plate.model().before(learnt);
      RealVector moved = plate.model().before(next).mean().subtract(before.mean());
      for (int i = 0; i < VarianceShares.COUNT; i++) {
        assertThat(Math.abs(moved.getEntry(i))).isLessThan(0.06 * before.sd(i));
      }
    }
  }
}
