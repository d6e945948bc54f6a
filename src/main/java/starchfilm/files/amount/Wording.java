package starchfilm.files.amount;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Words and what they stand for.
 *
 * @param words the words, as a regular expression
 * @param meaning what they stand for
 */
record Wording(Pattern words, String meaning) {
  /**
   * Reads a table of words.
   *
   * @param around what stands around the words of every line, with %s for them
   * @param lines a line per meaning: the meaning, a colon, and the words with | between
   */
  static List<Wording> table(String around, String lines) {
    return lines
        .lines()
        .map(line -> line.split(": ", 2))
        .map(parts -> new Wording(Pattern.compile(String.format(around, parts[1])), parts[0]))
        .toList();
  }
}
