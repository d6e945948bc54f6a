package starchfilm.files.amount;

/** A typed amount or time that cannot be read; its message is one sentence for the person. */
public final class MistypedException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String given;
  private final String allowed;
  private final String mend;

  /**
   * A mistyped amount.
   *
   * @param given what was typed
   * @param allowed what is allowed, with its unit
   * @param mend what to do
   */
  public MistypedException(String given, String allowed, String mend) {
    super(quoted(given) + " given, allowed " + allowed + "; " + mend);
    this.given = quoted(given);
    this.allowed = allowed;
    this.mend = mend;
  }

  private static String quoted(String text) {
    String line = text.replaceAll("[\\p{Cntrl}\\p{Cf}]+", " ");
    return '"' + (line.length() > 40 ? line.substring(0, 40) + "..." : line) + '"';
  }

  /**
   * Returns what was typed.
   *
   * @return in quotes, shortened
   */
  public String given() {
    return given;
  }

  /**
   * Returns what is allowed.
   *
   * @return in words, with its unit
   */
  public String allowed() {
    return allowed;
  }

  /**
   * Returns what to do.
   *
   * @return in words
   */
  public String mend() {
    return mend;
  }
}
