package starchfilm.files.amount;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import starchfilm.files.json.PackedText;

/**
 * Words as people write them and what they stand for.
 *
 * @param words the words, as a regular expression
 * @param meaning what they stand for
 */
public record Wording(Pattern words, String meaning) {
  private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

  /**
   * Reads those of a kind from a packed table, which has a line per meaning: its kind, a blank, the
   * meaning, a colon, a blank and the words.
   *
   * @param beside a class of the package the table belongs to
   * @param table its name
   * @param kind which of its lines
   * @param around what stands around the words of each line, with %s for them
   * @return in the order of the table
   */
  public static List<Wording> packed(Class<?> beside, String table, String kind, String around) {
    return PackedText.of(beside, table)
        .lines()
        .filter(line -> line.startsWith(kind + " "))
        .map(line -> line.substring(kind.length() + 1).split(": ", 2))
        .map(parts -> new Wording(Pattern.compile(String.format(around, parts[1])), parts[0]))
        .toList();
  }

  /** A text in small letters without accents, \u00DF as ss, as the tables have their words. */
  public static String plain(String text) {
    String small = text.toLowerCase(Locale.ROOT).replace("\u00DF", "ss");
    return ACCENTS.matcher(Normalizer.normalize(small, Normalizer.Form.NFD)).replaceAll("");
  }

  /** The packed wordings of an amount or a time. */
  static List<Wording> of(String kind, String around) {
    return packed(Wording.class, "wordings.words", kind, around);
  }
}
