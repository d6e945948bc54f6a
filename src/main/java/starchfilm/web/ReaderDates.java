package starchfilm.web;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;

/**
 * Dates as the reader's browser is set to show them.
 *
 * @param locale the reader's language and region
 */
record ReaderDates(Locale locale) {
  /**
   * A date with its time of day.
   *
   * @param moment by the clock on the wall
   * @return such as {@code 11.04.2026, 10:00} or {@code Apr 11, 2026, 10:00 AM}
   */
  String of(LocalDateTime moment) {
    return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
        .withLocale(locale)
        .format(moment);
  }
}
