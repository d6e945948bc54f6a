package starchfilm.files.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One JSON value and the place it stands at. */
public sealed interface Located {
  /**
   * Where the value begins.
   *
   * @return its place
   */
  Place place();

  /**
   * The value as one would quote it in a sentence, shortened.
   *
   * @return such as {@code "corn"}, {@code -4} or {@code an object}
   */
  String quoted();

  /**
   * A place in a file.
   *
   * @param path names of the fields from the outside in, such as {@code recipe.starch[1].mass_g};
   *     entries of a list are counted from 1, as lines are
   * @param line line, from 1
   * @param column column, from 1
   * @param start where it begins, in characters from 0
   * @param end the character after its last
   */
  record Place(String path, int line, int column, int start, int end) {
    /**
     * A place that is only told, not edited.
     *
     * @param path as above
     * @param line as above
     * @param column as above
     */
    public Place(String path, int line, int column) {
      this(path, line, column, 0, 0);
    }
  }

  /**
   * A field of an object.
   *
   * @param key where its name stands
   * @param value its value
   */
  record Member(Place key, Located value) {}

  /**
   * An object.
   *
   * @param place where it begins
   * @param members its fields in the order of the file; of a name given twice, the first
   * @param repeated where names stand that were given before
   */
  record ObjectValue(Place place, Map<String, Member> members, List<Place> repeated)
      implements Located {
    /** Copies the collections. */
    public ObjectValue {
      members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
      repeated = List.copyOf(repeated);
    }

    @Override
    public String quoted() {
      return "an object";
    }
  }

  /**
   * A list.
   *
   * @param place where it begins
   * @param entries its entries
   */
  record ListValue(Place place, List<Located> entries) implements Located {
    /** Copies the list. */
    public ListValue {
      entries = List.copyOf(entries);
    }

    @Override
    public String quoted() {
      return "a list";
    }
  }

  /**
   * A text.
   *
   * @param place where it begins
   * @param text its content
   */
  record TextValue(Place place, String text) implements Located {
    private static final int SHOWN = 40;

    @Override
    public String quoted() {
      String line = text.replaceAll("\\p{Cntrl}+", " ");
      if (line.length() <= SHOWN) {
        return '"' + line + '"';
      }
      int cut = Character.isHighSurrogate(line.charAt(SHOWN - 1)) ? SHOWN - 1 : SHOWN;
      return '"' + line.substring(0, cut) + "...\"";
    }
  }

  /**
   * A number.
   *
   * @param place where it begins
   * @param literal as written
   * @param value its value; infinite where it is too large, NaN where {@code NaN} is written
   */
  record NumberValue(Place place, String literal, double value) implements Located {
    @Override
    public String quoted() {
      return literal;
    }
  }

  /**
   * {@code true}, {@code false} or {@code null}.
   *
   * @param place where it begins
   * @param word which of the three
   */
  record WordValue(Place place, Word word) implements Located {
    /** The three words of JSON. */
    public enum Word {
      /** True. */
      TRUE("true"),
      /** False. */
      FALSE("false"),
      /** Nothing. */
      NULL("null");

      private final String literal;

      Word(String literal) {
        this.literal = literal;
      }
    }

    @Override
    public String quoted() {
      return word.literal;
    }
  }
}
