package starchfilm.files.roomlog;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import starchfilm.files.amount.Wording;
import starchfilm.files.findings.Allowed;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.roomlog.LogTable.LogRow;

/**
 * The columns of a room log by what they hold.
 *
 * @param count how many columns there are
 * @param date date, or date and time
 * @param timeOfDay time of day where it has a column of its own, or -1
 * @param air temperature
 * @param humidity relative humidity (%)
 * @param scale degrees Celsius or Fahrenheit, or not said
 * @param countedIn what a bare number in the time column counts (s), from the pour on; empty where
 *     nothing says
 * @param isOneOfSeveral whether there are more columns of temperature or humidity than these
 */
record LogColumns(
    int count,
    int date,
    int timeOfDay,
    int air,
    int humidity,
    Degrees scale,
    OptionalDouble countedIn,
    boolean isOneOfSeveral) {
  /** What a temperature is counted in. */
  enum Degrees {
    /** Said to be Celsius. */
    CELSIUS,
    /** Said to be Fahrenheit. */
    FAHRENHEIT,
    /** Taken as Celsius. */
    NOT_SAID
  }

  private static final Map<String, Pattern> HEADS =
      Wording.packed(LogColumns.class, "heads.words", "column", "%s").stream()
          .collect(Collectors.toMap(Wording::meaning, Wording::words));
  private static final List<Wording> COUNTED_IN =
      Wording.packed(LogColumns.class, "heads.words", "seconds", "%s");
  private static final Pattern TIME_OF_DAY = Pattern.compile("\\d{1,2}:\\d{2}.*");

  /** No room with a film in it is warmer than this where nobody says so (degrees Celsius). */
  static final double WARM_ROOM_C = 45;

  /** True where the row holds words instead of readings. */
  static boolean isHeader(LogRow row) {
    return LogDate.parse(row.cells().get(0)).isEmpty()
        && row.cells().stream().noneMatch(cell -> LogReading.number(cell).isPresent());
  }

  /** The columns that a header names, if it names all three. */
  static Optional<LogColumns> named(LogRow header) {
    List<String> names =
        header.cells().stream()
            .map(Wording::plain)
            .map(name -> says("dew", name) ? "" : name)
            .toList();
    IntPredicate isTime = i -> says("time", names.get(i)) && !names.get(i).contains("temp");
    IntPredicate isHumidity = isTime.negate().and(i -> says("humidity", names.get(i)));
    IntPredicate isAir = isTime.or(isHumidity).negate().and(i -> says("air", names.get(i)));
    int count = names.size();
    int date = first(0, count, isTime);
    int timeOfDay = first(date + 1, count, isTime.and(i -> says("clock", names.get(i))));
    int humidity = first(0, count, isHumidity);
    int air = first(0, count, isAir);
    if (date < 0 || air < 0 || humidity < 0) {
      return Optional.empty();
    }
    Degrees scale = scale(names.get(air));
    OptionalDouble unit = unit(names.get(date));
    boolean more = first(air + 1, count, isAir) >= 0 || first(humidity + 1, count, isHumidity) >= 0;
    return Optional.of(new LogColumns(count, date, timeOfDay, air, humidity, scale, unit, more));
  }

  private static int first(int from, int count, IntPredicate wanted) {
    return IntStream.range(from, count).filter(wanted).findFirst().orElse(-1);
  }

  private static boolean says(String what, String name) {
    return Objects.requireNonNull(HEADS.get(what)).matcher(name).find();
  }

  private static Degrees scale(String name) {
    if (says("fahrenheit", name)) {
      return Degrees.FAHRENHEIT;
    }
    return says("celsius", name) ? Degrees.CELSIUS : Degrees.NOT_SAID;
  }

  private static OptionalDouble unit(String name) {
    return COUNTED_IN.stream()
        .filter(wording -> wording.words().matcher(name).find())
        .mapToDouble(wording -> Double.parseDouble(wording.meaning()))
        .findFirst();
  }

  static UnreadableFileException notNamed(LogRow header) {
    return new UnreadableFileException(
        Place.of(header.line()),
        "the columns " + String.join(", ", header.cells()),
        "one column each for time, \u00B0C and % RH",
        "name them time, air_C and rh_pct in the first row");
  }

  /** The columns of a log without a header: time, air, humidity, wherever the time stands. */
  static LogColumns unnamed(List<LogRow> rows) throws UnreadableFileException {
    LogRow first = rows.get(0);
    List<String> row = first.cells();
    int date = Math.max(0, first(0, row.size(), i -> isDate(row, i)));
    boolean apart =
        row.size() >= date + 4
            && TIME_OF_DAY.matcher(row.get(date + 1)).matches()
            && LogDate.parse(row.get(date) + " " + row.get(date + 1)).isPresent();
    int before = date + (apart ? 2 : 1);
    if (row.size() < before + 2) {
      throw new UnreadableFileException(
          Place.of(first.line()),
          row.size() == 1 ? "one column" : row.size() + " columns",
          "time, \u00B0C and % RH, separated by comma, semicolon or tab",
          "export the log with these three columns");
    }
    // A row torn by decimal commas counts two cells too many.
    int count = row.size() == before + 4 ? before + 2 : row.size();
    LogColumns columns =
        new LogColumns(
            count,
            date,
            apart ? date + 1 : -1,
            before,
            before + 1,
            Degrees.NOT_SAID,
            OptionalDouble.empty(),
            false);
    columns.refuseSwapped(rows);
    return columns;
  }

  /** Whether a date, perhaps with its time in the next cell, stands in a cell. */
  static boolean isDate(List<String> row, int at) {
    return LogDate.parse(row.get(at)).isPresent()
        || (at + 1 < row.size() && LogDate.parse(row.get(at) + " " + row.get(at + 1)).isPresent());
  }

  /** Without names and units a humidity in front of a temperature is asked about, not guessed. */
  private void refuseSwapped(List<LogRow> rows) throws UnreadableFileException {
    double warmest = Double.NEGATIVE_INFINITY;
    double dampest = Double.NEGATIVE_INFINITY;
    for (LogRow row : rows) {
      if (row.cells().size() != count) {
        continue;
      }
      String left = row.cells().get(air);
      String right = row.cells().get(humidity);
      if (left.endsWith("%") || right.matches(".*\u00B0.*")) {
        throw swapped(row.line(), left, right);
      }
      if (!(LogReading.unit(left) + LogReading.unit(right)).isEmpty()) {
        return;
      }
      warmest = Math.max(warmest, LogReading.number(left).orElse(warmest));
      dampest = Math.max(dampest, LogReading.number(right).orElse(dampest));
    }
    if (warmest > WARM_ROOM_C && dampest < WARM_ROOM_C) {
      throw swapped(
          rows.get(0).line(), "up to " + Allowed.plain(warmest), "up to " + Allowed.plain(dampest));
    }
  }

  private static UnreadableFileException swapped(int line, String left, String right) {
    return new UnreadableFileException(
        Place.of(line),
        "columns without names that hold " + left + " and then " + right,
        "\u00B0C before % RH where no row names them",
        "if humidity comes first, write time,rh_pct,air_C as the first row");
  }

  /** Date and time of a row as one text, if the row has them. */
  Optional<String> moment(List<String> cells) {
    if (cells.size() <= Math.max(date, Math.max(timeOfDay, Math.max(air, humidity)))) {
      return Optional.empty();
    }
    return Optional.of(
        timeOfDay < 0 ? cells.get(date) : cells.get(date) + " " + cells.get(timeOfDay));
  }
}
