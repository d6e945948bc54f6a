package starchfilm.files.amount;

import java.text.Normalizer;
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
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A day and an hour as people say them: {@code sat noon}, {@code 28 Nov 6pm}, {@code morgen Abend},
 * {@code 28.11. 18 Uhr}. What no year or day tells is the next such moment, or the last one.
 *
 * @param time the moment
 * @param hasHour whether an hour was said; without one it is noon
 */
record SpokenTime(LocalDateTime time, boolean hasHour) {
  private static final String YEAR = "(?:[,.]?\\s*(\\d{4}|(?<=[./-])\\d{2})(?!\\d|:))?";
  private static final Pattern ISO = Pattern.compile("\\b(\\d{4})-(\\d{1,2})-(\\d{1,2})\\b");
  private static final Pattern DOTS =
      Pattern.compile(
          "\\b(\\d{1,2})\\.\\s*(\\d{1,2})\\.(?:\\s*(\\d{4}|\\d{2}(?![\\d:]|\\s*(?:uhr|h\\b|am|pm))))?");
  private static final Pattern SLASHES =
      Pattern.compile("\\b(\\d{1,2})(?:/|-(?=\\d+-))(\\d{1,2})(?:[/-](\\d{4}|\\d{2}))?\\b");
  private static final Pattern DAY_MONTH =
      Pattern.compile(
          "\\b(\\d{1,2})(?:st|nd|rd|th|\\.)?\\s*(?:of |de )?" + MonthNames.PATTERN + "\\.?" + YEAR);
  private static final Pattern MONTH_DAY =
      Pattern.compile(
          "\\b" + MonthNames.PATTERN + "\\.?\\s+(\\d{1,2})(?:st|nd|rd|th)?(?!\\d|:)" + YEAR);
  private static final Pattern CLOCK =
      Pattern.compile(
          "\\b(\\d{1,2})(?:[:.h](\\d{2}))(?::\\d{2}(?:\\.\\d+)?)?\\s*(am|pm|a\\.m\\.|p\\.m\\.|uhr)?"
              + "|\\b(\\d{1,2})\\s*(am|pm|a\\.m\\.|p\\.m\\.|uhr|h|o'?clock)(?![a-z])");

  /** Alone it might as well be a length of time. */
  private static final Pattern FRENCH_HOUR = Pattern.compile("\\d+\\s*h(?:\\d+)?");

  private static final Pattern IDLE =
      Pattern.compile(
          "\\b(?:at|on|by|next|coming|this|last|the|in|um|am|den|kommenden|le|la|el|les|a las|a"
              + "|de|del|por|para)\\b|[,;.]");

  /** Times of the day in words. */
  private enum Part {
    NOON(12, "noon|midday|mittags?|midi|mediodia"),
    MORNING(9, "morning|fruh|morgens|vormittags?|matin"),
    AFTERNOON(15, "afternoon|nachmittags?|apres-?midi|tarde"),
    EVENING(18, "evening|abends?|soir"),
    NIGHT(21, "night|nachts?|nuit|noche");

    private final int hour;
    private final Pattern words;

    Part(int hour, String words) {
      this.hour = hour;
      this.words = Pattern.compile("\\b(?:" + words + ")\\b");
    }
  }

  /** Days by their distance from today. */
  private enum Near {
    TODAY(0, "today|tonight|heute|aujourd'?hui|hoy"),
    TOMORROW(1, "tomorrow|morgen|demain|manana"),
    OVERMORROW(2, "day after tomorrow|ubermorgen|apres-?demain|pasado manana"),
    YESTERDAY(-1, "yesterday|gestern|hier|ayer");

    private final int days;
    private final Pattern words;

    Near(int days, String words) {
      this.days = days;
      this.words = Pattern.compile("\\b(?:" + words + ")\\b");
    }
  }

  private static final List<Pattern> WEEKDAYS =
      List.of(
          weekday("mon(?:day)?|montag|lundi|lunes"),
          weekday("tues?(?:day)?|dienstag|mardi|martes"),
          weekday("wed(?:nesday)?|mittwoch|mercredi|miercoles"),
          weekday("thu(?:rs(?:day)?)?|donnerstag|jeudi|jueves"),
          weekday("fri(?:day)?|freitag|vendredi|viernes"),
          weekday("sat(?:urday)?|samstag|sonnabend|samedi|sabado"),
          weekday("sun(?:day)?|sonntag|dimanche|domingo"));

  private static Pattern weekday(String words) {
    return Pattern.compile("\\b(?:" + words + ")\\b");
  }

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
    return new Reader(typed, now, coming).read();
  }

  /** A text that is taken apart. */
  private static final class Reader {
    private final String typed;
    private final LocalDateTime now;
    private final boolean coming;
    private String text;

    Reader(String typed, LocalDateTime now, boolean coming) {
      this.typed = typed;
      this.now = now;
      this.coming = coming;
      this.text =
          Normalizer.normalize(typed.toLowerCase(Locale.ROOT), Normalizer.Form.NFD)
              .replaceAll("\\p{M}", "")
              .replaceFirst("(?<=\\d)t(?=\\d)", " ")
              .replaceFirst("(:\\d{2}(?:\\.\\d+)?)(?:z|[+-]\\d{2}:?\\d{2})\\s*$", "$1")
              .strip();
    }

    Optional<SpokenTime> read() {
      if (FRENCH_HOUR.matcher(text).matches()) {
        return Optional.empty();
      }
      boolean tonight = text.contains("tonight");
      Optional<LocalDate> date = date();
      Optional<Near> near = near();
      Optional<LocalTime> time = clock();
      for (Part part : Part.values()) {
        if (take(part.words) != null && time.isEmpty()) {
          time = Optional.of(LocalTime.of(part.hour, 0));
        }
      }
      if (tonight && time.isEmpty()) {
        time = Optional.of(LocalTime.of(Part.NIGHT.hour, 0));
      }
      Optional<DayOfWeek> weekday = weekday();
      text = IDLE.matcher(text).replaceAll(" ");
      boolean dayTold = date.isPresent() || near.isPresent() || weekday.isPresent();
      if (!text.isBlank() || !(dayTold || time.isPresent())) {
        return Optional.empty();
      }
      boolean hasHour = time.isPresent();
      LocalTime hour = time.orElse(LocalTime.NOON);
      LocalDate day =
          date.map(told -> aYear(told, hour))
              .or(() -> near.map(told -> now.toLocalDate().plusDays(told.days)))
              .or(() -> weekday.map(told -> ofWeek(told, hour, hasHour)))
              .orElseGet(() -> anyDay(hour));
      return Optional.of(new SpokenTime(day.atTime(hour), time.isPresent()));
    }

    private @Nullable Matcher take(Pattern part) {
      Matcher matcher = part.matcher(text);
      if (!matcher.find()) {
        return null;
      }
      text = text.substring(0, matcher.start()) + " " + text.substring(matcher.end());
      return matcher;
    }

    private Optional<Near> near() {
      for (Near day : List.of(Near.OVERMORROW, Near.TODAY, Near.TOMORROW, Near.YESTERDAY)) {
        if (take(day.words) != null) {
          return Optional.of(day);
        }
      }
      return Optional.empty();
    }

    private Optional<DayOfWeek> weekday() {
      for (int i = 0; i < WEEKDAYS.size(); i++) {
        if (take(WEEKDAYS.get(i)) != null) {
          return Optional.of(DayOfWeek.of(i + 1));
        }
      }
      return Optional.empty();
    }

    /** A year that is not given is 0 here. */
    private Optional<LocalDate> date() {
      Matcher iso = take(ISO);
      if (iso != null) {
        return Optional.of(date(iso.group(1), iso.group(2), iso.group(3)));
      }
      Matcher dots = take(DOTS);
      if (dots != null) {
        return Optional.of(date(dots.group(3), dots.group(2), dots.group(1)));
      }
      Matcher dayFirst = take(DAY_MONTH);
      if (dayFirst != null) {
        return Optional.of(
            date(
                dayFirst.group(3),
                String.valueOf(MonthNames.number(dayFirst.group(2))),
                dayFirst.group(1)));
      }
      Matcher monthFirst = take(MONTH_DAY);
      if (monthFirst != null) {
        return Optional.of(
            date(
                monthFirst.group(3),
                String.valueOf(MonthNames.number(monthFirst.group(1))),
                monthFirst.group(2)));
      }
      Matcher slashes = take(SLASHES);
      return slashes == null
          ? Optional.empty()
          : Optional.of(eitherOrder(slashes.group(1), slashes.group(2), slashes.group(3)));
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
      return a > 12 ? date(year, other, one) : date(year, one, other);
    }

    private static String said(int day, int month) {
      return day + " " + Month.of(month).getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    private LocalDate date(@Nullable String year, String month, String day) {
      try {
        int number = year == null ? 0 : Integer.parseInt(year);
        return LocalDate.of(
            number > 0 && number < 100 ? 2000 + number : number,
            Integer.parseInt(month),
            Integer.parseInt(day));
      } catch (DateTimeException e) {
        throw new MistypedException(typed, "a day of the calendar", "check day and month");
      }
    }

    private Optional<LocalTime> clock() {
      Matcher clock = take(CLOCK);
      if (clock == null) {
        return Optional.empty();
      }
      boolean whole = clock.group(1) == null;
      int hour = Integer.parseInt(clock.group(whole ? 4 : 1));
      int minute = whole ? 0 : Integer.parseInt(clock.group(2));
      String half = clock.group(whole ? 5 : 3);
      boolean twelve = half != null && (half.startsWith("a") || half.startsWith("p"));
      if (hour > 23 || minute > 59 || (twelve && (hour < 1 || hour > 12))) {
        throw new MistypedException(typed, "a time of day, 0:00 to 23:59", "check hour and minute");
      }
      return Optional.of(
          LocalTime.of(twelve ? hour % 12 + (half.startsWith("p") ? 12 : 0) : hour, minute));
    }

    private LocalDate aYear(LocalDate told, LocalTime hour) {
      if (told.getYear() != 0) {
        return told;
      }
      LocalDate thisYear = told.withYear(now.getYear());
      boolean past = thisYear.atTime(hour).isBefore(now);
      return coming && past
          ? told.withYear(now.getYear() + 1)
          : !coming && !past ? told.withYear(now.getYear() - 1) : thisYear;
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
