package starchfilm.files.amount;

import java.util.Comparator;
import java.util.Map;

/** Months by the beginnings of names: English, German, French, Spanish, Italian, Portuguese. */
public final class MonthNames {
  private static final Map<String, String> NUMBERS = Synonyms.packed("months.words");

  /** The group {@code month} of a regular expression: a name in small letters without accents. */
  public static final String PATTERN =
      "(?<month>(?:" + String.join("|", NUMBERS.keySet()) + ")[a-z]*)";

  private MonthNames() {}

  /**
   * The month a word means; the longest beginning counts, so that juin is not juillet.
   *
   * @param word in small letters without accents
   * @return its number from 1; 0 where it is no month
   */
  public static int number(String word) {
    return NUMBERS.keySet().stream()
        .filter(word::startsWith)
        .max(Comparator.comparingInt(String::length))
        .map(beginning -> Integer.parseInt(NUMBERS.get(beginning)))
        .orElse(0);
  }
}
