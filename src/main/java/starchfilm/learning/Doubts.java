package starchfilm.learning;

import static starchfilm.numerics.units.Units.G_PER_KG;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import starchfilm.casting.trial.OddWeighing;
import starchfilm.forecast.WeighingQuestion;
import starchfilm.learning.summary.DoubtedReading;

/** Says which weighings of a plate hardly count, and asks about them. */
final class Doubts {
  /** Two weighings that are off alike are a step and no slip of the pen. */
  private static final int FEWEST_ON_A_SIDE = 2;

  private static final double SIGMAS = 3;

  private Doubts() {}

  static List<DoubtedReading> of(String file, PlateReadings readings, PlateFit fit) {
    return fit.doubted().stream()
        .map(
            i ->
                doubted(
                    file,
                    readings.get(i).timeS(),
                    readings.get(i).massKg(),
                    exactly(readings.get(i).massKg() - fit.residualsKg().getEntry(i)),
                    fit.weights().getEntry(i)))
        .toList();
  }

  static DoubtedReading of(String file, OddWeighing odd) {
    String bound =
        switch (odd.kind()) {
          case BELOW_SOLIDS -> "at least ";
          case GAIN -> odd.otherS() < odd.weighing().timeS() ? "at most " : "at least ";
          case AT_ONCE -> "";
        };
    return doubted(
        file,
        odd.weighing().timeS(),
        odd.weighing().filmMassKg(),
        bound + exactly(odd.otherKg()),
        0);
  }

  private static DoubtedReading doubted(
      String file, double timeS, double massKg, String fitting, double countsFor) {
    return new DoubtedReading(
        file,
        DoubtedReading.weighing(WeighingQuestion.hours(timeS)),
        "a film of " + exactly(massKg),
        fitting,
        countsFor);
  }

  /** What is asked before anything is fitted. */
  static List<WeighingQuestion> questions(UsableWeighings usable) {
    List<WeighingQuestion> questions = new ArrayList<>();
    if (usable.every() > 1) {
      questions.add(
          new WeighingQuestion(
              "Of the weighings one in %s is used; those between add nothing."
                  .formatted(usable.every())));
    }
    usable.odd().forEach(odd -> questions.add(question(odd)));
    return questions;
  }

  private static WeighingQuestion question(OddWeighing odd) {
    double timeS = odd.weighing().timeS();
    double moreKg = odd.weighing().filmMassKg() - odd.otherKg();
    String what =
        switch (odd.kind()) {
          case BELOW_SOLIDS ->
              """
              shows a film of %s, less than the %s of solids that were poured: is the unit right, \
              the tare taken off once, and the poured mass noted?\
              """
                  .formatted(grams(odd.weighing().filmMassKg()), grams(odd.otherKg()));
          case AT_ONCE ->
              "and another within two minutes differ by %s: which of them is right?"
                  .formatted(grams(Math.abs(moreKg)));
          case GAIN ->
              (moreKg > 0
                      ? """
                      is %s heavier than the one %%s, and a film that wet gains nothing: was a \
                      lid on, or was it another plate?\
                      """
                      : """
                      is %s lighter than the later one %%s: was it mistyped, or was it another \
                      plate?\
                      """)
                  .formatted(grams(Math.abs(moreKg)));
        };
    return untilConfirmed(
        what,
        odd.kind() == OddWeighing.WeighingAnomaly.GAIN
            ? List.of(timeS, odd.otherS())
            : List.of(timeS));
  }

  /**
   * Where the level of the masses most likely changed for good: after the loss that is largest
   * against what was expected of its time. Whether it did, a fit with a free level from there on
   * must tell (a change of mean at one time: Basseville and Nikiforov 1993, Detection of Abrupt
   * Changes, chapter 2, recalled).
   *
   * @return the first weighing after it; empty where too few lie before or after
   */
  static OptionalInt likeliestStep(PlateReadings readings, Normal before) {
    double[] expected = readings.expectedKg(before.mean().toArray());
    int step = -1;
    double most = 0;
    for (int i = FEWEST_ON_A_SIDE; i <= readings.count() - FEWEST_ON_A_SIDE; i++) {
      double least = SIGMAS * Math.hypot(readings.get(i - 1).sdKg(), readings.get(i).sdKg());
      double ratio =
          (readings.get(i - 1).massKg() - readings.get(i).massKg())
              / Math.max(least, expected[i - 1] - expected[i]);
      if (ratio > most) {
        most = ratio;
        step = i;
      }
    }
    return step < 0 ? OptionalInt.empty() : OptionalInt.of(step);
  }

  /** What is asked of a step. */
  static WeighingQuestion question(PlateReadings readings, PlateFit fit, int step) {
    double[] expected = readings.expectedKg(fit.deviations().toArray());
    double offKg = 0;
    for (int i = step; i < readings.count(); i++) {
      offKg += (readings.get(i).massKg() - expected[i]) / (readings.count() - step);
    }
    String words =
        """
        From the weighing %%s on all are about %s g %s than those before allow: was paste lost, or \
        was it another plate or tare? They are left out of the forecast; from there on the loss \
        counts once you confirm the first of them.\
        """
            .formatted(Math.round(Math.abs(offKg) * G_PER_KG), offKg < 0 ? "lighter" : "heavier");
    List<Double> leftOutS =
        IntStream.range(step, readings.count()).mapToObj(i -> readings.get(i).timeS()).toList();
    return new WeighingQuestion(words, leftOutS, leftOutS);
  }

  /** What is asked of a weighing that does not fit the others. */
  static WeighingQuestion slip(PlateReadings readings, PlateFit fit, int reading) {
    double offKg = fit.residualsKg().getEntry(reading);
    String what =
        offKg < 0
            ? "is %s lighter than the others allow: was paste lost, or was it mistyped?"
            : "is %s heavier than the others allow: was a lid on, or was it another plate?";
    return untilConfirmed(
        what.formatted(grams(Math.abs(offKg))), List.of(readings.get(reading).timeS()));
  }

  private static WeighingQuestion untilConfirmed(String what, List<Double> timesS) {
    return new WeighingQuestion(
        "The weighing %s " + what + " It is left out of the forecast; if it is right, confirm it.",
        timesS,
        timesS.subList(0, 1));
  }

  private static String grams(double kg) {
    return exactly(kg).replace(".0 g", " g");
  }

  private static String exactly(double kg) {
    return String.format(Locale.ROOT, "%.1f g", kg * G_PER_KG);
  }
}
