package starchfilm.request;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import starchfilm.files.json.PackedText;
import starchfilm.request.Field.FieldSection;
import starchfilm.request.Field.FormInput;

/** Reads the table of {@link Field}s, {@code fields.txt}. */
final class FieldTable {
  private static final int COLUMNS = 6;
  private static final Pattern BAR = Pattern.compile("| ", Pattern.LITERAL);

  /** Every section, by the name of its group. */
  static final Map<String, FieldSection> SECTIONS = new FieldTable().read();

  private final Map<String, FieldSection> sections = new LinkedHashMap<>();

  private FieldTable() {}

  private Map<String, FieldSection> read() {
    String group = "";
    String heading = "";
    boolean repeatable = false;
    List<Field> fields = new ArrayList<>();
    for (String line : PackedText.of(FieldTable.class, "fields.txt").lines().toList()) {
      if (line.startsWith("[")) {
        group = line.substring(1, line.indexOf(']'));
        String after = line.substring(line.indexOf(']') + 1);
        repeatable = after.startsWith("+");
        heading = after.substring(repeatable ? 1 : 0).strip();
        fields = new ArrayList<>();
      } else if (!line.isBlank() && !line.startsWith("#")) {
        fields.add(line.contains("|") ? field(group, line) : find(sections, line.strip()));
        sections.put(group, new FieldSection(heading, repeatable, fields));
      }
    }
    return Map.copyOf(sections);
  }

  /** A field by its group and name, such as {@code jar.origin}. */
  static Field find(Map<String, FieldSection> sections, String key) {
    FieldSection section = sections.get(key.substring(0, key.indexOf('.')));
    return (section == null ? List.<Field>of() : section.fields())
        .stream()
            .filter(field -> field.key().equals(key))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no field " + key));
  }

  private static Field field(String group, String line) {
    List<String> row = Arrays.stream(BAR.split(line + " ", COLUMNS)).map(String::strip).toList();
    String written = row.get(1);
    // What has no option stands by its place.
    String[] option = (written.startsWith("-") ? written : " " + written).split(" ", 2);
    String words = row.get(2).isEmpty() ? "1" : row.get(2);
    String[] counts = words.replace("+", "").split("-", -1);
    String[] page = row.get(3).split(":", 2);
    return new Field(
        group + "." + row.get(0),
        option[0],
        option.length == 1 ? "" : option[1],
        row.get(5).replace("%", "%%"),
        Integer.parseInt(counts[0]),
        Integer.parseInt(counts[counts.length - 1]),
        words.endsWith("+"),
        page[0],
        page.length == 1 || page[1].isEmpty()
            ? List.of()
            : Arrays.stream(page[1].split(",", -1)).map(FieldTable::part).toList(),
        row.get(4));
  }

  private static FormInput part(String input) {
    String[] both = input.strip().split(" ", -1);
    String[] of = both[0].split("/", -1);
    return new FormInput(
        of.length == 1 ? List.of() : List.of(of[0].split("\\+", -1)),
        of[of.length - 1],
        both.length == 1 ? "" : both[1]);
  }
}
