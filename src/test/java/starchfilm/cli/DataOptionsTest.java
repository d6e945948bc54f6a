package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every answer as a table and as JSON. */
class DataOptionsTest {
  private static final String PLAN =
      "plan --glycerol 100g --starch potato --plates 2x300x200mm --room 20C,50%";
  private static final String SERIES = PLAN + " --vary cook 5,10";

  @TempDir Path folder;
  private Terminal terminal;

  @BeforeEach
  void open() throws IOException {
    for (String name : List.of("2-little-glycerol.json", "4-blend.json")) {
      Files.copy(Path.of("formulations/garden", name), folder.resolve(name));
    }
    terminal = new Terminal(folder);
  }

  private static int run(Terminal terminal, String command, String... more) {
    return terminal.run(
        Stream.concat(Stream.of(command.split(" ")), Stream.of(more)).toArray(String[]::new));
  }

  private String answer(String command, String option) {
    Terminal fresh = new Terminal(folder);
    assertThat(run(fresh, command, option, "-")).as(fresh.err()).isZero();
    return fresh.out();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        PLAN,
        SERIES,
        "assay --mass 500g --label 99%",
        "thickness 4-blend.json --by 5d",
        "learn .",
        "check .",
        "compare ."
      })
  void writesTheSameRowsAsJsonAndAsCsv(String command) throws IOException {
    JsonNode json = new ObjectMapper().readTree(answer(command, "--json"));
    CSVFormat headed =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();
    List<CSVRecord> rows;
    try (CSVParser parser =
        CSVParser.builder()
            .setReader(new StringReader(answer(command, "--csv")))
            .setFormat(headed)
            .get()) {
      rows = parser.getRecords();
    }

    assertThat(rows).hasSize(json.get("rows").size()).isNotEmpty();
    for (int i = 0; i < rows.size(); i++) {
      CSVRecord row = rows.get(i);
      json.get("rows")
          .get(i)
          .properties()
          .forEach(
              cell -> {
                assertThat(row.get(cell.getKey())).isEqualTo(cell.getValue().asText());
                String documented = cell.getKey().replaceFirst("_(low|high)$", "");
                assertThat(json.get("keys").path(documented).asText()).isNotEmpty();
              });
    }
  }

  @Test
  void tellsAssumptionsAndDoubtedReadingsInside() throws IOException {
    Path file = folder.resolve("4-blend.json");
    Files.writeString(file, Files.readString(file).replace("\"mass_g\": 678", "\"mass_g\": 658"));
    JsonNode json = new ObjectMapper().readTree(answer("compare .", "--json"));

    assertThat(json.get("assumptions").toString()).contains("speed of the air as 0.1 m/s");
    assertThat(json.get("doubted").toString()).contains("The weighing at +21h is");
    assertThat(answer("compare .", "--csv"))
        .contains("\n# doubted: Potato and tapioca: The weighing at +21h");
  }

  @ParameterizedTest
  @ValueSource(strings = {"compare .", "check ."})
  void aNameIsNoFormulaInASpreadsheet(String command) throws IOException {
    Path file = folder.resolve("4-blend.json");
    Files.writeString(file, Files.readString(file).replace("Potato and tapioca", "=1+2"));

    assertThat(answer(command, "--csv")).contains("'=1+2").doesNotContain(",=1+2");
  }

  @ParameterizedTest
  @ValueSource(strings = {PLAN, "check .", "compare .", "dry 4-blend.json", "learn ."})
  void neverMixesTwoResultsOnStandardOutput(String command) {
    assertThat(run(terminal, command, "--csv", "-", "--json", "-"))
        .isEqualTo(ExitCodes.WRONG_INPUT);

    assertThat(terminal.err()).contains("--csv - beside --json - given, allowed one result");
    assertThat(terminal.out()).isEmpty();
  }

  @Test
  void writesBothToFilesBesideTheText() {
    assertThat(run(terminal, "thickness 4-blend.json --by 5d --csv t.csv --json t.json")).isZero();

    assertThat(terminal.out()).contains("in 9 of 10 likely cases");
    assertThat(folder.resolve("t.csv")).exists();
    assertThat(folder.resolve("t.json")).exists();
  }

  @Test
  void leavesAFileOfTheUsersAlone() throws IOException {
    Files.writeString(folder.resolve("mine.csv"), "time,weight\n1,2\n");

    assertThat(run(terminal, "compare . --csv mine.csv")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(Files.readString(folder.resolve("mine.csv"))).startsWith("time,weight");
  }

  @Test
  void compareWritesNoPageThatNobodyAskedFor() {
    run(terminal, "compare . --csv trials.csv");

    assertThat(folder.resolve("starchfilm.html")).doesNotExist();
    assertThat(folder.resolve("trials.csv")).exists();
  }

  @Test
  void keepsEveryCellOfANameWithCommasQuotesAndLineBreaks() throws IOException {
    String text = Files.readString(folder.resolve("4-blend.json"));
    Files.writeString(
        folder.resolve("odd.json"),
        text.replace("\"Potato and tapioca\"", "\"a, \\\"b\\\"\\n#c\""));

    assertThat(answer("compare odd.json", "--csv")).contains("\"a, \"\"b\"\" #c\"");
  }
}
