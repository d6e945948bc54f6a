package starchfilm.files.findings;

import java.nio.file.Path;
import java.util.regex.Pattern;

/**
 * Text of a file as it may stand in a sentence: in one line, of bearable length, and without the
 * characters that command a terminal or turn the direction of reading.
 */
public final class PlainLine {
  /**
   * The characters that do something to a terminal or a line instead of standing in it: control
   * characters, line breaks among them, and marks of direction.
   */
  public static final String COMMANDS =
      "[\\p{Cc}\\x{061C}\\x{200E}\\x{200F}\\x{2028}-\\x{202E}\\x{2066}-\\x{2069}]";

  private static final Pattern COMMAND = Pattern.compile(COMMANDS);
  private static final String CUT = "...";

  private PlainLine() {}

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
   * @return of the same length, with a blank for each of {@link #COMMANDS}
   */
  public static String of(String text) {
    return COMMAND.matcher(text).replaceAll(" ");
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
