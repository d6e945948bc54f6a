package starchfilm.files.notebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The words of a trial file for the choices of the program: {@code still wet} for STILL_WET. */
public final class FileWord {
  private FileWord() {}

  /**
   * The word for a choice.
   *
   * @param choice the choice
   * @return its name in small letters, with blanks
   */
  public static String of(Enum<?> choice) {
    return choice.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * The words for all choices.
   *
   * @param all the choices
   * @return their words, in their order
   */
  public static List<String> all(Enum<?>[] all) {
    return Arrays.stream(all).map(FileWord::of).toList();
  }
}
