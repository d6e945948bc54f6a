package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.change.TrialAnalyst;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.forecast.SameForAll;
import starchfilm.forecast.TrialForecaster;
import starchfilm.proof.Cases;
import starchfilm.proof.DemoTrials;
import starchfilm.proof.RoughJson;
import starchfilm.report.Comparison;
import starchfilm.report.ComparisonReport;
import starchfilm.report.PageRenderer;
import starchfilm.report.TrialForecasts;

/** Whatever stands in a trial file or a room log, the commands end in order and lose nothing. */
class RoughTrialFilesTest {
  private static final TrialAnalyst FEW_DRAWS =
      new TrialAnalyst(new TrialForecaster(SameForAll.TEXTBOOK));
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .build();

  @TempDir private Path folder;
  private final List<String> sound = new ArrayList<>();
  private Path file = Path.of("");

  @BeforeEach
  void readFormulations() throws IOException {
    file = folder.resolve("a.json");
    Files.copy(Path.of("formulations/garden/shed-april.csv"), folder.resolve("shed-april.csv"));
    for (Path each : DemoTrials.files()) {
      sound.add(Files.readString(each));
    }
  }

  @Test
  void checkSaysWhatIsWrong() {
    Cases.forEach(
        320,
        (random, number) -> {
          byte[] bytes = RoughJson.spoilt(RoughJson.any(sound, random), random);
          Files.write(file, bytes);
          Outcome check = Outcome.of(folder, "check", "a.json");
          assertThat(check.exit()).as(check.err()).isIn(0, 2);
          assertThat(check.exit() == 0).isEqualTo(check.err().isEmpty());
          assertThat(file).hasBinaryContent(bytes);
        });
  }

  @Test
  void whatCheckLetsThroughIsForecastOrRefusedInASentence() {
    ComparisonReport report = new ComparisonReport(new PageRenderer());
    Cases.forEach(
        10,
        (random, number) -> {
          String text = RoughJson.any(sound, random);
          do {
            Files.write(file, RoughJson.spoilt(text, random));
          } while (Outcome.of(folder, "check", "a.json").exit() != 0);
          Notebook notebook = NotebookReader.read(List.of(file));
          TrialForecasts forecasts = TrialForecasts.of(notebook.trials(), FEW_DRAWS::whole);
          assertThat(forecasts.done().size() + forecasts.failures().size()).isEqualTo(1);
          if (forecasts.failures().isEmpty()) {
            assertThat(report.html(Comparison.of(notebook, forecasts)))
                .startsWith("<!DOCTYPE html>")
                .doesNotContain("NaN", "Infinity");
          }
        });
  }

  @Test
  void noteAddsWhatItSaysOrNothing() {
    Cases.forEach(
        120,
        (random, number) -> {
          byte[] bytes = RoughJson.spoilt(RoughJson.any(sound, random), random);
          Files.write(file, bytes);
          Path before = folder.resolve("a.json.before");
          Files.deleteIfExists(before);
          String words = "seen " + number;
          Outcome note = Outcome.of(folder, "note", "a.json", "--remark", words, "--rating", "3");
          assertThat(note.exit()).as(note.err()).isIn(0, 2);
          if (note.exit() == 2) {
            assertThat(file).hasBinaryContent(bytes);
            assertThat(before).doesNotExist();
          } else {
            assertThat(before).hasBinaryContent(bytes);
            try {
              assertThat(tree(Files.readAllBytes(file))).isEqualTo(noted(tree(bytes), words));
            } catch (MismatchedInputException fieldTwice) {
              // Of a field given twice this library would take the last, the program the first.
              assertThat(file).content(StandardCharsets.UTF_8).contains(words);
              assertThat(note.err()).contains("has other faults");
            }
          }
        });
  }

  @Test
  void roomLogsAreReadOrRefused() throws IOException {
    byte[] log = Files.readAllBytes(Path.of("formulations/garden/shed-april.csv"));
    Files.writeString(
        file, sound.stream().filter(text -> text.contains("log_csv")).findFirst().orElseThrow());
    Path csv = folder.resolve("shed-april.csv");
    Cases.forEach(
        100,
        (random, number) -> {
          byte[] bytes = spoiltLog(new String(log, StandardCharsets.UTF_8), random);
          Files.write(csv, bytes);
          Outcome check = Outcome.of(folder, "check", "a.json");
          assertThat(check.exit()).as(check.err()).isIn(0, 2);
          assertThat(csv).hasBinaryContent(bytes);
        });
  }

  private static byte[] spoiltLog(String log, Random random) {
    List<String> lines = new ArrayList<>(log.lines().toList());
    List<String> cells =
        List.of(
            "",
            "NaN",
            "1e999",
            "-300",
            "101",
            "Infinity",
            "\"",
            "\"a\nb\"",
            "12,5",
            "2026-02-30",
            "99:99",
            "9999-12-31 23:59",
            "31.04.2026 10:00",
            "04/18/2026 10:00 AM",
            "1776502800",
            "=1+1",
            "\u00B0",
            "\u0660\u0661",
            "x".repeat(9_000));
    for (int n = 1 + random.nextInt(6); n > 0 && !lines.isEmpty(); n--) {
      int at = random.nextInt(3) == 0 ? 0 : random.nextInt(lines.size());
      String line = lines.get(at);
      switch (random.nextInt(8)) {
        case 0 -> lines.remove(at);
        case 1 -> lines.add(at, line);
        case 2 -> lines.set(random.nextInt(lines.size()), line);
        case 3 -> lines.replaceAll(each -> each.replace(',', ';'));
        case 4 -> lines.set(at, line.replaceFirst(",", ""));
        case 5 -> lines.subList(at, lines.size()).clear();
        default -> {
          String[] parts = line.split(",", -1);
          parts[random.nextInt(parts.length)] = RoughJson.any(cells, random);
          lines.set(at, String.join(",", parts));
        }
      }
    }
    String text = String.join("\n", lines);
    return random.nextInt(4) == 0
        ? RoughJson.spoiltBytes(text, random)
        : text.getBytes(StandardCharsets.UTF_8);
  }

  private static JsonNode tree(byte[] bytes) throws IOException {
    String text = new String(bytes, StandardCharsets.UTF_8);
    return JSON.readTree(text.startsWith("\uFEFF") ? text.substring(1) : text);
  }

  /** The tree with the note put in by other means than the program's. */
  private static JsonNode noted(JsonNode before, String words) {
    ObjectNode after = before.deepCopy();
    JsonNode remarks = after.get("remarks");
    if (remarks instanceof ArrayNode list) {
      list.add(words);
    } else {
      ArrayNode list = after.putArray("remarks");
      if (remarks != null) {
        list.add(remarks);
      }
      list.add(words);
    }
    return after.put("rating", 3);
  }
}
