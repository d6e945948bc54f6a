package starchfilm.files.findings;

import java.nio.file.Path;
import java.util.OptionalInt;

/**
 * Something in a file that looks odd but does not stand in the way.
 *
 * @param file the file's name as the user gave it
 * @param line line, counted from 1; empty where the notice is of the whole file
 * @param field the field's path; empty for the whole file
 * @param text what is odd and what was done about it
 */
public record Notice(String file, OptionalInt line, String field, String text) {
  private static final int LONGEST = 500;

  /** Makes one line of it, and shortens it. */
  public Notice {
    text = PlainLine.of(text, LONGEST);
  }

  /**
   * A notice of a whole file.
   *
   * @param file the file
   * @param text as above
   */
  public static Notice of(Path file, String text) {
    return new Notice(PlainLine.of(file), OptionalInt.empty(), "", text);
  }

  /**
   * The notice as one sentence.
   *
   * @return such as {@code shed.csv, line 40: no reading for 9.5 h; read as a straight line}
   */
  public String sentence() {
    StringBuilder sentence = new StringBuilder(PlainLine.of(file));
    line.ifPresent(number -> sentence.append(", line ").append(number));
    sentence.append(": ");
    if (!field.isEmpty()) {
      sentence.append(PlainLine.of(field, LONGEST)).append(": ");
    }
    return sentence.append(text).toString();
  }
}
