package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Noon of 20 April 2026 stands on the clock. */
class TodayCommandTest {
  @TempDir Path folder;
  private Terminal terminal;

  @BeforeEach
  void open() {
    terminal = new Terminal(folder);
  }

  private void plate(String name, String pouredAt, String more) throws IOException {
    Files.writeString(
        folder.resolve(name + ".json"),
        """
        {"name": "%s", "poured_at": "%s",
         "recipe": {"starch": {"kind": "potato", "mass_g": 20.0},
                    "glycerol": {"mass_g": 6, "purity_pct": 99}, "water": {"mass_g": 360}},
         "cook": {"minutes": 10, "top_C": 90, "water_lost_g": 25},
         "pour": {"plate": {"material": "glass", "length_mm": 300, "width_mm": 200,
                            "tare_g": 600}, "plates": 2, "wet_thickness_mm": 2.5},
         "room": {"name": "kitchen", "air_C": 21, "rh_pct": 50, "air_speed_m_per_s": 0.1}%s}
        """
            .formatted(name, pouredAt, more.isEmpty() ? "" : ", " + more));
  }

  private String said(String... words) {
    assertThat(terminal.run(words)).as(terminal.err()).isZero();
    return terminal.out().replaceAll("\\s+", " ");
  }

  @Test
  void putsTheMostUrgentPlateFirst() throws IOException {
    plate("Fresh", "2026-04-20T10:00", "");
    plate("Done", "2026-04-15T10:00", "");
    plate("Forgotten", "2026-03-10T10:00", "");

    assertThat(said("today"))
        .containsSubsequence(
            "4 plates need you", "Peel Done (2 plates) now", "Check Forgotten (2 plates)", "Fresh");
  }

  /** A plate of the year 2000 should have been ready by Wed 5 Jan. */
  @Test
  void aPlateOfAnotherYearIsDatedWithIt() throws IOException {
    plate("Lost", "2000-01-01T09:00", "");
    plate("Recent", "2026-03-10T10:00", "");

    assertThat(said("today"))
        .containsPattern(
            "Check Lost \\(2 plates\\): it should have been ready by \\w+ \\d Jan 2000\\.")
        .containsPattern(
            "Check Recent \\(2 plates\\): it should have been ready by \\w+ \\d+ Mar\\.");
  }

  /** It said 10 g (−11 to 31). */
  @Test
  void aFilmNeverWeighsLessThanNothing() throws IOException {
    plate(
        "Coarse",
        "2026-04-15T10:00",
        "\"scale_g\": 100, \"weighings\": [{\"at\": \"+2h\", \"mass_g\": 740}]");
    Path file = folder.resolve("Coarse.json");
    Files.writeString(file, Files.readString(file).replaceAll(",\\s*\"tare_g\": 600", ""));

    assertThat(said("today")).contains("The film alone").containsPattern("now \\d+ g \\(0–\\d+\\)");
  }

  @Test
  void saysWhetherTheRoomIsCorrected() throws IOException {
    plate("Fresh", "2026-04-20T10:00", "");
    assertThat(said("today")).contains("Nothing has been learnt yet; the forecasts use textbook");

    Files.copy(
        Path.of("formulations/garden/workshop.json").toAbsolutePath(),
        folder.resolve("workshop.json"));
    assertThat(said("today")).contains("nothing is known about this room yet");
    Path file = folder.resolve("Fresh.json");
    Files.writeString(file, Files.readString(file).replace("kitchen", "workroom"));
    assertThat(said("today")).contains("Learnt from your trials: your room \"workroom\" dries");
  }

  @Test
  void leavesOutTheWrongNoteAndNotThePlate() throws IOException {
    plate("Done", "2026-04-15T10:00", "\"weighings\": [{\"at\": \"+6h\", \"mass_g\": \"heavy\"}]");

    for (String command : List.of("today", "compare", "dry")) {
      assertThat(terminal.run(command, "Done.json")).as(command).isEqualTo(2);
      assertThat(terminal.err())
          .as(command)
          .contains("weighings[1].mass_g")
          .contains("Done.json: the rest of this trial is used, without what is wrong.");
      assertThat(terminal.out()).as(command).isNotEmpty();
    }
    assertThat(terminal.run("dry", "Done.json", "--wet", "2")).isEqualTo(2);
    assertThat(terminal.out()).contains("peelable");
  }

  /** A cool, damp shed; glycerol of unknown origin may hold methanol. */
  @Test
  void tellsOfAFanOnlyWhereOneMayRun() throws IOException {
    plate("Shed", "2026-04-15T10:00", "");
    Path shed = folder.resolve("Shed.json");
    String damp =
        Files.readString(shed)
            .replace("\"air_C\": 21, \"rh_pct\": 50", "\"air_C\": 17, \"rh_pct\": 75")
            .replace("\"wet_thickness_mm\": 2.5", "\"wet_thickness_mm\": 6");

    Files.writeString(shed, damp);
    assertThat(said("today"))
        .contains("for mould", "no fan: the glycerol may hold methanol")
        .doesNotContain("a fan,");

    Files.writeString(
        shed, damp.replace("\"purity_pct\"", "\"origin\": \"bought\", \"purity_pct\""));
    open();
    assertThat(said("today"))
        .contains("If it shows none, dry it faster. What helps most is ")
        .doesNotContainIgnoringCase("no fan");
  }

  @Test
  void saysWhyAWeighingIsWorthIt() throws IOException {
    plate("Halfway", "2026-04-19T10:00", "");

    assertThat(said("today"))
        .containsPattern(
            "Weigh Halfway \\(2 plates\\) now: that .*range of its drying time, from .* to about")
        .contains("it has no weighing to go by yet");
  }

  @Test
  void asksForTheEmptyPlateWhereAWeighingIsNoUseWithoutIt() throws IOException {
    plate("Bare", "2026-04-19T10:00", "\"weighings\": [{\"at\": \"+6h\", \"mass_g\": 725}]");
    Path bare = folder.resolve("Bare.json");
    Files.writeString(
        bare, Files.readString(bare).replaceFirst(",\\s*\"tare_g\": 600}, \"plates\": 2", "}"));

    assertThat(said("today"))
        .contains("it has no weighing to go by yet (note what the plate weighs empty, too)");
  }

  @Test
  void peelsByTheScale() throws IOException {
    plate(
        "Quick",
        "2026-04-19T10:00",
        "\"weighings\": [{\"at\": \"+6h\", \"mass_g\": 660}, {\"at\": \"+20h\", \"mass_g\": 611}]");

    assertThat(said("today", "--json", "-"))
        .contains("\"need\" : \"peel\"")
        .containsPattern("ready when the scale shows 6[01][0-9] g, it showed 611 g");
  }

  @Test
  void tellsPlatesOfOnePourApartOnceTheyAreWeighed() throws IOException {
    plate(
        "Pair",
        "2026-04-19T10:00",
        "\"plates\": [{\"plate\": 2, \"tare_g\": 640}], \"weighings\": [{\"at\": \"+6h\","
            + " \"mass_g\": 725}, {\"at\": \"+6h\", \"mass_g\": 772, \"plate\": 2}]");

    assertThat(said("today")).contains("Pair, plate 1").contains("Pair, plate 2");
  }

  @Test
  void leavesOutAPlateThatWasGivenUp() throws IOException {
    plate("Spilt", "2026-04-19T10:00", "\"plates\": [{\"given_up\": \"spilt\"}]");

    assertThat(said("today")).contains("No plate is drying.");
  }

  @Test
  void asksAboutAPourThatIsStillToComeAsWhenTheClockWasSetBack() throws IOException {
    plate("Tomorrow", "2026-04-21T10:00", "");

    assertThat(said("today"))
        .contains("Tomorrow is noted as poured Tue 21 Apr 2026, 10:00, which is in the future")
        .contains("and is the clock of this computer right?");
  }

  /** Another clock may be ahead by minutes, and a day without an hour is read as its noon. */
  @Test
  void namesAPourOfTodayThatCountsFromNoonWithoutDoubt() throws IOException {
    terminal =
        new Terminal(folder, Clock.fixed(Instant.parse("2026-04-20T09:00:00Z"), ZoneOffset.UTC));
    plate("Undated", "2026-04-20", "");
    plate("Phone", "2026-04-20T09:02", "");

    assertThat(said("today"))
        .contains(
            "Undated is noted as poured Mon 20 Apr 2026, 12:00, and is listed here from then on.",
            "Phone is noted as poured Mon 20 Apr 2026, 9:02, and is listed here from then on.")
        .doesNotContain("in the future");
  }

  @Test
  void leavesOutWeighingsThatAreStillToComeAndAsks() throws IOException {
    plate("Later", "2026-04-19T10:00", "\"weighings\": [{\"at\": \"+90h\", \"mass_g\": 612}]");

    assertThat(said("today"))
        .contains("One weighing lies in the future")
        .contains("it has no weighing to go by yet")
        .doesNotContain("it showed");
  }

  @Test
  void looksAtAFolderWithoutPlates() throws IOException {
    Files.writeString(folder.resolve("shopping.txt"), "starch");

    assertThat(terminal.run("today")).isEqualTo(2);
    assertThat(terminal.err()).contains("a folder without trial files");
  }

  @Test
  void looksAtTwoHundredPlates() throws IOException {
    plate("Many", "2026-04-19T10:00", "");
    Path many = folder.resolve("Many.json");
    Files.writeString(many, Files.readString(many).replace("\"plates\": 2", "\"plates\": 200"));

    assertThat(said("today"))
        .contains("200 plates need you")
        .contains("Weigh Many (200 plates) now");
  }

  @Test
  void writesTheSameFiguresAsJsonAndAsATable() throws IOException {
    plate("Halfway", "2026-04-19T10:00", "");
    terminal.run("today", "--json", "today.json", "--csv", "today.csv");

    JsonNode today = new ObjectMapper().readTree(folder.resolve("today.json").toFile());
    JsonNode plate = today.at("/rows/0");
    assertThat(today.at("/keys/scale_dry_g").asText()).startsWith("g: What it shows");
    String shown = String.valueOf(Math.round(plate.get("scale_dry_g").doubleValue()));
    assertThat(terminal.out().replaceAll("\\s+", " ")).contains("dry through " + shown + " g");
    assertThat(Files.readString(folder.resolve("today.csv")))
        .contains(plate.get("scale_dry_g").asText())
        .contains("weigh");
  }

  /**
   * By hand. 20 g powder with 17.5 % moisture bring 16.5 g dry starch into 20 + 360 - 25 = 355 g of
   * paste; 150 g of that hold 6.972 g. Potato starch keeps 14.8 g water per 100 g at 57 % relative
   * humidity (Lourdin et al. 1997, Polymer 38:5401), so the film rests at 8.00 g, on its plate at
   * 608.0 g.
   */
  @Test
  void thePlateComesToRestAtTheMassOfItsSolidsAndTheirMoisture() throws IOException {
    Files.writeString(
        folder.resolve("plain.json"),
        """
        {"poured_at": "2026-04-19T10:00",
         "recipe": {"starch": {"kind": "potato", "mass_g": 20.0, "moisture_pct": 17.5},
                    "water": {"mass_g": 360}},
         "cook": {"water_lost_g": 25},
         "pour": {"plate": {"length_mm": 300, "width_mm": 200, "tare_g": 600}, "poured_g": 150},
         "room": {"air_C": 25, "rh_pct": 57}}
        """);
    terminal.run("today", "--json", "-");

    assertThat(
            new ObjectMapper().readTree(terminal.out()).at("/rows/0/scale_at_rest_g").doubleValue())
        .isBetween(607.9, 608.1);
  }

  @Test
  void saysWhetherAPlateIsReadyByTheDateItWasPlannedFor() throws IOException {
    plate(
        "Gift", "2026-04-19T10:00", "\"wish\": {\"film\": \"flexible\", \"ready_after_days\": 1}");

    assertThat(said("today"))
        .contains("Wanted by Mon 20 Apr, 10:00: in time in at most 1 of 10 likely cases.");
  }
}
