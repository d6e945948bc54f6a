package starchfilm.files.findings;

import starchfilm.files.json.Located.Place;

/**
 * One thing wrong in one file.
 *
 * @param file the file's name as the user gave it
 * @param place where; of the path {@code recipe.glycerol.mass_g}, or empty for the whole file
 * @param given what stands there, shortened
 * @param allowed what is allowed, with its unit; empty where that goes without saying
 * @param mend what to do
 */
public record Fault(String file, Place place, String given, String allowed, String mend) {
  private static final int LONGEST = 300;

  /** Makes one line of what stands in the file, and shortens it. */
  public Fault {
    given = PlainLine.of(given, LONGEST);
    allowed = PlainLine.of(allowed, LONGEST);
    mend = PlainLine.of(mend, LONGEST);
  }

  /**
   * A fault of a whole file, or of one of its fields wherever that stands.
   *
   * @param file the file's name as the user gave it
   * @param field its path; empty for the whole file
   * @param given as above
   * @param allowed as above
   * @param mend as above
   * @return the fault
   */
  public static Fault of(String file, String field, String given, String allowed, String mend) {
    return new Fault(file, Place.of(field), given, allowed, mend);
  }

  /** The path of the field; empty for the whole file. */
  public String field() {
    return place.path();
  }

  /**
   * The fault as one sentence.
   *
   * @return such as {@code a.json, line 7, column 3: recipe.glycerol.mass_g: -4 given, allowed 0 to
   *     100000 g; write the grams weighed}
   */
  public String sentence() {
    return at(file, place) + clause();
  }

  /** How a sentence begins about a place in a file. */
  static String at(String file, Place place) {
    return PlainLine.of(file)
        + (place.line() > 0 ? ", line " + place.line() : "")
        + (place.column() > 0 ? ", column " + place.column() : "")
        + ": "
        + (place.path().isEmpty() ? "" : PlainLine.of(place.path(), LONGEST) + ": ");
  }

  /** Returns what is wrong and how to fix it, where its place is plain. */
  public String clause() {
    return given + (allowed.isEmpty() ? "" : " given, allowed " + allowed) + "; " + mend;
  }
}
