package starchfilm.files.roomlog;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import starchfilm.files.amount.MonthNames;
import starchfilm.files.amount.Wording;
import starchfilm.files.json.PackedPatterns;

/** Dates with the month as a word, in English, German, French, Spanish, Italian or Portuguese. */
final class LogMonths {
  private static final PackedPatterns TYPED =
      PackedPatterns.of(LogMonths.class, "dates.patterns", Map.of("month", MonthNames.PATTERN));
  private static final List<Pattern> WAYS =
      Stream.of("day and month", "month and day").map(TYPED::get).toList();

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
