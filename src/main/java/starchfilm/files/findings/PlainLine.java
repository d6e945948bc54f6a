package starchfilm.files.findings;

import java.nio.file.Path;

/**
 * Text of a file as it may stand in a sentence: in one line, of bearable length, and without the
 * characters that command a terminal or turn the direction of reading.
 */
public final class PlainLine {
  private static final String CUT = "...";

  private PlainLine() {}

  /**
   * Whether a character does something to a terminal or a line instead of standing in it.
   *
   * @param c the character
   * @return true for control characters, line breaks among them, and marks of direction
   */
  public static boolean commands(char c) {
    return Character.isISOControl(c)
        || c == '\u061C'
        || c == '\u200E'
        || c == '\u200F'
        || (c >= '\u2028' && c <= '\u202E')
        || (c >= '\u2066' && c <= '\u2069');
  }

  /**
   * A file as it is named in a sentence.
   *
   * @param file the file
   * @return its path, the same on every system
   */
  public static String of(Path file) {
    return file.toString().replace('\\', '/');
  }

  /**
   * A text in one line.
   *
   * @param text the text
   * @return of the same length, with a blank for each character that {@link #commands}
   */
  public static String of(String text) {
    StringBuilder line = new StringBuilder(text);
    for (int i = 0; i < line.length(); i++) {
      if (commands(line.charAt(i))) {
        line.setCharAt(i, ' ');
      }
    }
    return line.toString();
  }

  /**
   * The beginning of a text in one line.
   *
   * @param text the text
   * @param most the most characters that are shown
   * @return the line; where something was cut off it ends in {@value #CUT}
   */
  public static String of(String text, int most) {
    if (text.length() <= most) {
      return of(text);
    }
    int cut = Character.isHighSurrogate(text.charAt(most - 1)) ? most - 1 : most;
    return of(text.substring(0, cut)) + CUT;
  }
}
