package starchfilm.files.roomlog;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
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
record LogDate(
    int first, int second, int third, DateOrder order, LocalTime time, boolean withOffset) {
  /** Which number of a date is what. */
  enum DateOrder {
    /** 2026-04-02. */
    YEAR_FIRST,
    /** 2.4.2026. */
    DAY_FIRST,
    /** 4/2/2026. */
    MONTH_FIRST,
    /** 4/2/2026 or 2/4/2026: the text does not say. */
    OPEN
  }

  private static final Pattern WRITTEN =
      Pattern.compile(
          "(\\d{4}|\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4}|\\d{1,2})"
              + "[T ,]\\s*(\\d{1,2}:\\d{2}(?::\\d{2})?)(?:[.,]\\d{1,9})?\\s*([AaPp][Mm])?\\s*"
              + "(Z|[+-]\\d{2}:?\\d{2})?");
  private static final DateTimeFormatter TIME =
      new DateTimeFormatterBuilder()
          .parseCaseInsensitive()
          .appendPattern("[h:mm[:ss]a][H:mm[:ss]]")
          .toFormatter(Locale.ENGLISH);

  static Optional<LogDate> parse(String written) {
    Matcher date = WRITTEN.matcher(LogMonths.numbered(written));
    if (!date.matches()) {
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
    DateOrder order =
        yearFirst
            ? DateOrder.YEAR_FIRST
            : date.group(2).equals(".") || first > 12
                ? DateOrder.DAY_FIRST
                : second > 12 ? DateOrder.MONTH_FIRST : DateOrder.OPEN;
    try {
      String half = date.group(6) == null ? "" : date.group(6);
      LocalTime time = LocalTime.parse(date.group(5) + half, TIME);
      return Optional.of(new LogDate(first, second, third, order, time, date.group(7) != null));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** True where day and month may be exchanged and that makes another day. */
  boolean isOpen() {
    return order == DateOrder.OPEN && first != second;
  }

  /**
   * The moment.
   *
   * @param decided which number is what where the text itself does not say
   * @return the moment, or empty where there is no such day
   */
  Optional<LocalDateTime> moment(DateOrder decided) {
    DateOrder taken = order == DateOrder.OPEN ? decided : order;
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
