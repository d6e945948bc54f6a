package starchfilm.files.findings;

import java.nio.file.Path;
import starchfilm.files.json.Located.Place;

/**
 * Something in a file that looks odd but does not stand in the way.
 *
 * @param file the file's name as the user gave it
 * @param place where, to the line
 * @param text what is odd and what was done about it
 */
public record Notice(String file, Place place, String text) {
  private static final int LONGEST = 500;

  /** Makes one line of it, and shortens it. */
  public Notice {
    place = new Place(place.path(), place.line(), 0);
    text = PlainLine.of(text, LONGEST);
  }

  /**
   * A notice of a whole file.
   *
   * @param file the file
   * @param text as above
   */
  public static Notice of(Path file, String text) {
    return new Notice(PlainLine.of(file), Place.of(""), text);
  }

  /** The path of the field; empty for the whole file. */
  public String field() {
    return place.path();
  }

  /**
   * The notice as one sentence.
   *
   * @return such as {@code shed.csv, line 40: no reading for 9.5 h; read as a straight line}
   */
  public String sentence() {
    return Fault.at(file, place) + text;
  }
}
