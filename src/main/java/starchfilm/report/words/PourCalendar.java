package starchfilm.report.words;

import static starchfilm.numerics.units.Units.DAY_S;
import static starchfilm.numerics.units.Units.HOUR_S;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.WallClock;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;

/**
 * Moments after a pour, as dates where the pour was noted and as days where it was not.
 *
 * <p>Dates name the weekday and spell the month, so that no reader takes the day for the month.
 *
 * @param pouredAt when it was poured, by the clock on the wall, if noted
 */
public record PourCalendar(Optional<LocalDateTime> pouredAt) {
  private static final DateTimeFormatter DATE = english("EEE d MMM");
  private static final DateTimeFormatter DATE_AND_YEAR = english("EEE d MMM yyyy");
  private static final DateTimeFormatter FULL = english("EEE d MMM yyyy, H:mm");
  private static final DateTimeFormatter MONTH = english("MMM");
  private static final DateTimeFormatter WEEKDAY_AND_DAY = english("EEE d");
  private static final DateTimeFormatter MINUTE = english("H:mm");
  private static final DateTimeFormatter WEEKDAY = english("EEE");

  /** Longer after the pour than this, the part of the day says more than is known (s). */
  private static final double PART_OF_DAY_UP_TO_S = 3 * DAY_S;

  /** A range shorter than this is stated by the hour, a longer one by the day (s). */
  private static final double BY_THE_HOUR_UP_TO_S = 2 * DAY_S;

  /** Steps of a time axis (h). */
  private static final int[] STEPS_H = {1, 2, 3, 6, 12, 24, 48, 120, 240, 480, 1200};

  private static final int HOURS_OF_DAY = 24;

  /** The end of the calendar: a longer time is stated as a number of days (s). */
  private static final double DATES_UP_TO_S = 400 * DAY_S;

  private static DateTimeFormatter english(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }

  /**
   * The calendar of a trial.
   *
   * @param trial the trial
   * @return moments after its pour
   */
  public static PourCalendar of(Trial trial) {
    return new PourCalendar(trial.pouredAt());
  }

  /**
   * The moment of the pour.
   *
   * @return such as {@code Mon 13 Apr 2026, 18:30}, or {@code pour not dated}
   */
  public String pour() {
    return pouredAt.map(FULL::format).orElse("date of the pour unknown");
  }

  /**
   * A moment, with as much detail as the distance from the pour deserves.
   *
   * @param afterPourS time since the pour (s, 0 or more); infinity for never
   * @return such as {@code Tue 14 Apr, evening}, {@code Sun 19 Apr}, {@code day 6.2}, {@code never}
   */
  public String moment(double afterPourS) {
    if (Double.isInfinite(afterPourS)) {
      return "never";
    }
    if (pouredAt.isEmpty() || afterPourS > DATES_UP_TO_S) {
      return "day " + Figures.two(afterPourS / DAY_S);
    }
    LocalDateTime at = at(afterPourS);
    return afterPourS > PART_OF_DAY_UP_TO_S ? date(at) : date(at) + ", " + partOfDay(at.getHour());
  }

  /**
   * A moment for other programs.
   *
   * @param afterPourS time since the pour (s); infinity for never
   * @return to the minute, such as {@code 2026-11-28T11:05}; none where it never comes or the pour
   *     is not dated
   */
  public Optional<String> iso(double afterPourS) {
    return pouredAt
        .filter(poured -> Double.isFinite(afterPourS))
        .map(poured -> at(afterPourS).truncatedTo(ChronoUnit.MINUTES).toString());
  }

  /**
   * A forecast moment with its range: by the hour where the range is shorter than two days, else by
   * the day.
   *
   * @param afterPourS the band (s since the pour), its low end and middle finite
   * @return such as {@code Sat 28 Nov, about 9:00 (7–11)}, {@code Sat 28 Nov, about 1:00 (Fri 22:00
   *     to Sat 4:00)}, {@code Sat 28 Nov (Thu 26 Nov to Tue 1 Dec)}, {@code Sat 28 Nov (Thu 26 Nov
   *     to never)}; where the pour is not dated, {@code after 41 hours (28–62)}
   */
  public String range(Band afterPourS) {
    return range(afterPourS, afterPourS.middle());
  }

  /**
   * The same beside a later one, stated in the same unit.
   *
   * @param afterPourS the band (s since the pour), its low end and middle finite
   * @param latestS the later one's middle (s since the pour)
   * @return as {@link #range(Band)}
   */
  public String range(Band afterPourS, double latestS) {
    double last = Double.isInfinite(afterPourS.high()) ? afterPourS.middle() : afterPourS.high();
    if (pouredAt.isEmpty() || last > DATES_UP_TO_S) {
      return "after " + Spans.of(afterPourS, latestS);
    }
    LocalDateTime low = hour(afterPourS.low());
    LocalDateTime middle = hour(afterPourS.middle());
    if (afterPourS.high() - afterPourS.low() >= BY_THE_HOUR_UP_TO_S) {
      String high = Double.isInfinite(afterPourS.high()) ? "never" : date(hour(afterPourS.high()));
      String from = date(low).equals(date(middle)) ? "" : date(low) + " ";
      return date(middle) + " (" + from + "to " + high + ")";
    }
    LocalDateTime high = hour(afterPourS.high());
    String about = date(middle) + ", about " + middle.getHour() + ":00";
    if (low.equals(middle) && high.equals(middle)) {
      return about;
    }
    return low.toLocalDate().equals(high.toLocalDate())
        ? "%s (%s\u2013%s)".formatted(about, low.getHour(), high.getHour())
        : "%s (%s to %s)".formatted(about, clock(low, middle), clock(high, low));
  }

  /**
   * A moment by the hour.
   *
   * @param afterPourS time since the pour (s); finite
   * @return such as {@code Sat 28 Nov, 11:00}; the date alone where the pour is long ago, or the
   *     day where it is not dated
   */
  public String byTheHour(double afterPourS) {
    if (pouredAt.isEmpty() || afterPourS > PART_OF_DAY_UP_TO_S) {
      return moment(afterPourS);
    }
    LocalDateTime at = hour(afterPourS);
    return date(at) + ", " + at.getHour() + ":00";
  }

  /**
   * A moment that was noted.
   *
   * @param afterPourS time since the pour (s)
   * @return such as {@code Sat 28 Nov, 11:05}
   */
  public String toTheMinute(double afterPourS) {
    return pouredAt.isEmpty()
        ? moment(afterPourS)
        : date(at(afterPourS)) + ", " + MINUTE.format(at(afterPourS));
  }

  /**
   * A stretch of time to look in: by the hour where it is shorter than two days, else by the day.
   *
   * @param fromS its beginning (s since the pour); finite
   * @param untilS its end (s since the pour); may be infinite
   * @return such as {@code Sat 28 Nov, 8:00 to 11:00} or {@code Sat 28 Nov to Tue 1 Dec}
   */
  public String window(double fromS, double untilS) {
    if (pouredAt.isEmpty() || fromS > DATES_UP_TO_S) {
      return "after " + Spans.of(fromS);
    }
    if (Double.isInfinite(untilS) || untilS > DATES_UP_TO_S) {
      return "from " + date(fromS) + " on";
    }
    LocalDateTime from = hour(fromS);
    LocalDateTime until = hour(untilS);
    if (untilS - fromS >= BY_THE_HOUR_UP_TO_S) {
      return date(from) + " to " + date(until);
    }
    String hour = date(from) + ", " + from.getHour() + ":00";
    return from.equals(until) ? "about " + hour : hour + " to " + clock(until, from);
  }

  /**
   * A moment by the day.
   *
   * @param afterPourS time since the pour (s)
   * @return such as {@code Sat 28 Nov}; the number of days where the pour is not dated
   */
  public String date(double afterPourS) {
    return pouredAt.isEmpty() || !(afterPourS <= DATES_UP_TO_S)
        ? moment(afterPourS)
        : date(at(afterPourS));
  }

  /**
   * The same for whoever is not told the year of the pour.
   *
   * @param afterPourS time since the pour (s)
   * @param nowS the time since the pour at which it is read (s)
   * @return with its year, where that is another one by then
   */
  public String date(double afterPourS, double nowS) {
    return pouredAt.isPresent()
            && afterPourS <= DATES_UP_TO_S
            && at(afterPourS).getYear() != at(nowS).getYear()
        ? DATE_AND_YEAR.format(at(afterPourS))
        : date(afterPourS);
  }

  /** The nearest full hour. */
  private LocalDateTime hour(double afterPourS) {
    return at(afterPourS).plusMinutes(30).truncatedTo(ChronoUnit.HOURS);
  }

  private String date(LocalDateTime at) {
    return (at.getYear() == pouredAt.orElseThrow().getYear() ? DATE : DATE_AND_YEAR).format(at);
  }

  /** With its day, unless that is the day named last. */
  private static String clock(LocalDateTime at, LocalDateTime named) {
    boolean sameDay = at.toLocalDate().equals(named.toLocalDate());
    return (sameDay ? "" : WEEKDAY.format(at) + " ") + at.getHour() + ":00";
  }

  /**
   * A tick of a time axis that shows the clock.
   *
   * @param afterPourS where (s since the pour)
   * @param label the hour, or the day where the ticks are days
   * @param under the day below the first hour of it; the month below its first day; may be empty
   */
  public record ClockTick(double afterPourS, String label, String under) {}

  /**
   * Ticks at full hours or midnights.
   *
   * @param untilS the end of the axis (s since the pour)
   * @param atMost how many ticks there is room for
   * @return the ticks, the finest that leave room; none where the pour is not dated or the axis is
   *     longer than the calendar
   */
  public List<ClockTick> clockTicks(double untilS, int atMost) {
    if (pouredAt.isEmpty() || untilS > DATES_UP_TO_S) {
      return List.of();
    }
    int stepH = STEPS_H[STEPS_H.length - 1];
    for (int i = STEPS_H.length - 1; i >= 0 && untilS / (STEPS_H[i] * HOUR_S) <= atMost; i--) {
      stepH = STEPS_H[i];
    }
    LocalDateTime midnight = pouredAt.get().toLocalDate().atStartOfDay();
    List<ClockTick> ticks = new ArrayList<>();
    String under = "";
    for (LocalDateTime at = midnight; ; at = at.plusHours(stepH)) {
      double afterS = WallClock.secondsBetween(pouredAt.get(), at);
      if (afterS > untilS) {
        return ticks;
      }
      boolean byDay = stepH >= HOURS_OF_DAY;
      String around = (byDay ? MONTH : WEEKDAY_AND_DAY).format(at);
      boolean shown = WallClock.at(WallClock.instant(at)).equals(at);
      if (afterS >= 0 && shown) {
        ticks.add(
            new ClockTick(
                afterS,
                byDay ? WEEKDAY_AND_DAY.format(at) : at.getHour() + ":00",
                around.equals(under) ? "" : around));
        under = around;
      }
    }
  }

  private LocalDateTime at(double afterPourS) {
    return WallClock.after(pouredAt.orElseThrow(), afterPourS);
  }

  private static String partOfDay(int hour) {
    return List.of("before dawn", "morning", "afternoon", "evening").get(hour / 6);
  }
}
