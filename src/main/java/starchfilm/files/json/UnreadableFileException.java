package starchfilm.files.json;

import starchfilm.files.json.Located.Place;

/** A file whose text cannot be read as what it should be; says where, what, and how to mend it. */
public final class UnreadableFileException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient Place place;
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
    this(Place.of(""), given, allowed, mend);
  }

  /** A fault at a place; the rest as above. */
  public UnreadableFileException(Place place, String given, String allowed, String mend) {
    super(given + "; " + mend);
    this.place = place;
    this.given = given;
    this.allowed = allowed;
    this.mend = mend;
  }

  /** The place of the fault. */
  public Place place() {
    return place;
  }

  /**
   * Returns what was found.
   *
   * @return in plain words
   */
  public String given() {
    return given;
  }

  /**
   * Returns what is allowed.
   *
   * @return in plain words; empty where that goes without saying
   */
  public String allowed() {
    return allowed;
  }

  /**
   * Returns what to do.
   *
   * @return in plain words
   */
  public String mend() {
    return mend;
  }
}
