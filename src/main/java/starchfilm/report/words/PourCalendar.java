package starchfilm.report.words;

import static starchfilm.numerics.units.Units.DAY_S;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/**
 * Moments after a pour, as dates where the pour was noted and as days where it was not.
 *
 * <p>Dates name the weekday and spell the month, so that no reader takes the day for the month.
 *
 * @param pouredAt when it was poured, by the clock on the wall, if noted
 */
public record PourCalendar(Optional<LocalDateTime> pouredAt) {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter DATE_AND_YEAR =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
  private static final DateTimeFormatter FULL =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter LONG_DAY =
      DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);
  private static final DateTimeFormatter DAY_AND_MONTH =
      DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter WEEKDAY =
      DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);

  /** Longer after the pour than this, the part of the day says more than is known (s). */
  private static final double PART_OF_DAY_UP_TO_S = 3 * DAY_S;

  /** Ticks further apart are labelled with dates (s). */
  private static final double WEEKDAYS_UP_TO_S = 2 * DAY_S;

  /** The end of the calendar: a longer time is told as a number of days (s). */
  private static final double DATES_UP_TO_S = 400 * DAY_S;

  /**
   * For a pour whose date nobody noted.
   *
   * @return a calendar that counts days
   */
  public static PourCalendar undated() {
    return new PourCalendar(Optional.empty());
  }

  /**
   * When it was poured.
   *
   * @return such as {@code Mon 13 Apr 2026, 18:30}, or {@code pour not dated}
   */
  public String pour() {
    return pouredAt.map(FULL::format).orElse("pour not dated");
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
    String date = (at.getYear() == pouredAt.get().getYear() ? DATE : DATE_AND_YEAR).format(at);
    return afterPourS > PART_OF_DAY_UP_TO_S ? date : date + ", " + partOfDay(at.getHour());
  }

  /**
   * A moment for a sentence.
   *
   * @param afterPourS time since the pour (s); finite
   * @return such as {@code about Thursday 16 April} or {@code about day 3.4}
   */
  public String about(double afterPourS) {
    if (pouredAt.isEmpty() || afterPourS > DATES_UP_TO_S) {
      return "about day " + Figures.two(afterPourS / DAY_S);
    }
    LocalDateTime at = at(afterPourS);
    String part = afterPourS > PART_OF_DAY_UP_TO_S ? "" : ", " + partOfDay(at.getHour());
    return "about " + LONG_DAY.format(at) + part;
  }

  /**
   * The label under a tick of a time axis.
   *
   * @param afterPourS time since the pour (s)
   * @param stepS from tick to tick (s): where a week holds few ticks, dates say more than weekdays
   * @return such as {@code Thu} or {@code 16 Apr}; empty where the pour is not dated
   */
  public String tick(double afterPourS, double stepS) {
    DateTimeFormatter format = stepS > WEEKDAYS_UP_TO_S ? DAY_AND_MONTH : WEEKDAY;
    return pouredAt.map(pour -> format.format(at(afterPourS))).orElse("");
  }

  private LocalDateTime at(double afterPourS) {
    return pouredAt.orElseThrow().plusSeconds(Math.round(afterPourS));
  }

  private static String partOfDay(int hour) {
    if (hour < 6) {
      return "early";
    }
    if (hour < 12) {
      return "morning";
    }
    return hour < 18 ? "afternoon" : "evening";
  }
}
