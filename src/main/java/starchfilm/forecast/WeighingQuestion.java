package starchfilm.forecast;

/**
 * Something odd about the weighings of a plate.
 *
 * @param words what is odd and what to answer, in sentences
 * @param confirmAt the time, such as {@code 21.5h}, of the weighing that counts once its maker
 *     confirms it; empty where nothing can be confirmed
 */
public record WeighingQuestion(String words, String confirmAt) {
  /** One that no confirmation answers. */
  public WeighingQuestion(String words) {
    this(words, "");
  }

  /** With the command that answers it, for those who use commands. */
  public String withCommand() {
    return confirmAt.isEmpty()
        ? words
        : words.substring(0, words.length() - 1) + " (note FILE --confirm " + confirmAt + ").";
  }
}
