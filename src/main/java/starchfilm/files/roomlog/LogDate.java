package starchfilm.files.roomlog;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Date and time in a room log, before it is decided which number is the day.
 *
 * @param order which is which, as far as the text itself says
 * @param withOffset true where the text carries an offset from UTC
 */
record LogDate(int first, int second, int third, Order order, LocalTime time, boolean withOffset) {
  /** Which number of a date is what. */
  enum Order {
    /** 2026-04-02. */
    YEAR_FIRST,
    /** 2.4.2026. */
    DAY_FIRST,
    /** 4/2/2026. */
    MONTH_FIRST,
    /** 4/2/2026 or 2/4/2026: the text does not say. */
    OPEN
  }

  private static final String TIME =
      "[T ,]\\s*(\\d{1,2}):(\\d{2})(?::(\\d{2})(?:[.,]\\d{1,9})?)?\\s*([AaPp][Mm])?\\s*"
          + "(Z|[+-]\\d{2}:?\\d{2})?";
  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})" + TIME);
  private static final Pattern YEAR_LAST =
      Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4}|\\d{2})" + TIME);

  static Optional<LogDate> parse(String written) {
    String text = LogMonths.numbered(written);
    Matcher matcher = YEAR_FIRST.matcher(text);
    boolean yearFirst = matcher.matches();
    if (!yearFirst) {
      matcher = YEAR_LAST.matcher(text);
      if (!matcher.matches()) {
        return Optional.empty();
      }
    }
    Optional<LocalTime> time = time(matcher);
    if (time.isEmpty()) {
      return Optional.empty();
    }
    int first = Integer.parseInt(matcher.group(1));
    int second = Integer.parseInt(matcher.group(3));
    int third = Integer.parseInt(matcher.group(4));
    if (!yearFirst && matcher.group(4).length() == 2) {
      third += 2000;
    }
    Order order =
        yearFirst
            ? Order.YEAR_FIRST
            : matcher.group(2).equals(".") || first > 12
                ? Order.DAY_FIRST
                : second > 12 ? Order.MONTH_FIRST : Order.OPEN;
    return Optional.of(
        new LogDate(first, second, third, order, time.get(), matcher.group(9) != null));
  }

  private static Optional<LocalTime> time(Matcher matcher) {
    int hour = Integer.parseInt(matcher.group(5));
    int minute = Integer.parseInt(matcher.group(6));
    int second = matcher.group(7) == null ? 0 : Integer.parseInt(matcher.group(7));
    if (matcher.group(8) != null) {
      if (hour < 1 || hour > 12) {
        return Optional.empty();
      }
      boolean afternoon = matcher.group(8).toUpperCase(Locale.ROOT).equals("PM");
      hour = hour % 12 + (afternoon ? 12 : 0);
    }
    try {
      return Optional.of(LocalTime.of(hour, minute, second));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** True where day and month may be exchanged and that makes another day. */
  boolean isOpen() {
    return order == Order.OPEN && first != second;
  }

  /**
   * The moment.
   *
   * @param decided which number is what where the text itself does not say
   * @return the moment, or empty where there is no such day
   */
  Optional<LocalDateTime> moment(Order decided) {
    Order taken = order == Order.OPEN ? decided : order;
    try {
      LocalDate date =
          switch (taken) {
            case YEAR_FIRST -> LocalDate.of(first, second, third);
            case DAY_FIRST, OPEN -> LocalDate.of(third, second, first);
            case MONTH_FIRST -> LocalDate.of(third, first, second);
          };
      return Optional.of(date.atTime(time));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
