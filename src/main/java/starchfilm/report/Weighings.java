package starchfilm.report;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.forecast.WeighingQuestion;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Spans;
import starchfilm.report.words.PourCalendar;

/** The weighings of a trial, each beside the forecast at the pour, which has not seen it. */
public final class Weighings {
  private Weighings() {}

  /**
   * A weighing.
   *
   * @param after time since the pour
   * @param grams what the scale showed, without the plate
   */
  public record Weighed(String when, String after, String grams, String expected, String verdict) {
    private Weighed leftOut() {
      return new Weighed(when, after, grams, expected, "looks wrong, left out");
    }
  }

  /**
   * A question about a plate's weighings.
   *
   * @param confirmAt the time of the weighing to confirm, such as {@code 21.5h}; may be empty
   * @param confirmOf the number of its plate; empty where the pour has no other
   * @param confirm the button that confirms it
   */
  public record DoubtedWeighing(String words, String confirmAt, String confirmOf, String confirm) {}

  /**
   * Every weighing of a trial.
   *
   * @param forecast the trial
   * @return plate by plate, in the order they were made
   */
  public static List<Weighed> of(TrialForecast forecast) {
    boolean oneWeighed = forecast.seen().eachPlate().weighings().isEmpty();
    List<Weighed> weighings = new ArrayList<>();
    for (Trial plate : forecast.trial().weighedPlates()) {
      String who = oneWeighed ? "" : "plate " + plate.seen().eachPlate().shown() + ", ";
      weighings.addAll(weighings(plate, forecast, who));
    }
    return weighings;
  }

  /**
   * What is asked of a plate's weighings.
   *
   * @param forecast the plate
   * @return a question each, by the clock
   */
  public static List<DoubtedWeighing> asked(TrialForecast forecast) {
    PourCalendar calendar = PourCalendar.of(forecast.trial());
    return forecast.weighed().questions().stream()
        .map(
            question ->
                new DoubtedWeighing(
                    question.words(timeS -> "of " + calendar.toTheMinute(timeS)),
                    question.confirmAt(),
                    WeighingQuestion.confirmOf(forecast.trial()),
                    question.leftOutS().stream()
                        .limit(1)
                        .map(
                            timeS ->
                                "The weighing of %s is right"
                                    .formatted(calendar.toTheMinute(timeS)))
                        .findFirst()
                        .orElse("")))
        .toList();
  }

  private static List<Weighed> weighings(Trial plate, TrialForecast forecast, String who) {
    PourCalendar calendar = PourCalendar.of(plate);
    CurveReading reading = CurveReading.atThePour(forecast);
    List<Weighed> weighings = new ArrayList<>();
    List<Double> leftOutS =
        plate.seen().eachPlate().shown() == forecast.seen().eachPlate().shown()
            ? forecast.weighed().questions().stream().flatMap(q -> q.leftOutS().stream()).toList()
            : List.of();
    double lossesFromKg = 0;
    for (Weighing weighing : plate.seen().weighings()) {
      if (!weighing.tared() && lossesFromKg == 0) {
        // Without the tare, losses are counted from what the first weighing should be.
        lossesFromKg =
            weighing.filmMassKg() - reading.massKg(reading.moistureAt(weighing.timeS()).middle());
      }
      String when = who + calendar.moment(weighing.timeS());
      Weighed weighed = weighed(weighing, weighing.tared() ? 0 : lossesFromKg, reading, when);
      weighings.add(leftOutS.contains(weighing.timeS()) ? weighed.leftOut() : weighed);
    }
    return weighings;
  }

  /**
   * The last weighing against its forecast.
   *
   * @return a sentence; none where nothing was weighed
   */
  public static Optional<String> lastWeighed(TrialForecast forecast) {
    return weighings(forecast.trial(), forecast, "").stream()
        .reduce((earlier, later) -> later)
        .map(
            last ->
                "Last weighed %s: %s of film, %s at the pour (%s)."
                    .formatted(last.when(), last.grams(), last.verdict(), last.expected()));
  }

  private static Weighed weighed(
      Weighing weighing, double lossesFromKg, CurveReading reading, String when) {
    double filmKg = weighing.filmMassKg() - lossesFromKg;
    Band expectedKg = reading.massKg(reading.moistureAt(weighing.timeS()));
    double error = Band.Z90 * weighing.massSdKg();
    String verdict = "as forecast";
    if (filmKg + error < expectedKg.low()) {
      verdict = "drier than forecast";
    } else if (filmKg - error > expectedKg.high()) {
      verdict = "wetter than forecast";
    }
    return new Weighed(
        when,
        Spans.of(weighing.timeS()),
        weighing.tared() ? GRAM.noted(filmKg) : "about " + GRAM.two(filmKg) + " g (tare unknown)",
        GRAM.range(expectedKg) + " g",
        verdict);
  }
}
