package starchfilm.files.json;

import java.util.OptionalInt;

/** A file whose text cannot be read as what it should be; says where, what, and how to mend it. */
public final class UnreadableFileException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int line;
  private final int column;
  private final String given;
  private final String allowed;
  private final String mend;

  /**
   * A fault of the whole file.
   *
   * @param given what was found
   * @param allowed what is allowed; empty where that goes without saying
   * @param mend what to do
   */
  public UnreadableFileException(String given, String allowed, String mend) {
    this(0, 0, given, allowed, mend);
  }

  /**
   * A fault at a place.
   *
   * @param line line from 1, or 0 for the whole file
   * @param column column from 1, or 0 for the whole line
   * @param given what was found
   * @param allowed what is allowed; empty where that goes without saying
   * @param mend what to do
   */
  public UnreadableFileException(int line, int column, String given, String allowed, String mend) {
    super(given + "; " + mend);
    this.line = line;
    this.column = column;
    this.given = given;
    this.allowed = allowed;
    this.mend = mend;
  }

  /**
   * Where the fault is.
   *
   * @return line from 1, if known
   */
  public OptionalInt line() {
    return line > 0 ? OptionalInt.of(line) : OptionalInt.empty();
  }

  /**
   * Where the fault is.
   *
   * @return column from 1, if known
   */
  public OptionalInt column() {
    return column > 0 ? OptionalInt.of(column) : OptionalInt.empty();
  }

  /**
   * What was found.
   *
   * @return in plain words
   */
  public String given() {
    return given;
  }

  /**
   * What is allowed.
   *
   * @return in plain words; empty where that goes without saying
   */
  public String allowed() {
    return allowed;
  }

  /**
   * What to do.
   *
   * @return in plain words
   */
  public String mend() {
    return mend;
  }
}
