package starchfilm.report;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.drying.DryingVerdict;
import starchfilm.forecast.CurveReading;
import starchfilm.forecast.TrialForecast;
import starchfilm.numerics.evidence.Band;
import starchfilm.report.chart.Scale;
import starchfilm.report.chart.Strip;
import starchfilm.report.words.Figures;
import starchfilm.report.words.PourCalendar;
import starchfilm.report.words.Spans;

/**
 * A plate that is drying, as it stands now.
 *
 * @param since how long it has been drying
 * @param gone how much of its water should be gone
 * @param goneWidth the same, as a bar
 * @param due when it can be peeled and when it is dry
 * @param strip both moments, and now, on one axis
 * @param axisTitle what that axis counts
 * @param lastWeighed what the last weighing said; may be empty
 * @param questions what is odd about its weighings, each with the question to answer
 * @param advice what the room makes of it, where it does not simply dry; may be empty
 */
public record PlateNow(
    String since,
    String gone,
    String goneWidth,
    List<Due> due,
    Strip strip,
    String axisTitle,
    String lastWeighed,
    List<String> questions,
    String advice) {
  private static final int AXIS_TICKS = 8;

  /** Shorter axes count hours (s). */
  private static final double HOURS_UP_TO_S = 2.5 * DAY_S;

  /**
   * Something the plate is waited for.
   *
   * @param kind class of its mark
   * @param what the state
   * @param when when it comes, seen from now
   * @param past true where it should have come already
   */
  public record Due(String kind, String what, String when, boolean past) {}

  /** Copies the lists. */
  public PlateNow {
    due = List.copyOf(due);
    questions = List.copyOf(questions);
  }

  /**
   * A plate now.
   *
   * @param forecast its trial, poured at a known time
   * @param now the time by the clock on the wall, not before the pour
   * @return how it stands
   */
  public static PlateNow of(TrialForecast forecast, LocalDateTime now) {
    LocalDateTime pour = forecast.trial().pouredAt().orElseThrow();
    double nowS = Duration.between(pour, now).toSeconds();
    CurveReading reading = new CurveReading(forecast);
    double start = forecast.drying().startMoisture();
    Band left = reading.moistureAt(nowS);
    String gone = Figures.whole(100 * (1 - left.middle() / start));
    boolean hours = endS(forecast, nowS) <= HOURS_UP_TO_S;
    return new PlateNow(
        "drying for " + Spans.of(nowS),
        "about "
            + gone
            + " % of its water should be gone ("
            + Figures.range(
                Figures.whole(100 * (1 - left.high() / start)),
                Figures.whole(100 * (1 - left.low() / start)))
            + ")",
        gone + "%",
        due(forecast, new PourCalendar(Optional.of(pour)), nowS),
        strip(forecast, nowS, hours ? HOUR_S : DAY_S),
        (hours ? "hours" : "days") + " since the pour",
        lastWeighed(forecast),
        forecast.weighed().questions(),
        forecast.drying().verdict() == DryingVerdict.DRIES ? "" : Headline.of(forecast));
  }

  private static List<Due> due(TrialForecast forecast, PourCalendar calendar, double nowS) {
    Band peelable = DryingScale.peelable(forecast);
    Band dry = DryingScale.dryThrough(forecast);
    return List.of(
        new Due("peelable", "peelable", when(peelable, calendar, nowS), peelable.high() <= nowS),
        new Due("dry", "dry through", when(dry, calendar, nowS), dry.high() <= nowS));
  }

  private static String when(Band band, PourCalendar calendar, double nowS) {
    if (Double.isInfinite(band.low())) {
      return "not in this room";
    }
    if (band.high() <= nowS) {
      return "by now";
    }
    if (band.low() <= nowS) {
      return "any time now, "
          + (Double.isInfinite(band.high())
              ? "perhaps never"
              : "in 9 of 10 cases by " + calendar.byTheHour(band.high()));
    }
    return Double.isInfinite(band.middle())
        ? "not before " + calendar.byTheHour(band.low()) + ", perhaps never"
        : calendar.range(band);
  }

  private static double endS(TrialForecast forecast, double nowS) {
    double end = nowS;
    for (Band band : List.of(DryingScale.peelable(forecast), DryingScale.dryThrough(forecast))) {
      for (double moment : new double[] {band.low(), band.middle(), band.high()}) {
        end = Double.isFinite(moment) ? Math.max(end, moment) : end;
      }
    }
    return Math.max(HOUR_S, 1.05 * end);
  }

  private static Strip strip(TrialForecast forecast, double nowS, double unitS) {
    Scale scale =
        Scale.linear(0, endS(forecast, nowS) / unitS, Strip.FIRST_PLACE, Strip.LAST_PLACE);
    List<Strip.Range> ranges = new ArrayList<>();
    List<Strip.Dot> dots = new ArrayList<>();
    add("peelable", DryingScale.peelable(forecast).times(1 / unitS), scale, ranges, dots);
    add("dry", DryingScale.dryThrough(forecast).times(1 / unitS), scale, ranges, dots);
    dots.add(new Strip.Dot("now", scale.place(nowS / unitS) + "%"));
    return new Strip(
        "How far the plate is",
        "Now "
            + Spans.of(nowS)
            + " after the pour; peelable after "
            + Spans.of(DryingScale.peelable(forecast))
            + ", dry through in the thick spot after "
            + Spans.of(DryingScale.dryThrough(forecast)),
        Strip.grid(scale, AXIS_TICKS),
        ranges,
        dots);
  }

  private static void add(
      String kind, Band band, Scale scale, List<Strip.Range> ranges, List<Strip.Dot> dots) {
    if (Double.isInfinite(band.low())) {
      return;
    }
    ranges.add(Strip.range(kind, scale, band.low(), band.high()));
    if (Double.isFinite(band.middle())) {
      dots.add(new Strip.Dot(kind, scale.place(band.middle()) + "%"));
    }
  }

  private static String lastWeighed(TrialForecast forecast) {
    List<Happened.Weighed> weighings = Happened.of(forecast).weighings();
    if (weighings.isEmpty()) {
      return "";
    }
    Happened.Weighed last = weighings.get(weighings.size() - 1);
    return "Last weighed "
        + last.when()
        + ": "
        + last.grams()
        + " of film, "
        + last.verdict()
        + " at the pour ("
        + last.expected()
        + ").";
  }
}
