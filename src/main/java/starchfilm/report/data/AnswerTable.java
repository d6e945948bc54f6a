package starchfilm.report.data;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.PackedText;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.figures.ReaderUnit;
import starchfilm.report.caution.Caution;

/**
 * An answer in rows, from which JSON and CSV are written.
 *
 * <p>Every key stands in {@code data-keys.txt} with its unit and meaning, which the JSON repeats. A
 * figure that does not exist, such as a time that never comes, is left out. What was assumed and
 * which readings are doubted goes along: in JSON as lists, in CSV as lines after the table that
 * begin with {@code #}.
 */
public final class AnswerTable {
  /** Key, unit and meaning of each key, in the order of the table. */
  private static final Map<String, List<String>> KEYS =
      PackedText.rows(AnswerTable.class, "data-keys.txt", 3).stream()
          .collect(
              Collectors.toMap(
                  row -> row.get(0), row -> row, (one, other) -> one, LinkedHashMap::new));

  private static final String LOW = "_low";
  private static final String HIGH = "_high";
  private static final String WITHHELD = "withheld";

  private final String what;
  private final List<AnswerRow> rows = new ArrayList<>();
  private final Map<String, List<String>> told = new LinkedHashMap<>();

  /**
   * An answer.
   *
   * @param what what it is, such as {@code plan}
   */
  public AnswerTable(String what) {
    this.what = what;
  }

  /** A row. */
  public static final class AnswerRow {
    private final Map<String, Object> cells = new LinkedHashMap<>();

    /** Puts words; empty ones are left out. */
    public AnswerRow put(String key, String words) {
      return words.isEmpty() ? this : cell(key, PlainLine.of(words, Integer.MAX_VALUE));
    }

    /**
     * Puts a figure; one that is not finite is left out.
     *
     * @param key its key
     * @param si the figure in SI, turned into the key's unit; where it has none, as it is
     * @return this row
     */
    public AnswerRow put(String key, double si) {
      if (!Double.isFinite(si)) {
        return this;
      }
      String unit = known(key).get(1);
      double rounded = JsonText.rounded(unit.isEmpty() ? si : ReaderUnit.called(unit).of(si));
      // A count is no 5.0.
      return rounded == Math.rint(rounded) ? cell(key, (long) rounded) : cell(key, rounded);
    }

    /** Puts a figure with its range. */
    public AnswerRow put(String key, Band band) {
      return put(key, band.middle()).put(key + LOW, band.low()).put(key + HIGH, band.high());
    }

    private List<Object> in(List<String> columns) {
      return columns.stream().map(key -> cells.getOrDefault(key, "")).toList();
    }

    private AnswerRow cell(String key, Object value) {
      known(key);
      cells.put(key, value);
      return this;
    }
  }

  /** Begins a row. */
  public AnswerRow row(String kind, String name) {
    AnswerRow row = new AnswerRow().put("what", kind).put("name", name);
    rows.add(row);
    return row;
  }

  /** Says something beside the rows, such as what was assumed; nothing where it is empty. */
  public AnswerTable tell(String heading, List<String> sentences) {
    if (!sentences.isEmpty()) {
      told.put(
          heading,
          sentences.stream()
              .map(one -> PlainLine.of(one.strip().replaceFirst("^- ", ""), Integer.MAX_VALUE))
              .filter(one -> !one.isEmpty())
              .toList());
    }
    return this;
  }

  /** Says what was assumed. */
  public AnswerTable assuming(List<String> assumptions) {
    return tell("assumptions", assumptions);
  }

  /** Says what to mind. */
  public AnswerTable cautioning(List<Caution> cautions) {
    return tell("cautions", cautions.stream().map(Caution::sentence).toList());
  }

  /**
   * The answer as JSON.
   *
   * @return one object: what it is, its keys with unit and meaning, its rows, and what else is
   *     said; of an answer of one row also each range by its key, such as {@code
   *     pure_glycerol_g.low}, or why it is withheld
   */
  public String json() {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("what", what);
    ObjectNode keys = root.putObject("keys");
    columns().stream()
        .map(AnswerTable::base)
        .distinct()
        .forEach(key -> keys.put(key, meaning(key)));
    if (rows.size() == 1) {
      putByName(root, rows.get(0));
    }
    ArrayNode entries = root.putArray("rows");
    rows.forEach(row -> entries.add(new ObjectMapper().<JsonNode>valueToTree(row.cells)));
    told.forEach((heading, sentences) -> sentences.forEach(root.withArray(heading)::add));
    return JsonText.of(root);
  }

  /** The figures of an answer about one thing, where a reader of one figure looks for them. */
  private static void putByName(ObjectNode root, AnswerRow row) {
    row.cells.forEach(
        (key, value) -> {
          if (row.cells.get(key + LOW) instanceof Number low
              && row.cells.get(key + HIGH) instanceof Number high
              && value instanceof Number middle) {
            root.putObject(key)
                .put("low", low.doubleValue())
                .put("middle", middle.doubleValue())
                .put("high", high.doubleValue());
          } else if (key.equals(WITHHELD)) {
            root.put(key, value.toString());
          }
        });
  }

  /**
   * The answer as CSV.
   *
   * @return a head, a line a row, and after them what else is said; line ends are a line feed
   */
  public String csv() {
    List<String> columns = columns();
    StringBuilder text = new StringBuilder(CsvLine.of(columns));
    rows.forEach(row -> text.append(CsvLine.of(row.in(columns))));
    told.forEach(
        (heading, sentences) ->
            sentences.forEach(
                one -> text.append("# ").append(heading).append(": ").append(one).append('\n')));
    return text.toString();
  }

  /** The keys that some row has, in the order of the table of keys. */
  private List<String> columns() {
    List<String> columns = new ArrayList<>();
    for (String key : KEYS.keySet()) {
      for (String whole : List.of(key, key + LOW, key + HIGH)) {
        boolean used = rows.stream().anyMatch(row -> row.cells.containsKey(whole));
        if (used || whole.equals("what") || whole.equals("name")) {
          columns.add(whole);
        }
      }
    }
    return columns;
  }

  private static String base(String key) {
    return key.replaceFirst("(" + LOW + "|" + HIGH + ")$", "");
  }

  private static List<String> known(String key) {
    List<String> row = KEYS.get(base(key));
    if (row == null) {
      throw new IllegalStateException("no key " + key + " in data-keys.txt");
    }
    return row;
  }

  /** What a key means, after its unit if it has one. */
  private static String meaning(String key) {
    List<String> row = known(key);
    return row.get(1).isEmpty() ? row.get(2) : row.get(1) + ": " + row.get(2);
  }
}
