package starchfilm.report.data;

import java.util.List;
import org.apache.commons.csv.CSVFormat;

/** A line of a table for other programs. */
public final class CsvLine {
  private static final String FORMULA = "(?s)[=+@\\t-].*";
  private static final String FIGURE = "[+-]?[0-9.]+";

  private CsvLine() {}

  /**
   * The line.
   *
   * @param cells words and figures
   * @return with a line feed; words that a spreadsheet would run as a formula begin with an
   *     apostrophe
   */
  public static String of(List<?> cells) {
    return CSVFormat.DEFAULT.format(cells.stream().map(CsvLine::cell).toArray()) + "\n";
  }

  private static Object cell(Object cell) {
    return cell instanceof String words && words.matches(FORMULA) && !words.matches(FIGURE)
        ? "'" + words
        : cell;
  }
}
