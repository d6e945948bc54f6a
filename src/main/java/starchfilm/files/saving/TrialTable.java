package starchfilm.files.saving;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.files.amount.Dimension;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.amount.NearMiss;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.Located.WordValue;
import starchfilm.files.json.LocatedWriter;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialField.ValueKind;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.roomlog.LogTable;
import starchfilm.files.roomlog.LogTable.LogRow;
import starchfilm.files.roomlog.LogText;

/**
 * A table of trials, one a row, its columns named as the keys of a trial file: {@code
 * recipe.water.mass_g}, and of a list {@code recipe.starch[2].kind} (the first without its number);
 * or in the words of {@link ColumnWords}. Amounts are read as typed anywhere: spoons, °F, inches.
 * Several measured thicknesses or remarks stand in one cell with semicolons between.
 */
public final class TrialTable {
  private static final int MOST_ROWS = 1_000;
  private static final Pattern INDEX = Pattern.compile("\\[([0-9]{1,2})\\]");
  private static final Pattern BARE_END = Pattern.compile("[0-9\u00BC-\u00BE]$");
  private static final String KIND = "recipe.starch.kind";
  private static final String MASS = "recipe.starch.mass_g";

  private static final String PLATE = "pour.plate.";

  /** glass 30x20 cm, or 30x20 cm glass. */
  private static final Pattern MATERIAL_AND_SIDES =
      Pattern.compile("(?iU)(.*?)\\s*([0-9.]+)\\s*[x\u00D7]\\s*([0-9.]+)\\s*(mm|cm|in)\\b(.*)");

  /** 20 g potato, or potato 20 g. */
  private static final Pattern KIND_AND_MASS =
      Pattern.compile(
          String.format(
              "(?iU)(%1$s)\\s+(?:of )?([\\p{L}].*)|([\\p{L}].*?)\\s+(%1$s)", TypedAmount.WITHIN));

  private static final Map<String, TrialField> KEYS =
      TrialField.TRIAL.all().stream()
          .filter(field -> field.kind() != ValueKind.SECTION)
          .collect(
              Collectors.toMap(
                  TrialField::path, Function.identity(), (a, b) -> a, LinkedHashMap::new));

  /** Paths of sections of which a file may hold a list. */
  private static final List<String> LISTS =
      TrialField.TRIAL.all().stream()
          .filter(field -> field.kind() == ValueKind.SECTION && field.many())
          .map(TrialField::path)
          .toList();

  private final Findings findings;
  private final MomentParser moments;

  private TrialTable(Findings findings, MomentParser moments) {
    this.findings = findings;
    this.moments = moments;
  }

  /**
   * A trial of the table.
   *
   * @param name what it is called
   * @param text the text of its file
   */
  public record TrialText(String name, String text) {}

  /**
   * A column: its key, which entry of a list it means, what may stand in it, and the unit of its
   * bare numbers where the head names one.
   */
  private record FieldColumn(String key, int entry, TrialField field, String unit) {
    /** The list it belongs to. */
    Optional<String> list() {
      return LISTS.stream().filter(list -> key.startsWith(list + ".")).findFirst();
    }

    /** With the unit that stands in the head. */
    String measured(String cell) {
      return unit.isEmpty() || !BARE_END.matcher(cell).find() ? cell : cell + " " + unit;
    }

    /** The column a cell belongs to: what was measured by volume goes where volumes are kept. */
    FieldColumn of(String cell) {
      TrialField volume = KEYS.get(key.replace("mass_g", "volume_ml"));
      if (!key.endsWith(".mass_g") || volume == null) {
        return this;
      }
      try {
        return TypedAmount.inUnit("g", cell, Dimension.VOLUME).is(Dimension.VOLUME)
            ? new FieldColumn(volume.path(), entry, volume, unit)
            : this;
      } catch (MistypedException toldByItsField) {
        return this;
      }
    }
  }

  /**
   * What stands in a column.
   *
   * @param number of the column, from 1
   */
  private record FilledCell(FieldColumn column, String written, int number) {}

  /**
   * Reads a table.
   *
   * @param file the CSV file
   * @param findings takes every fault, with the line and the column of its cell
   * @param moments reads when it was poured
   * @return the trials, if no cell has a fault
   */
  public static List<TrialText> read(Path file, Findings findings, MomentParser moments) {
    return read(() -> LogText.read(file, findings), file, findings, moments);
  }

  /**
   * Reads a table that was sent.
   *
   * @param content as a file or a spreadsheet's clipboard holds it
   * @param folder where the trials will stand
   * @param findings as above
   * @param moments as above
   * @return the trials, if no cell has a fault
   */
  public static List<TrialText> read(
      byte[] content, Path folder, Findings findings, MomentParser moments) {
    return read(
        () -> LogText.of(content, findings), folder.resolve("table.csv"), findings, moments);
  }

  @FunctionalInterface
  private interface TextSource {
    String text() throws UnreadableFileException;
  }

  private static List<TrialText> read(
      TextSource source, Path file, Findings findings, MomentParser moments) {
    try {
      return new TrialTable(findings, moments).rows(LogTable.of(source.text()), file);
    } catch (UnreadableFileException e) {
      findings.fault(e);
      return List.of();
    }
  }

  /**
   * Writes the trials of a table, or where one cannot be written none of them.
   *
   * @param folder where they go
   * @return their files, in the order of the rows
   * @throws NotWrittenException where one cannot be written, or what was written not be taken away
   */
  public static List<Path> write(List<TrialText> rows, Path folder) throws NotWrittenException {
    List<Path> written = new ArrayList<>();
    try {
      for (TrialText row : rows) {
        written.add(TrialFileText.create(folder, row.name(), row.text()));
      }
      return written;
    } catch (NotWrittenException e) {
      SafeFile.delete(written);
      throw e;
    }
  }

  private List<TrialText> rows(LogTable table, Path file) throws UnreadableFileException {
    if (table.rows().size() < 2) {
      throw new UnreadableFileException(
          "a table without rows",
          "a first row of keys, such as name and recipe.water.mass_g, and a row a trial",
          "see check --keys for the keys");
    }
    if (table.rows().size() > MOST_ROWS + 1) {
      throw new UnreadableFileException(
          table.rows().size() - 1 + " rows",
          "at most " + MOST_ROWS + ", a row a trial",
          "leave out what is no trial, or split the table");
    }
    LogRow head = table.rows().get(0);
    List<Optional<FieldColumn>> columns = new ArrayList<>();
    for (int i = 0; i < head.cells().size(); i++) {
      columns.add(column(head.cells().get(i), new Place("the head", head.line(), i + 1)));
    }
    List<TrialText> rows = new ArrayList<>();
    for (LogRow row : table.rows().subList(1, table.rows().size())) {
      if (row.cells().size() > columns.size()) {
        findings.fault(
            Place.of(row.line()),
            row.cells().size() + " cells",
            columns.size() + " as in the first row",
            "put cells that hold the separator in double quotes");
      } else {
        rows.add(row(row, columns, file));
      }
    }
    return findings.faults().isEmpty() ? rows : List.of();
  }

  private Optional<FieldColumn> column(String written, Place place) {
    Matcher index = INDEX.matcher(written);
    int entry = index.find() ? Integer.parseInt(index.group(1)) : 1;
    String key = INDEX.matcher(written).replaceAll("");
    TrialField field = KEYS.get(key);
    if (field != null) {
      return Optional.of(new FieldColumn(key, entry, field, ""));
    }
    Optional<ColumnWords.Meaning> meant = ColumnWords.of(INDEX.matcher(written).replaceAll(" "));
    if (meant.isPresent()) {
      TrialField means = Objects.requireNonNull(KEYS.get(meant.get().key()));
      findings.notice(
          place,
          '"' + written + "\" is read as " + means.path() + inUnit(means, meant.get().unit()));
      return Optional.of(new FieldColumn(means.path(), entry, means, meant.get().unit()));
    }
    if (!written.isEmpty() && !written.startsWith("_")) {
      findings.fault(
          place,
          '"' + written + '"',
          "a key of a trial file",
          NearMiss.of(key, KEYS.keySet())
              .map(near -> "did you mean " + near + "?")
              .orElse("see check --keys; a column of your own may begin with _"));
    }
    return Optional.empty();
  }

  private static String inUnit(TrialField field, String unit) {
    String counted = unit.isEmpty() ? field.unit() : unit;
    return counted.isEmpty() ? "" : ", bare numbers in " + counted;
  }

  private TrialText row(LogRow row, List<Optional<FieldColumn>> columns, Path file) {
    ObjectValue trial = new ObjectValue(new Place("", row.line(), 1), Map.of(), List.of());
    Map<String, TreeMap<Integer, ObjectValue>> lists = new LinkedHashMap<>();
    for (FilledCell one : cells(row, columns)) {
      String cell = one.column().measured(one.written());
      FieldColumn column = one.column().of(cell);
      Place place = new Place(column.key(), row.line(), one.number());
      Optional<Located> value = value(column.field(), cell, place);
      if (value.isEmpty()) {
        continue;
      }
      Optional<String> list = column.list();
      if (list.isPresent()) {
        String inner = column.key().substring(list.get().length() + 1);
        lists
            .computeIfAbsent(list.get(), key -> new TreeMap<>())
            .merge(
                column.entry(),
                new ObjectValue(place, Map.of(), List.of()).with(inner, value.get()),
                (there, other) -> there.with(inner, value.get()));
      } else {
        trial = trial.with(column.key(), value.get());
      }
    }
    for (Map.Entry<String, TreeMap<Integer, ObjectValue>> list : lists.entrySet()) {
      Place place = list.getValue().firstEntry().getValue().place();
      trial =
          trial.with(list.getKey(), new ListValue(place, List.copyOf(list.getValue().values())));
    }
    String name =
        trial.get("name").orElse(trial) instanceof TextValue words
            ? words.text()
            : "Row " + row.line();
    trial = trial.with("name", new TextValue(trial.place(), name));
    Findings here = new Findings(findings.file());
    new TrialReader().read(trial, file.resolveSibling("new.json"), here);
    findings.faults().addAll(here.faults());
    return new TrialText(name, LocatedWriter.lines(trial));
  }

  /**
   * The cells of a row that hold something; potato 20 g is a kind and its mass, glass 30x20 cm a
   * material and two sides.
   */
  private static List<FilledCell> cells(LogRow row, List<Optional<FieldColumn>> columns) {
    List<FilledCell> cells = new ArrayList<>();
    for (int i = 0; i < row.cells().size(); i++) {
      String written = row.cells().get(i);
      if (written.isEmpty() || columns.get(i).isEmpty()) {
        continue;
      }
      FieldColumn column = columns.get(i).get();
      Matcher both = KIND_AND_MASS.matcher(written);
      if (column.key().equals(KIND) && both.matches()) {
        cells.add(cell(MASS, column, both.group(1) == null ? both.group(4) : both.group(1), i + 1));
        written = both.group(1) == null ? both.group(3) : both.group(2);
      }
      Matcher sides = MATERIAL_AND_SIDES.matcher(written);
      if (column.key().equals(PLATE + "material") && sides.matches()) {
        String unit = " " + sides.group(4);
        cells.add(cell(PLATE + "length_mm", column, sides.group(2) + unit, i + 1));
        cells.add(cell(PLATE + "width_mm", column, sides.group(3) + unit, i + 1));
        written = (sides.group(1) + sides.group(5)).strip();
      }
      if (!written.isEmpty()) {
        cells.add(new FilledCell(column, written, i + 1));
      }
    }
    return cells;
  }

  /** A part of a cell that belongs to another key than its column. */
  private static FilledCell cell(String key, FieldColumn column, String written, int number) {
    TrialField field = Objects.requireNonNull(KEYS.get(key));
    return new FilledCell(
        new FieldColumn(key, column.entry(), field, column.unit()), written, number);
  }

  private Optional<Located> value(TrialField field, String cell, Place place) {
    if (field.many()) {
      List<Located> entries =
          Stream.of(cell.split(";", -1))
              .map(String::strip)
              .filter(one -> !one.isEmpty())
              .flatMap(one -> single(field, one, place).stream())
              .toList();
      return Optional.of(new ListValue(place, entries));
    }
    return single(field, cell, place);
  }

  private Optional<Located> single(TrialField field, String cell, Place place) {
    try {
      return Optional.of(
          switch (field.kind()) {
            case FLAG -> flag(cell, place);
            case CHOICE -> new TextValue(place, cell.toLowerCase(Locale.ROOT));
            case CLOCK -> new TextValue(place, pour(cell));
            default -> FieldInput.of(field, cell, place);
          });
    } catch (MistypedException e) {
      findings.fault(place, e.given(), e.allowed(), e.mend());
      return Optional.empty();
    }
  }

  /** A day without an hour stands for its noon. */
  private String pour(String cell) {
    return NoteWords.pour(moments, cell.contains(":") ? cell : cell + " 12:00").toString();
  }

  private static Located flag(String cell, Place place) {
    return switch (cell.toLowerCase(Locale.ROOT)) {
      case "true", "yes", "1" -> new WordValue(place, Optional.of(true));
      case "false", "no", "0" -> new WordValue(place, Optional.of(false));
      default -> throw new MistypedException(cell, "true or false", "write one of these");
    };
  }
}
