package starchfilm.material.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Row counts and column sums of the transcribed tables: a digit that slips later fails. */
class PublishedTablesTest {
  @ParameterizedTest
  @CsvSource({
    "bosart-snoddy-1927-density.csv, 11, 1, 12405.26",
    "bosart-snoddy-1927-density.csv, 11, 2, 12379.50",
    "bosart-snoddy-1927-density.csv, 11, 3, 12352.83",
    "gerke-2023-refractive-index.csv, 7, 1, 9.86034",
    "astm-d5032-glycerol.csv, 14, 2, 765.22",
    "water-activity-routes-25C.csv, 8, 1, 512.3",
    "vinegar-ph.csv, 5, 1, 14.91",
    "starch-handbook.csv, 7, 1, 142",
  })
  void tableIsWhole(String file, int rows, int column, double sum) {
    List<String[]> table = rows(file);

    assertThat(table).hasSize(rows);
    assertThat(table.stream().mapToDouble(row -> Double.parseDouble(row[column])).sum())
        .isCloseTo(sum, within(1e-6));
  }

  private static List<String[]> rows(String file) {
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(PublishedTablesTest.class.getResourceAsStream(file), file),
                StandardCharsets.UTF_8))) {
      return in.lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(","))
          .peek(row -> assertThat(Arrays.asList(row)).doesNotContain(""))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
