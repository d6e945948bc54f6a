package starchfilm.files.roomlog;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.files.amount.MonthNames;
import starchfilm.files.amount.Wording;

/** Dates with the month as a word, in English, German, French, Spanish, Italian or Portuguese. */
final class LogMonths {
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
    String plain = Wording.plain(text);
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
}
