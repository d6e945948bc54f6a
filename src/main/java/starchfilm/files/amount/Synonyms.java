package starchfilm.files.amount;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import starchfilm.files.json.PackedText;

/** Other words for what the program has a name for. */
public final class Synonyms {
  private Synonyms() {}

  /**
   * Reads a table of words.
   *
   * @param lines a line per name: the name, a colon, and the other words with blanks between; one
   *     that begins with # is no name
   * @return the name by each of the other words, in the order of the table
   * @throws IllegalArgumentException where a word stands twice
   */
  public static Map<String, String> of(String lines) {
    Map<String, String> names = new LinkedHashMap<>();
    for (String line : lines.lines().filter(each -> !each.startsWith("#")).toList()) {
      String[] parts = line.split(": ", -1);
      for (String other : parts[1].split(" ", -1)) {
        String before = names.put(other, parts[0]);
        if (before != null) {
          throw new IllegalArgumentException(
              other + " stands twice, for " + before + " and for " + parts[0]);
        }
      }
    }
    return Collections.unmodifiableMap(names);
  }

  /** The synonyms of a table that is packed beside this class. */
  static Map<String, String> packed(String table) {
    return of(PackedText.of(Synonyms.class, table));
  }
}
