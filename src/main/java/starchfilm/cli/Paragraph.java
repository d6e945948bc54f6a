package starchfilm.cli;

import java.util.ArrayList;
import java.util.List;

/** Breaks a sentence into lines for the terminal. */
final class Paragraph {
  private static final int WIDTH = 92;

  private Paragraph() {}

  /**
   * The lines of a sentence.
   *
   * @return lines of at most {@value #WIDTH} characters, but for a longer word
   */
  static List<String> of(String sentence, String first, String others) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : sentence.split(" ", -1)) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(others);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
