package starchfilm.files.amount;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import starchfilm.files.json.PackedPatterns;

/**
 * A day and an hour as people say them: {@code sat noon}, {@code 28 Nov 6pm}, {@code morgen Abend},
 * {@code 28.11. 18 Uhr}. What no year or day tells is the next such moment, or the last one.
 *
 * @param time the moment
 * @param hasHour whether an hour was said; without one it is noon
 */
record SpokenTime(LocalDateTime time, boolean hasHour) {
  /** How moments are written. */
  static final PackedPatterns TYPED =
      PackedPatterns.of(SpokenTime.class, "times.patterns", Map.of("month", MonthNames.PATTERN));

  private static final Pattern SLASHES = TYPED.get("slashes");

  /** The ways of writing a day. */
  private static final List<Pattern> DATES =
      Stream.of("year first", "points", "day and month", "month and day").map(TYPED::get).toList();

  private static final Pattern CLOCK = TYPED.get("clock");

  /** Alone it might as well be a length of time. */
  private static final Pattern FRENCH_HOUR = TYPED.get("hour alone");

  private static final Pattern IDLE = TYPED.get("idle");

  private static final String WHOLE_WORD = "\\b(?:%s)\\b";

  /** Times of the day in words, by their hour. */
  private static final List<Wording> PARTS = Wording.of("hour", WHOLE_WORD);

  /** Whoever writes an earlier one has mistyped it. */
  private static final int EARLIEST_YEAR = 1900;

  private static final LocalTime TONIGHT = LocalTime.of(21, 0);

  /** Days by their distance from today. */
  private static final List<Wording> NEAR = Wording.of("day", WHOLE_WORD);

  private static final List<Wording> WEEKDAYS = Wording.of("weekday", WHOLE_WORD);

  /**
   * Reads it.
   *
   * @param typed as typed
   * @param now what time it is
   * @param coming whether the next such moment is meant, or the last one
   * @return empty where it is no such thing
   * @throws MistypedException where it could be two days, or none of the calendar
   */
  static Optional<SpokenTime> of(String typed, LocalDateTime now, boolean coming) {
    return new TimeReader(typed, now, coming, new Rest(Wording.plain(typed))).read();
  }

  /**
   * A day of the calendar.
   *
   * @param typed all that was typed
   * @param year its digits, two of them for this century; null where none is given, then it is 0,
   *     which has a 29 February
   * @param month its digits or its name
   * @throws MistypedException where there is no such day
   */
  static LocalDate date(String typed, @Nullable String year, String month, String day) {
    try {
      int number = year == null ? 0 : Integer.parseInt(year.length() == 2 ? "20" + year : year);
      if (year != null && number < EARLIEST_YEAR) {
        throw new MistypedException(
            typed, "a year from " + EARLIEST_YEAR + " on", "check the year");
      }
      return LocalDate.of(
          number,
          Character.isDigit(month.charAt(0)) ? Integer.parseInt(month) : MonthNames.number(month),
          Integer.parseInt(day));
    } catch (DateTimeException e) {
      throw new MistypedException(typed, "a day of the calendar", "check day and month");
    }
  }

  /** A text that is taken apart. */
  private record TimeReader(String typed, LocalDateTime now, boolean coming, Rest rest) {
    Optional<SpokenTime> read() {
      if (FRENCH_HOUR.matcher(rest.text()).matches()) {
        return Optional.empty();
      }
      boolean tonight = rest.text().contains("tonight");
      Optional<LocalDate> date = day();
      Optional<Integer> near = meant(NEAR);
      Optional<LocalTime> clock = rest.take(CLOCK).map(this::hour);
      Optional<LocalTime> part = meant(PARTS).map(hour -> LocalTime.of(hour, 0));
      Optional<LocalTime> time =
          clock.or(() -> part).or(() -> tonight ? Optional.of(TONIGHT) : Optional.empty());
      Optional<DayOfWeek> weekday = meant(WEEKDAYS).map(DayOfWeek::of);
      rest.takeAll(IDLE);
      boolean dayTold = date.isPresent() || near.isPresent() || weekday.isPresent();
      if (!rest.text().isEmpty() || !(dayTold || time.isPresent())) {
        return Optional.empty();
      }
      boolean hasHour = time.isPresent();
      LocalTime hour = time.orElse(LocalTime.NOON);
      LocalDate day =
          date.map(told -> aYear(told, hour))
              .or(() -> near.map(told -> now.toLocalDate().plusDays(told)))
              .or(() -> weekday.map(told -> ofWeek(told, hour, hasHour)))
              .orElseGet(() -> anyDay(hour));
      return Optional.of(new SpokenTime(day.atTime(hour), hasHour));
    }

    /** What the first words of a table mean that the text holds. */
    private Optional<Integer> meant(List<Wording> table) {
      return rest.meaning(table).map(Integer::valueOf);
    }

    private Optional<LocalDate> day() {
      return DATES.stream()
          .flatMap(way -> rest.take(way).stream())
          .findFirst()
          .map(date -> date(typed, date.group("year"), date.group("month"), date.group("day")))
          .or(
              () ->
                  rest.take(SLASHES)
                      .map(date -> eitherOrder(date.group(1), date.group(2), date.group(3))));
    }

    private LocalDate eitherOrder(String one, String other, @Nullable String year) {
      int a = Integer.parseInt(one);
      int b = Integer.parseInt(other);
      if (a <= 12 && b <= 12 && a != b && a > 0 && b > 0) {
        throw new MistypedException(
            typed,
            "a day that can be meant in one way",
            "this could be " + said(a, b) + " or " + said(b, a) + "; write the month as a word");
      }
      return a > 12 ? date(typed, year, other, one) : date(typed, year, one, other);
    }

    private static String said(int day, int month) {
      return day + " " + Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    private LocalTime hour(Matcher clock) {
      int hour = Integer.parseInt(clock.group(1));
      int minute = clock.group(2) == null ? 0 : Integer.parseInt(clock.group(2));
      String half = clock.group(clock.group(2) == null ? 4 : 3);
      boolean twelve = half != null && (half.startsWith("a") || half.startsWith("p"));
      if (hour > 23 || minute > 59 || (twelve && (hour < 1 || hour > 12))) {
        throw new MistypedException(typed, "a time of day, 0:00 to 23:59", "check hour and minute");
      }
      return LocalTime.of(twelve ? hour % 12 + (half.startsWith("p") ? 12 : 0) : hour, minute);
    }

    private LocalDate aYear(LocalDate told, LocalTime hour) {
      if (told.getYear() != 0) {
        return told;
      }
      LocalDate thisYear = told.withYear(now.getYear());
      boolean past = thisYear.atTime(hour).isBefore(now);
      LocalDate day =
          coming && past
              ? told.withYear(now.getYear() + 1)
              : !coming && !past ? told.withYear(now.getYear() - 1) : thisYear;
      if (day.getDayOfMonth() != told.getDayOfMonth()) {
        throw new MistypedException(
            typed, "a day of the calendar", day.getYear() + " has no 29 February; write the year");
      }
      return day;
    }

    private LocalDate ofWeek(DayOfWeek day, LocalTime hour, boolean hasHour) {
      LocalDate today = now.toLocalDate();
      if (!coming) {
        LocalDate last = today.with(TemporalAdjusters.previousOrSame(day));
        return last.atTime(hour).isAfter(now) ? last.minusWeeks(1) : last;
      }
      LocalDate next = today.with(TemporalAdjusters.nextOrSame(day));
      return hasHour && next.atTime(hour).isAfter(now)
          ? next
          : today.with(TemporalAdjusters.next(day));
    }

    private LocalDate anyDay(LocalTime hour) {
      LocalDate today = now.toLocalDate();
      boolean later = today.atTime(hour).isAfter(now);
      return coming ? (later ? today : today.plusDays(1)) : (later ? today.minusDays(1) : today);
    }
  }
}
