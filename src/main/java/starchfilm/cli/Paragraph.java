package starchfilm.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Breaks a sentence into lines for the terminal. */
final class Paragraph {
  private static final int USUAL = 80;
  private static final int NARROWEST = 40;
  private static final int WIDEST = 92;

  /** What the terminal says, at most what reads well; else what every terminal has. */
  static final int WIDTH = width(Optional.ofNullable(System.getenv("COLUMNS")));

  private Paragraph() {}

  /** The width to set text in, by what the terminal says of itself. */
  static int width(Optional<String> columns) {
    return columns
        .filter(typed -> typed.matches("[0-9]{1,4}"))
        .map(Integer::parseInt)
        .map(told -> Math.max(NARROWEST, Math.min(WIDEST, told)))
        .orElse(USUAL);
  }

  /**
   * The lines of a sentence.
   *
   * @return lines of at most {@link #WIDTH} characters, but for a longer word
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
