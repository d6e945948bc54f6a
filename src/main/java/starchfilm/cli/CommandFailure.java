package starchfilm.cli;

/** A command cannot do what was asked; the message is the one sentence the reader gets. */
final class CommandFailure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final int exitCode;

  private CommandFailure(int exitCode, String sentence) {
    super(sentence);
    this.exitCode = exitCode;
  }

  /** What was typed, or a file that was named, is wrong or cannot be written. */
  static CommandFailure wrongInput(String sentence) {
    return new CommandFailure(ExitCodes.WRONG_INPUT, sentence);
  }

  /** The input is right, but there is no result. */
  static CommandFailure notComputed(String sentence) {
    return new CommandFailure(ExitCodes.NOT_COMPUTED, sentence);
  }

  /** The exit code the program ends with. */
  int exitCode() {
    return exitCode;
  }
}
