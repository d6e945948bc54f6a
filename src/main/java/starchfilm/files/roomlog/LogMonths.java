package starchfilm.files.roomlog;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.MonthNames;

/** Dates with the month as a word, in English, German, French, Spanish, Italian or Portuguese. */
final class LogMonths {
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
  private static final Pattern WEEKDAY = Pattern.compile("^\\p{L}{2,10}\\.?,?\\s+(?=\\d|\\p{L})");
  private static final Pattern DAY_FIRST =
      Pattern.compile(
          "(\\d{1,2})(?:st|nd|rd|th|er|\\.|\u00BA)?[\\s/-]*(?:de |of )?(\\p{L}{3,10})\\.?"
              + "[\\s,/-]*(?:de |del )?(\\d{4}|\\d{2})(\\D.*)");
  private static final Pattern MONTH_FIRST =
      Pattern.compile("(\\p{L}{3,10})\\.?\\s*(\\d{1,2})(?:st|nd|rd|th)?,?\\s+(\\d{4})(\\D.*)");

  private LogMonths() {}

  /** The same date with its month as a number, day first; the text itself without such a word. */
  static String numbered(String text) {
    if (text.chars().noneMatch(Character::isLetter)) {
      return text;
    }
    String plain = plain(text);
    Matcher dayFirst = DAY_FIRST.matcher(plain);
    Matcher monthFirst = MONTH_FIRST.matcher(plain);
    if (!dayFirst.matches() && !monthFirst.matches()) {
      String rest = WEEKDAY.matcher(plain).replaceFirst("");
      dayFirst = DAY_FIRST.matcher(rest);
      monthFirst = MONTH_FIRST.matcher(rest);
    }
    if (dayFirst.matches()) {
      return numbered(text, dayFirst, 1, 2);
    }
    return monthFirst.matches() ? numbered(text, monthFirst, 2, 1) : text;
  }

  private static String numbered(String text, Matcher date, int day, int month) {
    int number = MonthNames.number(date.group(month));
    return number == 0
        ? text
        : date.group(day) + "." + number + "." + date.group(3) + date.group(4);
  }

  /** Small letters without accents. */
  static String plain(String text) {
    return ACCENTS
        .matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
        .replaceAll("")
        .toLowerCase(Locale.ROOT);
  }
}
