package starchfilm.film;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads a published table that lies beside the tests of this room. */
final class PublishedTable {
  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  private PublishedTable() {}

  static List<PublishedRow> read(String file) {
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(PublishedTable.class.getResourceAsStream(file), file),
            StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).stream().map(PublishedRow::new).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One row, by the names of its columns. */
  record PublishedRow(CSVRecord cells) {
    String text(String column) {
      return cells.get(column);
    }

    double number(String column) {
      return Double.parseDouble(cells.get(column));
    }

    boolean has(String column) {
      return !cells.get(column).isEmpty();
    }
  }
}
