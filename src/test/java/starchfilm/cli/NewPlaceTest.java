package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where a film dries, as the line of a new trial says it: room, air, fan, log and bench. */
class NewPlaceTest {
  @TempDir Path folder;
  private Terminal terminal;

  @BeforeEach
  void open() {
    terminal = new Terminal(folder);
  }

  @Test
  void takesAWarmBenchForABenchAndNotForTheAir() throws IOException {
    terminal.run("new", "20 g potato; 360 g water; 20C,50%; warm bench 95F; called A");

    assertThat(Files.readString(folder.resolve("a.json")))
        .as(terminal.err())
        .contains("\"bench_C\" : 35", "\"air_C\" : 20");
  }

  @Test
  void takesARoomByItsNameAlone() throws IOException {
    terminal.run("new", "20 g potato, 6 g glycerol, 360 g water; in the Kitchen; called A");

    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("\"name\" : \"Kitchen\"")
        .doesNotContain("air_C", "rh_pct", "air_speed_m_per_s");
  }

  /** "about" was the name of the room. */
  @ParameterizedTest
  @ValueSource(strings = {"about 20C, 50%", "about 20C,50%", "~20 C; 50 %"})
  void takesAboutForARoughWarmthAndNotForARoom(String air) throws IOException {
    assertThat(terminal.run("new", "20 g potato, 360 g water; 3 mm; called o; " + air))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);

    JsonNode room = new ObjectMapper().readTree(folder.resolve("o.json").toFile()).get("room");
    assertThat(room.has("name")).isFalse();
    assertThat(room.at("/air_C/from").asDouble()).isEqualTo(18);
    assertThat(room.get("rh_pct").asDouble()).isEqualTo(50);
  }

  /** The same plate by its file and as typed: what a place leaves open goes into the file. */
  @Test
  void keepsHowWidelyAPlaceDiffers() throws IOException {
    terminal.run("new", "20 g potato, 6 g bought glycerol, 360 g water; cellar; called A");
    Terminal byFile = new Terminal(folder);
    Terminal typed = new Terminal(folder);
    assertThat(byFile.run("dry", "a.json", "--json", "-")).as(byFile.err()).isZero();
    String[] asTyped = {
      "dry",
      "--starch",
      "20 g potato",
      "--glycerol",
      "6 g",
      "--origin",
      "bought",
      "--water",
      "360 g",
      "--room",
      "cellar",
      "--json",
      "-"
    };
    assertThat(typed.run(asTyped)).as(typed.err()).isZero();

    for (String end : List.of("low_h", "middle_h", "high_h")) {
      assertThat(dryThrough(byFile, end)).isCloseTo(dryThrough(typed, end), withinPercentage(2));
    }
  }

  private static double dryThrough(Terminal terminal, String end) throws IOException {
    JsonNode json = new ObjectMapper().readTree(terminal.out());
    return json.at("/spots/thick_spot/dry_through/" + end).asDouble();
  }

  @Test
  void assumesNoPourAtTheStartOfALogWhereThePourIsNoted() throws IOException {
    Files.writeString(
        folder.resolve("shed.csv"), "time,C,%\n2026-04-18T08:00,18,55\n2026-04-19T08:00,18,55\n");

    terminal.run("new", "20 g potato, 360 g water; 3 mm", "--room", "shed.csv");
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("the pour at the first line of the log");
    Outcome noted =
        Outcome.of(
            folder,
            "new",
            "20 g potato, 360 g water; 3 mm; 2026-04-18 18:30",
            "--room",
            "shed.csv");
    assertThat(noted.out()).contains("as-cooked-2").doesNotContain("the pour at the first");
  }

  @ParameterizedTest
  @ValueSource(strings = {"room log.csv", "\"room log.csv\"", "log: room log.csv"})
  void aHygrometerLogInTheLineIsTheRoom(String part) throws IOException {
    Files.writeString(
        folder.resolve("room log.csv"),
        "time,air_C,rh_pct\n2026-04-19 10:00,20,50\n2026-04-20 10:00,21,52\n");

    int exit =
        terminal.run(
            "new", "20 g potato, 6 g glycerol, 360 g water, 30x20cm, yesterday 18:30, " + part);

    assertThat(exit).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("as-cooked.json")))
        .contains("\"log_csv\" : \"room log.csv\"");
  }

  @Test
  void aFanIsItsAirAndOneForAPartOfTheTimeIsRefused() throws IOException {
    String cooked = "20 g potato, 6 g glycerol, 360 g water, 30x20cm, 20C 50%, ";

    assertThat(terminal.run("new", cooked + "a fan")).as(terminal.err()).isZero();
    assertThat(terminal.out()).contains("the air by a fan as 1 m/s");
    assertThat(Files.readString(folder.resolve("as-cooked.json")))
        .contains("\"air_speed_m_per_s\" : 1");

    assertThat(terminal.run("new", cooked + "a fan for a day")).isEqualTo(2);
    assertThat(terminal.err()).contains("a fan for a part of it is not modelled; write the mean");
  }

  @Test
  void theSpeedOfTheAirMayStandBesideALog() throws IOException {
    Files.writeString(
        folder.resolve("room.csv"),
        "time,air_C,rh_pct\n2026-04-19 10:00,20,50\n2026-04-20 10:00,21,52\n");

    int exit =
        terminal.run(
            "new", "20 g potato, 6 g glycerol, 360 g water, 30x20cm, room.csv, 0.5 m/s, 10 min");

    assertThat(exit).as(terminal.err()).isZero();
    assertThat(Files.readString(folder.resolve("as-cooked.json")))
        .contains("\"log_csv\" : \"room.csv\"", "\"air_speed_m_per_s\" : 0.5");
  }
}
