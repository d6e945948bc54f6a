package starchfilm.files.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Lists of rows in a JSON file that is packed with the program; constants stand in it by their
 * names in lower case, with spaces. What is wrong with a row is an IllegalArgumentException that
 * quotes it.
 */
public final class PackedTable {
  private final JsonNode lists;

  /** A table from its text. */
  public PackedTable(String json) {
    try {
      lists = new ObjectMapper().readTree(json);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("a packed table is no JSON: " + e.getMessage(), e);
    }
  }

  /** The rows of one list, in its order; none where there is no such list. */
  public List<Row> rows(String list) {
    List<Row> rows = new ArrayList<>();
    lists.path(list).forEach(row -> rows.add(new Row(row)));
    return rows;
  }

  /** One row. */
  public static final class Row {
    private final JsonNode fields;

    private Row(JsonNode fields) {
      this.fields = fields;
    }

    /** A text that must be there. */
    public String text(String field) {
      String text = text(field, "");
      if (text.isBlank()) {
        throw new IllegalArgumentException("no " + field + " in " + fields);
      }
      return text;
    }

    /** A text, or what stands for it where it is left out. */
    public String text(String field, String otherwise) {
      return fields.path(field).asText(otherwise);
    }

    /** A number; 0 where it is left out. */
    public double number(String field) {
      return fields.path(field).doubleValue();
    }

    /** A constant. */
    public <E extends Enum<E>> E constant(String field, E[] known) {
      return constant(known, text(field));
    }

    /** Constants, with ", " between them. */
    public <E extends Enum<E>> List<E> constants(String field, E[] known) {
      return Stream.of(text(field).split(", ", -1)).map(name -> constant(known, name)).toList();
    }

    private <E extends Enum<E>> E constant(E[] known, String given) {
      return Stream.of(known)
          .filter(each -> name(each).equals(given))
          .findFirst()
          .orElseThrow(
              () ->
                  new IllegalArgumentException(
                      "\"%s\" is none of %s, in %s"
                          .formatted(
                              given, Stream.of(known).map(PackedTable::name).toList(), fields)));
    }
  }

  private static String name(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
