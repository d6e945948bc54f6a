package starchfilm.request;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
import starchfilm.files.json.Located.Member;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.Located.WordValue;
import starchfilm.files.json.LocatedWriter;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.FieldInput;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialField.ValueKind;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.notebook.Volumes;
import starchfilm.files.roomlog.LogTable;
import starchfilm.files.roomlog.LogTable.LogRow;
import starchfilm.files.roomlog.LogText;
import starchfilm.files.saving.NewTrialFile;
import starchfilm.files.saving.NoteWords;

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
  private static final Pattern UNKNOWN = Pattern.compile("(?i)unknown|\\?");

  /** A mark in French, a remark in English. */
  private static final Pattern NOTE = Pattern.compile("(?i)\\s*note\\s*");

  private static final Pattern MARK = Pattern.compile("\\s*[1-5]\\s*");
  private static final String KIND = "recipe.starch.kind";
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
   * A column: its key, which entry of a list it means, what may stand in it, and the unit of its
   * bare numbers where the head names one.
   */
  private record FieldColumn(String key, int entry, TrialField field, String unit) {
    String path() {
      return TrialTable.path(key, entry);
    }

    /** With the unit that stands in the head. */
    String measured(String cell) {
      return unit.isEmpty() || !BARE_END.matcher(cell).find() ? cell : cell + " " + unit;
    }
  }

  /**
   * Reads a table.
   *
   * @param file the CSV file
   * @param findings takes every fault, with the line and the column of its cell
   * @param moments reads when it was poured
   * @return the trials, if no cell has a fault
   */
  public static List<NewTrialFile> read(Path file, Findings findings, MomentParser moments) {
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
  public static List<NewTrialFile> read(
      byte[] content, Path folder, Findings findings, MomentParser moments) {
    return read(
        () -> LogText.of(content, findings), folder.resolve("table.csv"), findings, moments);
  }

  @FunctionalInterface
  private interface TextSource {
    String text() throws UnreadableFileException;
  }

  private static List<NewTrialFile> read(
      TextSource source, Path file, Findings findings, MomentParser moments) {
    try {
      return new TrialTable(findings, moments).rows(LogTable.of(source.text()), file);
    } catch (UnreadableFileException e) {
      findings.fault(e);
      return List.of();
    }
  }

  private List<NewTrialFile> rows(LogTable table, Path file) throws UnreadableFileException {
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
      Place place = new Place("the head", head.line(), i + 1);
      columns.add(column(head.cells().get(i), place, below(table, i)));
    }
    List<NewTrialFile> rows = new ArrayList<>();
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

  /** What stands in a column below its head; blank cells left out. */
  private static List<String> below(LogTable table, int column) {
    return table.rows().stream()
        .skip(1)
        .filter(row -> column < row.cells().size())
        .map(row -> row.cells().get(column))
        .filter(cell -> !cell.isBlank())
        .toList();
  }

  private Optional<FieldColumn> column(String written, Place place, List<String> cells) {
    Matcher index = INDEX.matcher(written);
    int entry = index.find() ? Integer.parseInt(index.group(1)) : 1;
    String key = INDEX.matcher(written).replaceAll("");
    TrialField field = KEYS.get(key);
    if (field != null) {
      return Optional.of(new FieldColumn(key, entry, field, ""));
    }
    if (written.isEmpty() || written.startsWith("_")) {
      return Optional.empty();
    }
    if (NOTE.matcher(written).matches()) {
      boolean rates = cells.stream().allMatch(cell -> MARK.matcher(cell).matches());
      TrialField means = Objects.requireNonNull(KEYS.get(rates ? "rating" : "remarks"));
      findings.notice(
          place,
          rates
              ? "\"%s\" is read as rating, for each cell is a number from 1 to 5; call it remarks if they are none"
                  .formatted(written)
              : "\"%s\" is read as remarks, for not each cell is a number from 1 to 5"
                  .formatted(written));
      return Optional.of(new FieldColumn(means.path(), entry, means, ""));
    }
    Optional<ColumnWords.Meaning> meant = ColumnWords.of(INDEX.matcher(written).replaceAll(" "));
    if (meant.isPresent()) {
      TrialField means = Objects.requireNonNull(KEYS.get(meant.get().key()));
      findings.notice(
          place,
          '"' + written + "\" is read as " + means.path() + inUnit(means, meant.get().unit()));
      return Optional.of(new FieldColumn(means.path(), entry, means, meant.get().unit()));
    }
    findings.fault(
        place,
        '"' + written + '"',
        "a key of a trial file",
        NearMiss.of(key, KEYS.keySet())
            .map(near -> "did you mean " + near + "?")
            .orElse("see check --keys; a column of your own may begin with _"));
    return Optional.empty();
  }

  /** The path of a key in a trial whose lists are objects with numbers for names. */
  private static String path(String key, int entry) {
    return LISTS.stream()
        .filter(list -> key.startsWith(list + "."))
        .findFirst()
        .map(list -> list + "." + entry + key.substring(list.length()))
        .orElse(key);
  }

  private static String inUnit(TrialField field, String unit) {
    String counted = unit.isEmpty() ? field.unit() : unit;
    return counted.isEmpty() ? "" : ", bare numbers in " + counted;
  }

  private NewTrialFile row(LogRow row, List<Optional<FieldColumn>> columns, Path file) {
    ObjectValue trial = new ObjectValue(new Place("", row.line(), 1), Map.of(), List.of());
    for (int i = 0; i < row.cells().size(); i++) {
      String cell = row.cells().get(i);
      if (!cell.isEmpty() && columns.get(i).isPresent()) {
        FieldColumn column = columns.get(i).get();
        Place place = new Place(column.key(), row.line(), i + 1);
        try {
          trial = with(trial, column, column.measured(cell), place);
        } catch (MistypedException e) {
          findings.fault(place, e.given(), e.allowed(), e.mend());
        }
      }
    }
    for (String list : LISTS) {
      if (trial.at(list).isPresent() && trial.at(list).get() instanceof ObjectValue entries) {
        trial = trial.with(list, listed(list, entries));
      }
    }
    String name =
        trial.get("name").orElse(trial) instanceof TextValue words
            ? words.text()
            : "Row " + row.line();
    trial = trial.with("name", new TextValue(trial.place(), name));
    Findings here = new Findings(findings.file());
    new TrialReader().read(trial, file.resolveSibling("new.json"), here);
    findings.faults().addAll(here.faults());
    return new NewTrialFile(name, LocatedWriter.lines(trial));
  }

  /** The entries of a list in the order of their numbers. */
  private static ListValue listed(String list, ObjectValue entries) {
    List<Located> inOrder = new ArrayList<>();
    entries.members().keySet().stream()
        .sorted(Comparator.comparing(Integer::valueOf))
        .forEach(
            number -> {
              Map<String, Member> members =
                  ((ObjectValue) entries.get(number).orElseThrow()).members();
              Place first = members.values().iterator().next().key();
              Place place = new Place(list + "[" + number + "]", first.line(), first.column());
              inOrder.add(new ObjectValue(place, members, List.of()));
            });
    return new ListValue(entries.place(), inOrder);
  }

  /** The trial with what stands in a cell, which may say more than its column. */
  private ObjectValue with(ObjectValue trial, FieldColumn column, String cell, Place place) {
    String path = column.path();
    boolean isKnown = !UNKNOWN.matcher(cell).matches();
    Function<String, Place> at =
        field -> {
          refuseSecond(trial, path(field, column.entry()), cell);
          return new Place(field, place.line(), place.column());
        };
    refuseSecond(trial, path, cell);
    if (column.key().equals(KIND) && isKnown) {
      WrittenStarch starch = WrittenStarch.all(List.of(cell)).get(0);
      if (starch.isFlour()) {
        findings.notice(place, starch.remark());
      }
      String portion = path.replaceFirst("kind$", "");
      return starch.into(
          trial, portion, TrialTable::grams, field -> at.apply(KIND.replace("kind", field)));
    }
    if (column.key().equals("pour.plate.material")) {
      WrittenPlates plates = WrittenPlates.parse(cell);
      if (!WrittenPlates.remark(plates.plate()).isEmpty()) {
        findings.notice(place, WrittenPlates.remark(plates.plate()));
      }
      return plates.into(trial, !WrittenPlates.isSizeless(cell), at);
    }
    if (column.key().endsWith("mass_g")
        && KEYS.containsKey(Volumes.field(column.key()))
        && isKnown) {
      return Quantities.into(trial, path, grams(cell), place);
    }
    return trial.with(path, value(column.field(), cell, place));
  }

  /** Of two columns that say the same neither wins; a volume says the same as a mass. */
  private static void refuseSecond(ObjectValue trial, String path, String cell) {
    boolean isKnown = !UNKNOWN.matcher(cell).matches();
    for (String one : List.of(path, isKnown ? Volumes.field(path) : path)) {
      Optional<Located> before = trial.at(one);
      if (before.isPresent()) {
        String key = one.replaceFirst("\\.1\\.", ".").replaceFirst("\\.([0-9]+)\\.", "[$1].");
        throw new MistypedException(
            cell,
            "one cell of a row for " + key,
            "column %d says it, too; leave one out, begin its head with _%s"
                .formatted(
                    before.get().place().column(),
                    key.equals(one) ? "" : ", or put [2] behind it if it is of a second one"));
      }
    }
  }

  /** What is given without a unit is weighed in grams. */
  private static TypedAmount grams(String typed) {
    return TypedAmount.inUnit("g", typed, Dimension.VOLUME);
  }

  private Located value(TrialField field, String cell, Place place) {
    return field.many()
        ? new ListValue(
            place,
            Stream.of(cell.split(";", -1))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .map(one -> single(field, one, place))
                .toList())
        : single(field, cell, place);
  }

  private Located single(TrialField field, String cell, Place place) {
    return switch (field.kind()) {
      case FLAG -> flag(cell, place);
      case CLOCK -> new TextValue(place, pour(cell));
      default -> FieldInput.of(field, cell, place);
    };
  }

  /** A day without an hour stays one, so that its noon is told wherever it is assumed. */
  private String pour(String cell) {
    return moments
        .noonOf(cell)
        .map(noon -> noon.toLocalDate().toString())
        .orElseGet(() -> NoteWords.pour(moments, cell).toString());
  }

  private static Located flag(String cell, Place place) {
    return switch (cell.toLowerCase(Locale.ROOT)) {
      case "true", "yes", "1" -> new WordValue(place, Optional.of(true));
      case "false", "no", "0" -> new WordValue(place, Optional.of(false));
      default -> throw new MistypedException(cell, "true or false", "write one of these");
    };
  }
}
