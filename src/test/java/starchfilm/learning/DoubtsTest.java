package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.casting.trial.OddWeighing;
import starchfilm.casting.trial.OddWeighing.WeighingAnomaly;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.drying.PlateSimulation;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.forecast.PlateParameters;
import starchfilm.forecast.WeighingQuestion;

/** Which weighings of a plate are left out, what is asked about them, and what is then known. */
class DoubtsTest {
  private static final double HOUR_S = 3600;
  private static final int SIBLINGS = 7;
  private static final SharedParameters TEXTBOOK = SharedParameters.untaught();

  private final Trial plate = new SyntheticPlates(8).any("shed");

  /** The plate weighed every four hours in the middle case, but for what is off (g). */
  private Trial weighed(double... offG) {
    double[] timesS =
        IntStream.rangeClosed(1, offG.length).mapToDouble(i -> 4 * i * HOUR_S).toArray();
    double[] masses = new double[timesS.length];
    new PlateSimulation(plate.casting(), timesS).filmMassesKg(ParameterSample.NONE, masses);
    return SyntheticPlates.weighed(
        plate,
        IntStream.range(0, offG.length)
            .mapToObj(
                i ->
                    new Weighing(
                        timesS[i], masses[i] + offG[i] / 1000, SyntheticPlates.SCALE_SD_KG))
            .toList());
  }

  private static Trial confirmed(Trial trial, int... which) {
    List<Weighing> weighings = new ArrayList<>(trial.seen().weighings());
    for (int i : which) {
      Weighing was = weighings.get(i);
      weighings.set(
          i, new Weighing(was.timeS(), was.filmMassKg(), was.massSdKg(), true, was.tared()));
    }
    return SyntheticPlates.weighed(trial, weighings);
  }

  private static Trial without(Trial trial, Integer... which) {
    List<Weighing> weighings = new ArrayList<>(trial.seen().weighings());
    Arrays.stream(which).forEach(i -> weighings.remove(trial.seen().weighings().get(i)));
    return SyntheticPlates.weighed(trial, weighings);
  }

  private static PlateParameters known(Trial trial) {
    return PlateKnowledge.of(trial, TEXTBOOK, SIBLINGS);
  }

  private static List<String> asked(Trial trial) {
    return known(trial).questions().stream().map(WeighingQuestion::words).toList();
  }

  private static void assertKnowsAsMuch(Trial trial, Trial other) {
    for (UncertainParameter factor : UncertainParameter.values()) {
      assertThat(known(trial).factors().mean().of(factor))
          .as("%s", factor)
          .isEqualTo(known(other).factors().mean().of(factor));
      assertThat(known(trial).factors().sd(factor)).isEqualTo(known(other).factors().sd(factor));
    }
    assertThat(known(trial).weighings()).isEqualTo(known(other).weighings());
  }

  /** The weighings of its siblings are counted, its own factors are the textbook's. */
  @Test
  void withoutAWeighingAPlateIsKnownAsBefore() {
    PlateParameters known = known(plate);
    assertThat(known.weighings()).isEqualTo(SIBLINGS);
    assertThat(known.wholly()).isTrue();
    assertThat(known.questions()).isEmpty();
    assertThat(known.factors().mean().of(UncertainParameter.AIR_SIDE)).isZero();
    assertThat(known.factors().sd(UncertainParameter.AIR_SIDE))
        .isCloseTo(UncertainParameter.AIR_SIDE.spread(), within(1e-6));
  }

  @Test
  void weighingsThatFitAreAllTakenAndNothingIsAsked() {
    PlateParameters known = known(weighed(0, 0.2, -0.2, 0.3, 0, -0.3));
    assertThat(known.weighings()).isEqualTo(6 + SIBLINGS);
    assertThat(known.wholly()).isTrue();
    assertThat(known.questions()).isEmpty();
    assertThat(known.factors().sd(UncertainParameter.AIR_SIDE))
        .isLessThan(0.8 * UncertainParameter.AIR_SIDE.spread());
  }

  /** It loses some 20 g in four hours, so that either might be: only the others tell. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-16 | is 1[567](\\.\\d)? g lighter than the others allow: was paste lost, or was it"
            + " mistyped\\?",
        "13 | is 1[234](\\.\\d)? g heavier than the others allow: was a lid on, or was it another"
            + " plate\\?"
      })
  void aSlipIsLeftOutAndAskedAbout(double offG, String what) {
    Trial slip = weighed(0, 0, 0, 0, offG, 0, 0);
    PlateParameters known = known(slip);
    assertThat(known.questions()).hasSize(1);
    WeighingQuestion question = known.questions().get(0);
    assertThat(question.words())
        .matches(
            "The weighing at \\+20h "
                + what
                + " It is left out of the forecast; if it is right, confirm it\\.");
    assertThat(question.confirmAt()).isEqualTo("20h");
    assertThat(known.weighings()).isEqualTo(6 + SIBLINGS);
    assertKnowsAsMuch(slip, without(slip, 4));
  }

  /** Confirmed it is asked about no more, counts in full, and moves what is known. */
  @Test
  void aConfirmedSlipIsTaken() {
    Trial slip = weighed(0, 0, 0, 0, -16, 0, 0);
    Trial confirmed = confirmed(slip, 4);
    assertThat(known(confirmed).questions()).isEmpty();
    assertThat(known(confirmed).weighings()).isEqualTo(7 + SIBLINGS);
    assertThat(known(confirmed).factors().mean().of(UncertainParameter.AIR_SIDE))
        .isGreaterThan(known(slip).factors().mean().of(UncertainParameter.AIR_SIDE));
  }

  /** Three are asked about by name; of a fourth it is said that there is one. */
  @Test
  void ofManySlipsThreeAreAskedAbout() {
    Trial slips = weighed(0, -16, 0, -17, 0, -16, 0, -16, 0, 0, 0);
    List<String> asked = asked(slips);
    assertThat(asked).hasSize(4);
    assertThat(asked.get(0)).startsWith("The weighing at +8h is");
    assertThat(asked.get(2)).startsWith("The weighing at +24h is");
    assertThat(asked.get(3)).isEqualTo("The same holds for 1 more, which are left out too.");
    assertKnowsAsMuch(slips, without(slips, 1, 3, 5, 7));
    assertThat(asked(confirmed(slips, 7)))
        .hasSize(3)
        .noneMatch(words -> words.startsWith("The same"));
  }

  /** From the fifth on all are 35 g lighter: paste was lost, and no pen slipped four times. */
  private Trial stepped() {
    return weighed(0, 0, 0, 0, -35, -35, -35, -35);
  }

  @Test
  void aStepIsAskedAboutOnceAndAllFromThereOnAreLeftOut() {
    PlateParameters known = known(stepped());
    assertThat(known.questions()).hasSize(1);
    WeighingQuestion question = known.questions().get(0);
    assertThat(question.words())
        .matches(
            "From the weighing at \\+20h on all are about 3[3-7] g lighter than those before allow:"
                + " was paste lost, or was it another plate or tare\\? They are left out of the"
                + " forecast; from there on the loss counts once you confirm the first of them\\.");
    assertThat(question.leftOutS())
        .containsExactly(20 * HOUR_S, 24 * HOUR_S, 28 * HOUR_S, 32 * HOUR_S);
    assertKnowsAsMuch(stepped(), without(stepped(), 4, 5, 6, 7));
  }

  /** After a confirmed step the losses count: the pace is known as if nothing had happened. */
  @Test
  void aConfirmedStepCountsByItsLosses() {
    Trial confirmed = confirmed(stepped(), 4);
    Trial sound = weighed(0, 0, 0, 0, 0, 0, 0, 0);
    UncertainParameter air = UncertainParameter.AIR_SIDE;
    assertThat(known(confirmed).questions()).isEmpty();
    assertThat(known(confirmed).weighings()).isEqualTo(8 + SIBLINGS);
    assertThat(known(confirmed).factors().mean().of(air))
        .isCloseTo(known(sound).factors().mean().of(air), within(0.1 * air.spread()));
    assertThat(known(confirmed).factors().sd(air))
        .isLessThan(known(without(confirmed, 4, 5, 6, 7)).factors().sd(air));
    // Confirming another than the first of them answers nothing.
    assertThat(asked(confirmed(stepped(), 6))).hasSize(1);
  }

  @Test
  void aStepHasTwoWeighingsOrMoreOnEitherSide() {
    Trial late = weighed(0, 0, 0, 0, 0, -35, -35);
    assertThat(asked(late)).singleElement().asString().startsWith("From the weighing at +24h on");
    Trial last = weighed(0, 0, 0, 0, 0, 0, -35);
    assertThat(asked(last)).singleElement().asString().startsWith("The weighing at +28h is");
    Trial early = weighed(0, 0, -35, -35);
    assertThat(asked(early)).singleElement().asString().startsWith("From the weighing at +12h on");
  }

  /** The loss largest against what was expected of its hours: not the largest of all. */
  @Test
  void theLikeliestStepIsTheLossLeastExpected() {
    Trial trial = weighed(0, 0, 0, 0, -35, -35, -35, -35);
    List<Weighing> sparse = new ArrayList<>(trial.seen().weighings());
    sparse.subList(1, 3).clear();
    Normal before = new PlateModel(plate, List.of()).before(TEXTBOOK);
    PlateReadings readings = new PlateReadings(plate.casting(), sparse, () -> {});
    assertThat(sparse.get(0).filmMassKg() - sparse.get(1).filmMassKg())
        .isGreaterThan(sparse.get(1).filmMassKg() - sparse.get(2).filmMassKg());
    assertThat(Doubts.likeliestStep(readings, before)).hasValue(2);
    // An early step is more against its hours than what a film near its rest loses over its mass,
    // and than a night without a weighing.
    List<Weighing> early =
        new ArrayList<>(weighed(0, 0, -20, -20, -20, -20, -20, -20, -20).seen().weighings());
    assertThat(likeliestStep(early)).hasValue(2);
    early.subList(5, 7).clear();
    assertThat(likeliestStep(early)).hasValue(2);
    for (int few = 0; few < 4; few++) {
      assertThat(
              Doubts.likeliestStep(
                  new PlateReadings(plate.casting(), sparse.subList(0, few), () -> {}), before))
          .isEmpty();
    }
  }

  private OptionalInt likeliestStep(List<Weighing> weighings) {
    Normal before = new PlateModel(plate, List.of()).before(TEXTBOOK);
    return Doubts.likeliestStep(new PlateReadings(plate.casting(), weighings, () -> {}), before);
  }

  /** Two of three contradict: none of the three is believed. */
  @Test
  void whereMostLookWrongNoneIsUsed() {
    Trial heavier = weighed(0, 60, 90);
    assertThat(asked(heavier))
        .hasSize(3)
        .last()
        .isEqualTo("Most weighings of this plate look wrong, so the forecast uses none of them.");
    assertKnowsAsMuch(heavier, plate);
    // Half of them are enough.
    assertThat(known(weighed(0, 0, 60, 90)).weighings()).isEqualTo(2 + SIBLINGS);
  }

  @Test
  void oddWeighingsAreAskedAboutWithWhatTheyAreHeldAgainst() {
    Weighing at = new Weighing(24 * HOUR_S, 0.1204, 0.001);
    assertThat(words(new OddWeighing(at, WeighingAnomaly.BELOW_SOLIDS, 0.1302, at.timeS())))
        .isEqualTo(
            "The weighing at +24h shows a film of 120.4 g, less than the 130.2 g of solids that"
                + " were poured: is the unit right, the tare taken off once, and the poured mass"
                + " noted? It is left out of the forecast; if it is right, confirm it.");
    assertThat(words(new OddWeighing(at, WeighingAnomaly.AT_ONCE, 0.1304, at.timeS() + 60)))
        .isEqualTo(
            "The weighing at +24h and another within two minutes differ by 10 g: which of them is"
                + " right? It is left out of the forecast; if it is right, confirm it.");
    assertThat(words(new OddWeighing(at, WeighingAnomaly.GAIN, 0.1154, 20 * HOUR_S)))
        .startsWith(
            "The weighing at +24h is 5 g heavier than the one at +20h, and a film that wet");
    assertThat(words(new OddWeighing(at, WeighingAnomaly.GAIN, 0.1254, 30 * HOUR_S)))
        .startsWith("The weighing at +24h is 5 g lighter than the later one at +30h: was it");
  }

  private static String words(OddWeighing odd) {
    return Doubts.questions(new UsableWeighings(List.of(), List.of(odd), 1)).get(0).words();
  }

  @Test
  void ofALoggingScaleItIsSaidHowManyAreUsed() {
    assertThat(Doubts.questions(new UsableWeighings(List.of(), List.of(), 1))).isEmpty();
    assertThat(Doubts.questions(new UsableWeighings(List.of(), List.of(), 2)))
        .singleElement()
        .satisfies(
            question ->
                assertThat(question.words())
                    .isEqualTo("Of the weighings one in 2 is used; those between add nothing."));
  }

  /** An odd weighing counts for nothing, and what it is held against bounds it. */
  @ParameterizedTest
  @CsvSource({
    "BELOW_SOLIDS, 24, at least 130.0 g",
    "AT_ONCE, 24, 130.0 g",
    "GAIN, 20, at most 130.0 g",
    "GAIN, 30, at least 130.0 g"
  })
  void whatWouldFitInsteadOfAnOddWeighing(WeighingAnomaly kind, double otherH, String fitting) {
    Weighing at = new Weighing(24 * HOUR_S, 0.12, 0.001);
    assertThat(Doubts.of("a.json", new OddWeighing(at, kind, 0.13, otherH * HOUR_S)).sentence())
        .isEqualTo(
            "a.json, weighing at +24h: a film of 120.0 g noted, "
                + fitting
                + " would fit the others; counted at 0 %");
  }

  /** What would fit is what was noted less what it is off by. */
  @Test
  void aDoubtedWeighingIsNamedWithWhatWouldFit() {
    Trial slip = weighed(0, 0, 0, 0, -16, 0, 0);
    PlateModel model = new PlateModel(slip, slip.seen().weighings());
    PlateFit fit = PlateFit.of(model.readings(), model.before(TEXTBOOK));
    double noted = slip.seen().weighings().get(4).filmMassKg();
    double fitting = model.readings().expectedKg(fit.deviations().toArray())[4];
    assertThat(Doubts.of("a.json", model.readings(), fit))
        .singleElement()
        .satisfies(
            doubted -> {
              assertThat(doubted.reading()).isEqualTo("weighing at +20h");
              assertThat(doubted.noted()).isEqualTo("a film of " + grams(noted));
              assertThat(doubted.fitting()).isEqualTo(grams(fitting));
              assertThat(doubted.countsFor()).isEqualTo(fit.weights().getEntry(4));
            });
  }

  private static String grams(double kg) {
    return String.format(Locale.ROOT, "%.1f g", 1000 * kg);
  }
}
