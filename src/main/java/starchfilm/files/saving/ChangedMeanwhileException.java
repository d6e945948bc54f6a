package starchfilm.files.saving;

/** Somebody else changed a file after it was read to be edited; nothing was written. */
public final class ChangedMeanwhileException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient TrialFileText now;

  ChangedMeanwhileException(TrialFileText now) {
    super(now.file() + " was changed meanwhile");
    this.now = now;
  }

  /**
   * The file as it is now.
   *
   * @return its text and version
   */
  public TrialFileText now() {
    return now;
  }
}
