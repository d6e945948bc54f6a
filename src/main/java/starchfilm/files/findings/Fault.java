package starchfilm.files.findings;

import java.util.OptionalInt;

/**
 * One thing wrong in one file.
 *
 * @param file the file's name as the user gave it
 * @param line line, counted from 1; empty where the fault is of the whole file
 * @param column column, counted from 1; empty likewise
 * @param field the field's path, such as {@code recipe.glycerol.mass_g}; empty for the whole file
 * @param given what stands there, shortened
 * @param allowed what is allowed, with its unit; empty where that goes without saying
 * @param mend what to do
 */
public record Fault(
    String file,
    OptionalInt line,
    OptionalInt column,
    String field,
    String given,
    String allowed,
    String mend) {
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
   * @param field as above
   * @param given as above
   * @param allowed as above
   * @param mend as above
   * @return the fault
   */
  public static Fault of(String file, String field, String given, String allowed, String mend) {
    OptionalInt nowhere = OptionalInt.empty();
    return new Fault(file, nowhere, nowhere, field, given, allowed, mend);
  }

  /**
   * The fault as one sentence.
   *
   * @return such as {@code a.json, line 7, column 3: recipe.glycerol.mass_g: -4 given, allowed 0 to
   *     100000 g; write the grams weighed}
   */
  public String sentence() {
    StringBuilder text = new StringBuilder(PlainLine.of(file));
    line.ifPresent(number -> text.append(", line ").append(number));
    column.ifPresent(number -> text.append(", column ").append(number));
    text.append(": ");
    if (!field.isEmpty()) {
      text.append(PlainLine.of(field, LONGEST)).append(": ");
    }
    return text.append(clause()).toString();
  }

  /** What is wrong and how to fix it, where its place is plain. */
  public String clause() {
    return given + (allowed.isEmpty() ? "" : " given, allowed " + allowed) + "; " + mend;
  }
}
