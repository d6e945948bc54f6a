package starchfilm.files.roomlog;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;

/**
 * A room log cut into rows and cells, whatever it is separated by.
 *
 * @param rows the rows that are neither empty nor comments
 */
public record LogTable(char separator, List<LogRow> rows) {
  private static final int MAX_ROWS = 300_000;
  private static final int LOOK_LINES = 30;

  /** Copies the list. */
  public LogTable {
    rows = List.copyOf(rows);
  }

  /**
   * A row.
   *
   * @param line line it ends at, from 1
   * @param cells its cells, blanks around them taken off
   */
  public record LogRow(int line, List<String> cells) {
    /** Copies the list. */
    public LogRow {
      cells = List.copyOf(cells);
    }
  }

  /** Cuts a text. */
  public static LogTable of(String text) throws UnreadableFileException {
    char separator = separator(text);
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(separator)
            .setCommentMarker('#')
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .get();
    List<LogRow> rows = new ArrayList<>();
    int line = 0;
    try (CSVParser parser =
        CSVParser.builder().setReader(new StringReader(text)).setFormat(format).get()) {
      for (CSVRecord record : parser) {
        line = (int) parser.getCurrentLineNumber();
        if (rows.size() == MAX_ROWS) {
          throw new UnreadableFileException(
              Place.of(line),
              "more than " + MAX_ROWS + " rows",
              "at most that many",
              "cut the log down to the days of the trial");
        }
        List<String> cells = record.toList();
        if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
          rows.add(new LogRow(line, cells));
        }
      }
    } catch (IOException | UncheckedIOException e) {
      throw new UnreadableFileException(
          Place.of(line + 1),
          "a row whose quotation marks do not close",
          "rows of time, \u00B0C and % RH",
          "look for a lone \" in this row");
    }
    return new LogTable(separator, rows);
  }

  /** The separator that most of the first lines hold; a comma counts last, as it may be decimal. */
  private static char separator(String text) {
    List<String> lines =
        text.lines()
            .filter(line -> !line.isBlank() && !line.startsWith("#"))
            .limit(LOOK_LINES)
            .map(line -> line.replaceAll("\"[^\"]*\"", ""))
            .toList();
    for (char candidate : new char[] {';', '\t'}) {
      long with = lines.stream().filter(line -> line.indexOf(candidate) >= 0).count();
      if (with * 2 > lines.size()) {
        return candidate;
      }
    }
    return ',';
  }

  /**
   * The cells of a row; numbers that decimal commas tore apart in a table separated by commas are
   * joined.
   *
   * @return the cells, the last two joined each from two, if that gives the right number
   */
  List<String> cells(LogRow row, int columns) {
    List<String> cells = row.cells();
    if (separator != ',' || cells.size() != columns + 2 || columns < 3) {
      return cells;
    }
    int first = columns - 2;
    List<String> joined = new ArrayList<>(cells.subList(0, first));
    joined.addAll(
        Arrays.asList(
            cells.get(first) + "." + cells.get(first + 1),
            cells.get(first + 2) + "." + cells.get(first + 3)));
    return joined;
  }
}
