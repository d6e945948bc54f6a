package starchfilm.files.saving;

import starchfilm.files.findings.Fault;

/**
 * A weighing seems to be of another plate; nothing was written, and whoever noted it is asked
 * first.
 */
public final class PlateDoubtException extends NotWrittenException {
  private static final long serialVersionUID = 1L;

  private final String told;

  PlateDoubtException(String file, String told) {
    super(
        Fault.of(
            file,
            "weighings",
            told,
            "a film that dries",
            "state whether it was the same plate; nothing was noted"));
    this.told = told;
  }

  /**
   * Returns what is odd.
   *
   * @return such as {@code a film 30 g heavier than 4 seconds before}
   */
  public String told() {
    return told;
  }
}
