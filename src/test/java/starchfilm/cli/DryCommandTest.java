package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DryCommandTest {
  static final String BLEND =
      Path.of("formulations", "garden", "4-blend.json").toAbsolutePath().toString();

  @TempDir private Path folder;
  private Terminal terminal;

  @BeforeEach
  void openTerminal() {
    terminal = new Terminal(folder);
  }

  @Test
  void tellsMilestonesCurveAndRisks() {
    assertThat(terminal.run("dry", BLEND)).isZero();

    assertThat(terminal.out())
        .contains("Peelable ", "dry through", "in twelve hours", "grams on the plate", "+ weighed")
        .contains("Cracks: ", "Lifting and curling: ", "Mould: ")
        .doesNotContain("NaN", "Infinity");
    assertThat(terminal.out().lines()).allMatch(line -> line.length() <= 92);
    assertThat(terminal.err()).isEmpty();
  }

  @Test
  void refusesABenchAndASecondFileByTheirNames() {
    assertThat(terminal.run("dry", BLEND, "--bench", "120C")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("--bench: \"120C\" given, allowed 1 to 98 \u00B0C");

    assertThat(terminal.run("dry", BLEND, BLEND)).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("FILE: given more than once");
  }

  /** A fan sparks beside methanol and spreads spores; for the next pour moving air is right. */
  @Test
  void tellsOfAFanOnlyWhereOneMayRun() throws IOException {
    String bought = Files.readString(Path.of("formulations", "starter-first-film.json"));
    String mouldy =
        bought.replace(
            "\"remarks\"",
            "\"poured_at\": \"2026-03-07T10:15\","
                + " \"faults\": [{\"kind\": \"mould\", \"at\": \"+60h\"}], \"remarks\"");

    assertThat(dried(bought)).contains("Best change: a fan, its cable off the wet trays, 0.10");
    assertThat(dried(bought.replace("\"bought\"", "\"recovered\"")))
        .contains(
            "Best change: a draught from open windows as strong as a fan's (no fan: the glycerol");
    assertThat(dried(mouldy)).contains("Best change: for the next pour a fan").contains("(none on");
  }

  @Test
  void remindsThatABrittleFilmCracksFromANick() throws IOException {
    String little =
        Files.readString(Path.of("formulations", "starter-first-film.json"))
            .replace("\"mass_g\": 5.0", "\"mass_g\": 0.5");

    assertThat(dried(little))
        .contains("Cracks: not expected")
        .contains("Because it is brittle, it can still crack from a nick");
  }

  /**
   * The permeability's rule ends at 50 g glycerol per 100 g dry starch, and JSON states its figure.
   */
  @Test
  void dataTellWhichRulesOfTheFilmAreUsedBeyondTheirRange() {
    int code =
        terminal.run(
            "dry",
            "--starch",
            "potato 20g",
            "--water",
            "360g",
            "--glycerol",
            "11g",
            "--wet",
            "3mm",
            "--json",
            "-");

    assertThat(code).as(terminal.err()).isZero();
    assertThat(terminal.out())
        .contains("known to hold from 0 to 50 g glycerol per 100 g dry starch");
  }

  private String dried(String trial) throws IOException {
    Files.writeString(folder.resolve("trial.json"), trial);
    assertThat(terminal.run("dry", "trial.json")).as(terminal.err()).isZero();
    return terminal.out().replaceAll("\\s+", " ");
  }

  @Test
  void saysThatItsTrialIsPutAway() throws IOException {
    dried(
        Files.readString(Path.of("formulations", "starter-first-film.json"))
            .replaceFirst("\\{", "{\"put_away\": true, "));

    assertThat(terminal.err())
        .contains(
            "trial.json: put away: lists, comparisons and learning leave it out until it is fetched"
                + " back");
  }

  @Test
  void saysWhereThePlatesTakeMorePasteThanWasCooked() throws IOException {
    Files.writeString(
        folder.resolve("five.json"),
        Files.readString(Path.of("formulations", "starter-first-film.json"))
            .replace("\"plates\": 2", "\"plates\": 5"));

    assertThat(terminal.run("dry", "five.json")).isZero();
    // 5 x 150 g poured; 395 g in the pot less 2 to 12 % of the 360 g of water, in the middle 25 g.
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("5 plates of 150 g take 750 g, and these amounts make about 370 g, enough for 2");

    assertThat(terminal.run("compare", "five.json", "--out", "page.html")).isZero();
    assertThat(Files.readString(folder.resolve("page.html"))).contains("Too little paste");
    assertThat(terminal.run("compare", BLEND, "--out", "enough.html")).isZero();
    assertThat(Files.readString(folder.resolve("enough.html"))).doesNotContain("Too little paste");
  }

  @Test
  void saysTheBenchAndWhatWasDoneToTheFilm() throws IOException {
    Files.writeString(
        folder.resolve("t.json"),
        """
        {"name": "On the mat", "recipe": {"starch": {"kind": "potato", "mass_g": 20}, "water": {"mass_g": 360}},
         "room": {"air_C": 20, "rh_pct": 50, "bench_C": 35},
         "moved": [{"at": "+20h", "faces": "turned"}, {"at": "+10h", "faces": "both"}]}
        """);

    Outcome dry = Outcome.of(folder, "dry", "t.json");

    assertThat(dry.out().replaceAll("\\s+", " "))
        .contains(
            "air at 0.10 m/s, on a bench of 35 °C",
            "On a rack after 10 hours, turned over after 20");
  }

  /** Paste was turned over after a minute, in silence. */
  @ParameterizedTest
  @CsvSource({"+1min, true", "+10h, true", "+90h, false"})
  void filmThatIsLiftedWetIsAskedAbout(String at, boolean asked) throws IOException {
    Files.writeString(
        folder.resolve("moved.json"),
        """
        {"recipe": {"starch": [{"kind": "potato", "mass_g": 20}], "water": {"mass_g": 360}},
         "pour": {"wet_thickness_mm": 3}, "room": {"air_C": 20, "rh_pct": 50},
         "moved": [{"at": "%s", "faces": "turned"}]}
        """
            .formatted(at));

    assertThat(terminal.run("dry", "moved.json")).isZero();

    assertThat(
            terminal
                .out()
                .replaceAll("\\s+", " ")
                .matches(
                    ".*It is noted as turned over after [0-9.]+ \\w+; the forecast finds no spot"
                        + " firm enough to lift before about [0-9.]+ \\w+: is that time"
                        + " right\\?.*"))
        .isEqualTo(asked);
  }

  @Test
  void thickerPoursAndDamperRoomsTakeLonger() throws IOException {
    // About what the file pours, typed: what if, as below, without the weighings of that plate.
    double asItIs = dryThroughHours("--wet", "2.5 mm");
    assertThat(dryThroughHours("--wet", "4 mm")).isGreaterThan(1.4 * asItIs);
    assertThat(dryThroughHours("--wet", "2.5 mm", "--rh", "65 %")).isGreaterThan(1.2 * asItIs);
  }

  @Test
  void theCurveIsACsvTable() throws IOException {
    assertThat(terminal.run("dry", BLEND, "--csv", "-")).isZero();

    List<CSVRecord> rows =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get()
            .parse(new StringReader(terminal.out()))
            .getRecords();
    double before = Double.POSITIVE_INFINITY;
    for (CSVRecord row : rows) {
      double grams = Double.parseDouble(row.get("film_g"));
      assertThat(grams)
          .isBetween(
              Double.parseDouble(row.get("film_g_low")),
              Double.parseDouble(row.get("film_g_high")));
      assertThat(grams).isLessThanOrEqualTo(before + 0.01);
      before = grams;
    }
    assertThat(rows.get(0).get("at")).isEqualTo("2026-04-11T10:00");
    assertThat(rows).hasSizeGreaterThan(50);
  }

  @Test
  void writesBesideTheTextAndReplacesOnlyItsOwn() throws IOException {
    Files.writeString(folder.resolve("mine.json"), "{}");

    assertThat(terminal.run("dry", BLEND, "--json", "dry.json", "--csv", "dry.csv")).isZero();
    assertThat(terminal.run("dry", BLEND, "--json", "dry.json", "--csv", "dry.csv")).isZero();
    assertThat(terminal.run("dry", BLEND, "--json", "mine.json")).isEqualTo(2);

    assertThat(terminal.err()).contains("--json mine.json is there and is no drying forecast");
    assertThat(folder.resolve("mine.json")).hasContent("{}");
  }

  @Test
  void wantsATrial() {
    assertThat(terminal.run("dry")).isEqualTo(2);
    assertThat(terminal.err())
        .isEqualToNormalizingNewlines(
            "starchfilm: dry needs a trial file, or at least --starch, --water and --wet.\n");
  }

  @Test
  void saysOfAMissingFileThatItIsMissing() {
    assertThat(terminal.run("dry", "no.json")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("no.json: there is no such file", "nothing was done, because no.json cannot be")
        .doesNotContain("fault");
  }

  @Test
  void takesOneTrialAtATime() {
    String garden = Path.of(BLEND).getParent().toString();
    assertThat(terminal.run("dry", garden)).isEqualTo(2);
    assertThat(terminal.err()).contains("dry takes one trial").contains("holds 6.");
  }

  private double dryThroughHours(String... options) throws IOException {
    Terminal fresh = new Terminal(folder);
    String[] words = new String[options.length + 4];
    words[0] = "dry";
    words[1] = BLEND;
    words[2] = "--json";
    words[3] = "-";
    System.arraycopy(options, 0, words, 4, options.length);
    assertThat(fresh.run(words)).isZero();
    JsonNode forecast = new ObjectMapper().readTree(fresh.out());
    return forecast.at("/spots/thick_spot/dry_through/middle_h").asDouble();
  }
}
