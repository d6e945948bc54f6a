package starchfilm.files.notebook;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

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

  /**
   * The choice a word stands for.
   *
   * @param <E> the kind of choice
   * @param all the choices
   * @param word the word
   * @return the choice, if there is one
   */
  public static <E extends Enum<E>> Optional<E> find(E[] all, String word) {
    return Arrays.stream(all).filter(choice -> of(choice).equals(word)).findFirst();
  }
}
