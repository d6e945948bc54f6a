package starchfilm.planning;

/** What was asked cannot be meant; the message is one sentence that says how to mend it. */
public final class UnworkableRequestException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * A request that cannot be meant.
   *
   * @param sentence what was given, what is allowed, and what to do
   */
  public UnworkableRequestException(String sentence) {
    super(sentence);
  }
}
