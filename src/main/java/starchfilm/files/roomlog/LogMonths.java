package starchfilm.files.roomlog;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.files.amount.MonthNames;

/** Dates with the month as a word, in English, German, French, Spanish, Italian or Portuguese. */
final class LogMonths {
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

  /** The ways of writing a day, perhaps behind the day of the week, and in front of an hour. */
  private static final List<Pattern> WAYS =
      Stream.of(
              "(?<day>\\d{1,2})(?:st|nd|rd|th|er|\\.|\u00BA)?[\\s/-]*(?:de |of )?"
                  + MonthNames.PATTERN
                  + "\\.?[\\s,/-]*(?:de |del )?(?<year>\\d{4}|\\d{2})",
              MonthNames.PATTERN + "\\.?\\s*(?<day>\\d{1,2})(?:st|nd|rd|th)?,?\\s+(?<year>\\d{4})")
          .map(date -> Pattern.compile("(?:\\p{L}{2,10}\\.?,?\\s+)?" + date + "(?<hour>\\D.*)"))
          .toList();

  private LogMonths() {}

  /** The same date with its month as a number, day first; the text itself without such a word. */
  static String numbered(String text) {
    if (text.chars().noneMatch(Character::isLetter)) {
      return text;
    }
    String plain = plain(text);
    return WAYS.stream()
        .map(way -> way.matcher(plain))
        .filter(Matcher::matches)
        .findFirst()
        .map(LogMonths::dayFirst)
        .orElse(text);
  }

  private static String dayFirst(Matcher date) {
    int month = MonthNames.number(date.group("month"));
    return date.group("day") + "." + month + "." + date.group("year") + date.group("hour");
  }

  /** Small letters without accents. */
  static String plain(String text) {
    return ACCENTS
        .matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
        .replaceAll("")
        .toLowerCase(Locale.ROOT);
  }
}
