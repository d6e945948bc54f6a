package starchfilm.cli;

/** What the program ends with. */
final class ExitCodes {
  /** Done. */
  static final int DONE = 0;

  /** Could not be computed. */
  static final int NOT_COMPUTED = 1;

  /** Wrong usage, a fault in a file, or an answer that cannot be written where it should go. */
  static final int WRONG_INPUT = 2;

  private ExitCodes() {}
}
