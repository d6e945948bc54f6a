package starchfilm.request;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.Moment;
import starchfilm.files.amount.MomentParser;

/** Reads by when a film must be ready, against the clock on the wall: the pour is now. */
final class WrittenDate {
  private static final String ALLOWED =
      "a time from now, such as 5d or 36h, or a day to come, such as friday, 2026-12-01 or"
          + " 1.12.2026 18:00";
  private static final LocalTime MIDDAY = LocalTime.NOON;
  private static final Pattern ISO_DAY = Pattern.compile("\\d{4}-\\d{1,2}-\\d{1,2}");
  private static final Pattern DAY_FIRST = Pattern.compile("\\d{1,2}\\.\\s*\\d{1,2}\\.\\s*\\d{4}");
  private static final Pattern WEEKDAY =
      Pattern.compile("(?:next |on )?([a-z]+)(?:[ ,]\\s*(\\d{1,2}:\\d{2}))?");
  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

  private WrittenDate() {}

  /**
   * The time from now to the date; a day without an hour counts to its noon.
   *
   * @param typed as typed
   * @return s, above 0
   */
  static double secondsFromNow(String typed, Clock clock) {
    double seconds = read(typed, clock);
    if (!(seconds > 0)) {
      throw new MistypedException(
          typed,
          "a moment after now, " + SHOWN.format(LocalDateTime.now(clock)),
          "it is past; write a time from now, such as 5d, or a later day");
    }
    return seconds;
  }

  private static double read(String typed, Clock clock) {
    String text = typed.strip().toLowerCase(Locale.ROOT);
    try {
      if (Character.isDigit(text.isEmpty() ? ' ' : text.charAt(0)) && text.matches(".*[a-z]$")) {
        return Quantities.spanS(text);
      }
      Optional<LocalDateTime> weekday = weekday(text, clock);
      if (weekday.isPresent()) {
        return seconds(weekday.get(), clock);
      }
      boolean wholeDay = ISO_DAY.matcher(text).matches() || DAY_FIRST.matcher(text).matches();
      Moment moment = new MomentParser(clock).parse(wholeDay ? text + " " + MIDDAY : typed.strip());
      if (moment instanceof Moment.ByTheClock at) {
        return seconds(at.time(), clock);
      }
      return moment instanceof Moment.SincePour since ? since.s() : 0;
    } catch (MistypedException e) {
      throw new MistypedException(typed, ALLOWED, "write it like one of these");
    }
  }

  /** The next such day, at its noon or the hour given. */
  private static Optional<LocalDateTime> weekday(String text, Clock clock) {
    Matcher matcher = WEEKDAY.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    LocalDate today = LocalDate.now(clock);
    LocalTime time = time(matcher);
    if (matcher.group(1).equals("tomorrow")) {
      return Optional.of(today.plusDays(1).atTime(time));
    }
    for (DayOfWeek day : DayOfWeek.values()) {
      String name = day.name().toLowerCase(Locale.ROOT);
      if (name.equals(matcher.group(1)) || name.substring(0, 3).equals(matcher.group(1))) {
        return Optional.of(today.with(TemporalAdjusters.next(day)).atTime(time));
      }
    }
    return Optional.empty();
  }

  private static LocalTime time(Matcher matcher) {
    String typed = matcher.group(2);
    if (typed == null) {
      return MIDDAY;
    }
    String[] parts = typed.split(":", -1);
    int hour = Integer.parseInt(parts[0]);
    int minute = Integer.parseInt(parts[1]);
    if (hour > 23 || minute > 59) {
      throw new MistypedException(typed, ALLOWED, "write it like one of these");
    }
    return LocalTime.of(hour, minute);
  }

  private static double seconds(LocalDateTime time, Clock clock) {
    return Duration.between(LocalDateTime.now(clock), time).toMillis() / 1e3;
  }
}
