package starchfilm.files.roomlog;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.roomlog.LogTable.LogRow;
import starchfilm.numerics.units.Plural;

/**
 * The readings of a room log, what a logger writes above them taken off.
 *
 * @param columns which column holds what
 * @param rows the rows of readings
 */
record LogBody(LogColumns columns, List<LogRow> rows) {
  /** A head or a first reading stands within so many rows. */
  private static final int LOOK_ROWS = 60;

  static LogBody of(LogTable table, Findings log) throws UnreadableFileException {
    List<LogRow> rows = table.rows();
    int look = Math.min(LOOK_ROWS, rows.size());
    Optional<LogRow> strange = Optional.empty();
    for (int i = 0; i < look; i++) {
      LogRow row = rows.get(i);
      boolean words = LogColumns.isHeader(row);
      Optional<LogColumns> named = words ? LogColumns.named(row) : Optional.empty();
      if (named.isPresent()) {
        tell(rows, i, log);
        tell(row, named.get(), log);
        return new LogBody(named.get(), rows.subList(i + 1, rows.size()));
      }
      if (words && row.cells().size() >= 3 && strange.isEmpty()) {
        strange = Optional.of(row);
      }
      if (isReading(row)) {
        if (strange.isPresent()) {
          throw LogColumns.notNamed(strange.get());
        }
        tell(rows, i, log);
        List<LogRow> body = rows.subList(i, rows.size());
        return new LogBody(LogColumns.unnamed(body), body);
      }
    }
    if (LogColumns.isHeader(rows.get(0))) {
      throw LogColumns.notNamed(strange.orElse(rows.get(0)));
    }
    return new LogBody(LogColumns.unnamed(rows), rows);
  }

  /** A row with a date and two numbers. */
  private static boolean isReading(LogRow row) {
    List<String> cells = row.cells();
    long numbers = cells.stream().filter(cell -> LogReading.number(cell).isPresent()).count();
    boolean dated = IntStream.range(0, cells.size()).anyMatch(at -> LogColumns.isDate(cells, at));
    return dated && numbers >= 2;
  }

  private static void tell(LogRow header, LogColumns columns, Findings log) {
    if (columns.isOneOfSeveral()) {
      log.notice(
          Place.of(header.line()),
          "of several columns of temperature or humidity, \"%s\" and \"%s\" are read; for another sensor, put its columns first"
              .formatted(
                  header.cells().get(columns.air()), header.cells().get(columns.humidity())));
    }
  }

  private static void tell(List<LogRow> rows, int above, Findings log) {
    if (above > 0) {
      log.notice(
          Place.of(rows.get(0).line()), Plural.of(above, "line") + " above the readings skipped");
    }
  }
}
