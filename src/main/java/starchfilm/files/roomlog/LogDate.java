package starchfilm.files.roomlog;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoField;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.json.PackedPatterns;

/**
 * Date and time in a room log, before it is decided whether day or month comes first.
 *
 * @param dayFirst the moment with the day first; empty where that is no day
 * @param monthFirst the moment with the month first, likewise; the same where the year stands first
 * @param offset from UTC, where the text carries one
 */
record LogDate(
    Optional<LocalDateTime> dayFirst,
    Optional<LocalDateTime> monthFirst,
    Optional<ZoneOffset> offset) {
  private static final Pattern WRITTEN =
      PackedPatterns.of(LogDate.class, "dates.patterns").get("figures");

  static Optional<LogDate> parse(String written) {
    Matcher date = WRITTEN.matcher(written);
    if (!date.matches() && !date.reset(LogMonths.numbered(written)).matches()) {
      return Optional.empty();
    }
    boolean yearFirst = date.group(1).length() == 4;
    int yearDigits = date.group(yearFirst ? 1 : 4).length();
    if (yearFirst ? date.group(4).length() == 4 : yearDigits == 1) {
      return Optional.empty();
    }
    int first = Integer.parseInt(date.group(1));
    int second = Integer.parseInt(date.group(3));
    int third = Integer.parseInt(date.group(4)) + (yearDigits == 2 ? 2000 : 0);
    try {
      LocalTime time = time(date);
      Optional<LocalDateTime> dayFirst =
          yearFirst ? moment(first, second, third, time) : moment(third, second, first, time);
      // With points between them the day is always first.
      Optional<LocalDateTime> monthFirst =
          date.group(2).equals(".") ? Optional.empty() : moment(third, first, second, time);
      return Optional.of(
          new LogDate(
              dayFirst,
              yearFirst ? dayFirst : monthFirst,
              Optional.ofNullable(date.group("offset")).map(ZoneOffset::of)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static LocalTime time(Matcher date) {
    int hour = Integer.parseInt(date.group("hour"));
    String half = date.group("half");
    if (half != null) {
      boolean afternoon = half.equalsIgnoreCase("pm");
      hour =
          Math.floorMod(ChronoField.CLOCK_HOUR_OF_AMPM.checkValidIntValue(hour), 12)
              + (afternoon ? 12 : 0);
    }
    String seconds = date.group("seconds");
    return LocalTime.of(
        hour,
        Integer.parseInt(date.group("minutes")),
        seconds == null ? 0 : Integer.parseInt(seconds));
  }

  private static Optional<LocalDateTime> moment(int year, int month, int day, LocalTime time) {
    try {
      return Optional.of(LocalDate.of(year, month, day).atTime(time));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /** The moment; empty where there is no such day. */
  Optional<LocalDateTime> moment(boolean isMonthFirst) {
    return isMonthFirst ? monthFirst.or(() -> dayFirst) : dayFirst.or(() -> monthFirst);
  }
}
