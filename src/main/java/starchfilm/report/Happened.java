package starchfilm.report;

import static starchfilm.report.words.ReaderUnit.GRAM;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.words.PlainWords;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.Spans;

/**
 * What came of a trial, held against its forecast.
 *
 * @param weighings each weighing beside the forecast at the pour, which has not seen it
 * @param measured what was measured on the dry film, beside the forecast
 * @param betweenPlates mean and spread of what was measured of several plates; may be empty
 * @param rating 0 where none was given
 */
record Happened(
    List<Weighed> weighings,
    List<Measured> measured,
    List<String> betweenPlates,
    List<Seen> faults,
    int rating,
    List<String> remarks) {
  private static final int BEST_RATING = 5;

  /**
   * A weighing.
   *
   * @param after time since the pour
   * @param grams what the scale showed, without the plate
   */
  record Weighed(String when, String after, String grams, String expected, String verdict) {}

  /**
   * A fault.
   *
   * @param what the fault, its place and time
   * @param remark in the maker's words; may be empty
   * @param todo what to do with such a film; may be empty
   */
  record Seen(String what, String remark, String todo) {}

  /**
   * What came of a trial.
   *
   * @return everything noted since the pour
   */
  public static Happened of(TrialForecast forecast) {
    Trial trial = forecast.trial();
    PourCalendar calendar = PourCalendar.of(trial);
    boolean oneWeighed = trial.seen().eachPlate().weighings().isEmpty();
    List<Weighed> weighings = new ArrayList<>();
    for (Trial plate : trial.weighedPlates()) {
      String who = oneWeighed ? "" : "plate " + plate.seen().eachPlate().shown() + ", ";
      weighings.addAll(weighings(plate, forecast, who));
    }
    return new Happened(
        weighings,
        Measured.of(forecast),
        Measured.betweenPlates(trial),
        trial.seen().faults().stream().map(fault -> seen(fault, calendar, forecast)).toList(),
        trial.seen().rating().orElse(0),
        trial.seen().remarks());
  }

  private static List<Weighed> weighings(Trial plate, TrialForecast forecast, String who) {
    PourCalendar calendar = PourCalendar.of(plate);
    CurveReading reading = CurveReading.atThePour(forecast);
    List<Weighed> weighings = new ArrayList<>();
    double lossesFromKg = 0;
    for (Weighing weighing : plate.seen().weighings()) {
      if (!weighing.tared() && lossesFromKg == 0) {
        // Without the tare, losses are counted from what the first weighing should be.
        lossesFromKg =
            weighing.filmMassKg() - reading.massKg(reading.moistureAt(weighing.timeS()).middle());
      }
      String when = who + calendar.moment(weighing.timeS());
      weighings.add(weighed(weighing, weighing.tared() ? 0 : lossesFromKg, reading, when));
    }
    return weighings;
  }

  /**
   * What the last weighing said.
   *
   * @return a sentence; empty where nothing was weighed
   */
  static String lastWeighed(TrialForecast forecast) {
    List<Weighed> weighings = weighings(forecast.trial(), forecast, "");
    if (weighings.isEmpty()) {
      return "";
    }
    Weighed last = weighings.get(weighings.size() - 1);
    return "Last weighed %s: %s of film, %s at the pour (%s)."
        .formatted(last.when(), last.grams(), last.verdict(), last.expected());
  }

  /** Whether anything was noted at all. */
  public boolean any() {
    return !weighings.isEmpty()
        || !measured.isEmpty()
        || !faults.isEmpty()
        || rating > 0
        || !remarks.isEmpty();
  }

  /** The rating as five marks. */
  public List<Boolean> stars() {
    return IntStream.rangeClosed(1, BEST_RATING).mapToObj(mark -> mark <= rating).toList();
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

  private static Seen seen(ObservedFault fault, PourCalendar calendar, TrialForecast forecast) {
    return new Seen(
        PlainWords.seen(fault, calendar),
        fault.remark().orElse(""),
        FailedFilm.todo(fault, forecast));
  }
}
