package starchfilm.files.roomlog;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

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

  /** Beginnings of names; the longest that fits counts, so that juin is not juillet. */
  private static final Map<String, Integer> MONTHS =
      Map.ofEntries(
          Map.entry("jan", 1),
          Map.entry("ene", 1),
          Map.entry("gen", 1),
          Map.entry("feb", 2),
          Map.entry("fev", 2),
          Map.entry("mar", 3),
          Map.entry("mrz", 3),
          Map.entry("apr", 4),
          Map.entry("abr", 4),
          Map.entry("avr", 4),
          Map.entry("may", 5),
          Map.entry("mai", 5),
          Map.entry("mag", 5),
          Map.entry("jun", 6),
          Map.entry("jui", 6),
          Map.entry("giu", 6),
          Map.entry("jul", 7),
          Map.entry("juil", 7),
          Map.entry("lug", 7),
          Map.entry("aug", 8),
          Map.entry("aou", 8),
          Map.entry("ago", 8),
          Map.entry("sep", 9),
          Map.entry("set", 9),
          Map.entry("oct", 10),
          Map.entry("okt", 10),
          Map.entry("ott", 10),
          Map.entry("out", 10),
          Map.entry("nov", 11),
          Map.entry("dec", 12),
          Map.entry("dez", 12),
          Map.entry("dic", 12));

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
    if (dayFirst.matches() && month(dayFirst.group(2)) > 0) {
      return dayFirst.group(1)
          + "."
          + month(dayFirst.group(2))
          + "."
          + dayFirst.group(3)
          + dayFirst.group(4);
    }
    return monthFirst.matches() && month(monthFirst.group(1)) > 0
        ? monthFirst.group(2)
            + "."
            + month(monthFirst.group(1))
            + "."
            + monthFirst.group(3)
            + monthFirst.group(4)
        : text;
  }

  /** Small letters without accents. */
  static String plain(String text) {
    return ACCENTS
        .matcher(Normalizer.normalize(text, Normalizer.Form.NFD))
        .replaceAll("")
        .toLowerCase(Locale.ROOT);
  }

  private static int month(String name) {
    Integer long4 = name.length() >= 4 ? MONTHS.get(name.substring(0, 4)) : null;
    return long4 != null ? long4 : MONTHS.getOrDefault(name.substring(0, 3), 0);
  }
}
