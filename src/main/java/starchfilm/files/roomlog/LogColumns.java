package starchfilm.files.roomlog;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import starchfilm.files.json.UnreadableFileException;

/**
 * Which column of a room log holds what.
 *
 * @param date date, or date and time
 * @param timeOfDay time of day where it has a column of its own, or -1
 * @param humidity relative humidity (%)
 */
record LogColumns(int count, int date, int timeOfDay, int air, int humidity) {
  private static final Pattern TIME = Pattern.compile("time|date|datum|zeit|stamp");
  private static final Pattern CLOCK_ONLY = Pattern.compile("(time|zeit|uhrzeit)\\b.*");
  private static final Pattern DEW = Pattern.compile("dew|taupunkt|wet.?bulb");
  private static final Pattern HUMIDITY = Pattern.compile("hum|\\brh\\b|rh_|feucht|%");
  private static final Pattern AIR = Pattern.compile("temp|\u00B0c|celsius|air_c|\\bc\\b|\\bt\\b");
  private static final Pattern FAHRENHEIT = Pattern.compile("\u00B0f|fahrenheit|\\(f\\)|_f\\b");
  private static final Pattern TIME_OF_DAY = Pattern.compile("\\d{1,2}:\\d{2}.*");

  /** True where the row holds words instead of readings. */
  static boolean isHeader(LogTable.Row row) {
    return LogDate.parse(row.cells().get(0)).isEmpty()
        && row.cells().stream().noneMatch(cell -> LogReading.number(cell).isPresent());
  }

  /** The columns that a header names. */
  static LogColumns named(LogTable.Row header) throws UnreadableFileException {
    List<String> names =
        header.cells().stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
    int date = -1;
    int timeOfDay = -1;
    int air = -1;
    int humidity = -1;
    for (int i = 0; i < names.size(); i++) {
      String name = names.get(i);
      if (DEW.matcher(name).find()) {
        continue;
      }
      if (FAHRENHEIT.matcher(name).find()) {
        throw new UnreadableFileException(
            header.line(),
            0,
            "a temperature in degrees Fahrenheit",
            "degrees Celsius",
            "set the logger to \u00B0C and export again");
      }
      if (TIME.matcher(name).find()) {
        if (date < 0) {
          date = i;
        } else if (timeOfDay < 0 && CLOCK_ONLY.matcher(name).matches()) {
          timeOfDay = i;
        }
      } else if (humidity < 0 && HUMIDITY.matcher(name).find()) {
        humidity = i;
      } else if (air < 0 && AIR.matcher(name).find()) {
        air = i;
      }
    }
    if (date < 0 || air < 0 || humidity < 0) {
      throw new UnreadableFileException(
          header.line(),
          0,
          "the columns " + String.join(", ", header.cells()),
          "one column each for time, \u00B0C and % RH",
          "name them time, air_C and rh_pct in the first row");
    }
    return new LogColumns(names.size(), date, timeOfDay, air, humidity);
  }

  /** The columns of a log without a header: time, air, humidity. */
  static LogColumns unnamed(LogTable.Row first) throws UnreadableFileException {
    int cells = first.cells().size();
    boolean apart =
        cells >= 4
            && TIME_OF_DAY.matcher(first.cells().get(1)).matches()
            && LogDate.parse(first.cells().get(0) + " " + first.cells().get(1)).isPresent();
    int before = apart ? 2 : 1;
    if (cells < before + 2) {
      throw new UnreadableFileException(
          first.line(),
          0,
          cells == 1 ? "one column" : cells + " columns",
          "time, \u00B0C and % RH, separated by comma, semicolon or tab",
          "export the log with these three columns");
    }
    // A row torn by decimal commas counts two cells too many.
    int count = cells == before + 4 ? before + 2 : cells;
    return new LogColumns(count, 0, apart ? 1 : -1, before, before + 1);
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
