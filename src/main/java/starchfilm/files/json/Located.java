package starchfilm.files.json;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** One JSON value and the place it stands at. */
public sealed interface Located {
  /**
   * The place at which the value begins.
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
   * The value as a person would type it, a range as both its ends and a list with semicolons; empty
   * for what nobody types.
   */
  default String shown() {
    return "";
  }

  /** The value at a path, likewise; empty where there is none. */
  default String shown(String path) {
    return at(path).map(Located::shown).orElse("");
  }

  /** The entries of a list; any other value stands for a list of one. */
  default List<Located> entries() {
    return List.of(this);
  }

  /** The value of a field of an object, or the entry of a list by its number from 0. */
  default Optional<Located> get(String name) {
    boolean isNumber = name.length() < 10 && name.chars().allMatch(Character::isDigit);
    return isNumber && !name.isEmpty()
        ? entries().stream().skip(Integer.parseInt(name)).findFirst()
        : Optional.empty();
  }

  /** The value at a path of such names, with dots between them. */
  default Optional<Located> at(String path) {
    Optional<Located> at = Optional.of(this);
    for (String name : path.isEmpty() ? List.<String>of() : List.of(path.split("\\.", -1))) {
      at = at.flatMap(holder -> holder.get(name));
    }
    return at;
  }

  /** The entries of a list at a path; none where there is nothing. */
  default List<Located> entries(String path) {
    return at(path).map(Located::entries).orElse(List.of());
  }

  /** An object without fields, to be filled. */
  static ObjectValue object() {
    return new ObjectValue(Place.of(""), Map.of(), List.of());
  }

  /** A list that stands in no file. */
  static ListValue list(List<? extends Located> entries) {
    return new ListValue(Place.of(""), List.copyOf(entries));
  }

  /** A text that stands in no file. */
  static TextValue text(String text) {
    return new TextValue(Place.of(""), text);
  }

  /** A number that stands in no file. */
  static NumberValue number(BigDecimal number) {
    return new NumberValue(Place.of(""), number);
  }

  /** A word that stands in no file. */
  static WordValue flag(boolean flag) {
    return new WordValue(Place.of(""), Optional.of(flag));
  }

  /**
   * A place in a file; line and column are 0 where nobody knows them.
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
     * A place that is only reported, not edited.
     *
     * @param path as above
     * @param line as above
     * @param column as above
     */
    public Place(String path, int line, int column) {
      this(path, line, column, 0, 0);
    }

    /** A field wherever it stands; with an empty path the whole file. */
    public static Place of(String path) {
      return new Place(path, 0, 0);
    }

    /** Behind a text. */
    static Place after(String text) {
      int line = 1 + (int) text.chars().filter(c -> c == '\n').count();
      return new Place("", line, text.length() - text.lastIndexOf('\n'));
    }

    /** A line of a table. */
    public static Place of(int line) {
      return new Place("", line, 0);
    }

    /** The path of a field of the object at this place. */
    public String pathOf(String field) {
      return path.isEmpty() ? field : path + "." + field;
    }

    /** The place where a field of the object at this place would stand. */
    public Place at(String field) {
      return new Place(pathOf(field), line, column);
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
    public Optional<Located> get(String key) {
      return Optional.ofNullable(members.get(key))
          .map(Member::value)
          .or(() -> Located.super.get(key));
    }

    /**
     * The same with another value of a field.
     *
     * @param path the field's path from here; objects on the way are made where they are missing
     * @param value the value; what stood there is left out
     * @return the other object
     */
    public ObjectValue with(String path, Located value) {
      return changed(path, Optional.of(value));
    }

    /** The same object with a value that there may be. */
    public ObjectValue with(String path, Optional<? extends Located> value) {
      return value.isPresent() ? with(path, value.get()) : this;
    }

    /** The same object with a text in a field, as if it stood in a file. */
    public ObjectValue with(String path, String text) {
      return with(path, new TextValue(new Place(path, 1, 1), text));
    }

    /** The same object with a number in a field. */
    public ObjectValue with(String path, BigDecimal number) {
      return with(path, new NumberValue(new Place(path, 1, 1), number));
    }

    /**
     * The same without some fields.
     *
     * @param paths their paths from here; a field that is not there is not missed
     * @return the other object
     */
    public ObjectValue without(String... paths) {
      ObjectValue rest = this;
      for (String path : paths) {
        rest = rest.at(path).isPresent() ? rest.changed(path, Optional.empty()) : rest;
      }
      return rest;
    }

    private ObjectValue changed(String path, Optional<Located> to) {
      int dot = path.indexOf('.');
      String key = dot < 0 ? path : path.substring(0, dot);
      Optional<Located> here = to;
      if (dot >= 0) {
        ObjectValue inner =
            // By its own name: a path's number would also find a single value, taken as a list of
            // one.
            Optional.ofNullable(members.get(key))
                .map(Member::value)
                .filter(ObjectValue.class::isInstance)
                .map(ObjectValue.class::cast)
                .orElseGet(() -> new ObjectValue(place.at(key), Map.of(), List.of()));
        here = Optional.of(inner.changed(path.substring(dot + 1), to));
      }
      Map<String, Member> changed = new LinkedHashMap<>(members);
      here.ifPresentOrElse(
          value -> changed.put(key, new Member(value.place(), value)), () -> changed.remove(key));
      return new ObjectValue(place, changed, repeated);
    }

    @Override
    public String shown() {
      boolean isRange = members.containsKey("from") && members.containsKey("to");
      return isRange ? shown("from") + " to " + shown("to") : "";
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
    public ListValue {
      entries = List.copyOf(entries);
    }

    @Override
    public String shown() {
      return entries.stream().map(Located::shown).collect(Collectors.joining("; "));
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
    public String shown() {
      return text;
    }

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
    /** A number with its digits. */
    public NumberValue(Place place, BigDecimal number) {
      this(place, number.toPlainString(), number.doubleValue());
    }

    @Override
    public String shown() {
      return literal;
    }

    @Override
    public String quoted() {
      return literal;
    }
  }

  /**
   * {@code true}, {@code false} or {@code null}.
   *
   * @param place where it begins
   * @param flag which of the first two; empty for {@code null}
   */
  record WordValue(Place place, Optional<Boolean> flag) implements Located {
    @Override
    public String shown() {
      return flag.map(String::valueOf).orElse("");
    }

    @Override
    public String quoted() {
      return flag.isPresent() ? shown() : "null";
    }
  }
}
