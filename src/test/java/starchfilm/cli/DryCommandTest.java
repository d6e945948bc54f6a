package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DryCommandTest {
  private static final String BLEND =
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

  @Test
  void saysWhichOfTwoThicknessesCounts() {
    assertThat(terminal.run("dry", BLEND, "--wet", "2.2mm", "--poured-mass", "150g")).isZero();

    assertThat(terminal.out())
        .contains("The wet thickness follows from --poured-mass; --wet is not used.");
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

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--purity   | purity of the glycerol (--purity) as 80 to 100 % glycerol",
        "--glycerol | glycerol (--glycerol) as 3 to 10 g",
        "--wet      | wet thickness (--wet) as 4.44 to 5.92 mm"
      })
  void anAmountThatIsUnknownIsAssumedAsInAFile(String option, String told) {
    Map<String, String> words =
        new TreeMap<>(
            Map.of(
                "--starch", "potato 20g",
                "--water", "360g",
                "--glycerol", "6g",
                "--purity", "99%",
                "--wet", "3mm"));
    words.put(option, "unknown");
    String[] typed =
        Stream.concat(
                Stream.of("dry"),
                words.entrySet().stream()
                    .flatMap(
                        word ->
                            Stream.concat(
                                Stream.of(word.getKey()), Stream.of(word.getValue().split(" ")))))
            .toArray(String[]::new);

    assertThat(terminal.run(typed)).as(terminal.err()).isZero();
    assertThat(terminal.out().replaceAll("\\s+", " ")).contains(told);
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
  void aRecipeCanBeTyped() {
    int exitCode =
        terminal.run(
            "dry",
            "--starch",
            "potato",
            "20 g",
            "--starch",
            "tapioca",
            "10 g",
            "--glycerol",
            "6 g",
            "--water",
            "400 g",
            "--wet",
            "2 mm",
            "--air",
            "25 C",
            "--rh",
            "40 %",
            "--speed",
            "0.5");

    assertThat(exitCode).isZero();
    assertThat(terminal.out())
        .contains("as typed (date of the pour unknown)")
        .contains("25 °C, 40 % RH, air at 0.50 m/s")
        .contains("2.0 mm wet");
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

  @Test
  void plateRimAndRoomAreWrittenAsForPlanAndThickness() {
    int exitCode =
        terminal.run(
            "dry",
            "--starch",
            "Potato 20g",
            "--glycerol",
            "6 g",
            "--water",
            "400 g",
            "--wet",
            "2 mm",
            "--plate",
            "24cm round steel",
            "--rim",
            "12mm",
            "--room",
            "8-18C,50-80%",
            "--speed",
            "0.5");

    assertThat(exitCode).isZero();
    assertThat(terminal.out())
        .contains("8–18 °C, by night and day", "air at 0.50 m/s", "2.0 mm wet on steel")
        .doesNotContain("air as", "material of the plate as", "a still room");
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

  /** A size alone made a steel tray one of glass, a material alone one of 30 × 20 cm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          40x30cm      | on steel, 40 × 30 cm          | “40x30cm” as steel, like the trial's
          glass        | on glass, 25 × 25 cm          | “glass” as glass of the trial's size
          2            | on steel, 25 × 25 cm          | “2” as steel of the trial's size
          40x30cm wood | on wood, 40 × 30 cm           | Not recorded, so assumed
          """)
  void whatIsNotTypedOfAPlateStays(String plate, String forecast, String told) throws IOException {
    Files.writeString(
        folder.resolve("tray.json"),
        """
        {"recipe": {"starch": [{"kind": "potato", "mass_g": 20}], "water": {"mass_g": 360}},
         "pour": {"wet_thickness_mm": 2, "plate": {"material": "steel", "length_mm": 250,
                  "width_mm": 250, "thickness_mm": 1, "rim_height_mm": 20}}}
        """);

    assertThat(terminal.run("dry", "tray.json", "--plate", plate)).isZero();

    assertThat(terminal.out().replaceAll("\\s+", " ")).contains(forecast, told);
  }

  @Test
  void readsAStarchWithItsAmountBeforeOrBehindIt() {
    terminal.run("dry", "--starch", "2 tbsp cornstarch", "--water", "1 cup");
    assertThat(terminal.out()).contains("12.8 to 20.8 g by its volume");

    terminal.run("dry", "--starch", "20 g gelatin", "--water", "1 cup");
    assertThat(terminal.err()).contains("gelatin is a protein");
  }

  @Test
  void saysWhetherAPlateMakesItsDay() {
    String[] plate = {"dry", "--starch", "potato", "20 g", "--water", "360g", "--plates", "2"};
    terminal.run(with(plate, "--by", "20d"));
    assertThat(terminal.out())
        .contains("Dry all through after 20 days in at least 9 of 10 likely cases.");

    terminal.run(with(plate, "--by", "6h"));
    assertThat(terminal.out())
        .contains("Not dry all through after 6.0 hours (at most 1 of 10 likely cases).");
  }

  private static String[] with(String[] words, String... more) {
    return Stream.concat(Stream.of(words), Stream.of(more)).toArray(String[]::new);
  }

  @Test
  void everyMistakeIsToldAtOnceInTheWordsOfTheOptions() {
    assertThat(
            terminal.run(
                "dry", "--starch", "potatoe", "--wet", "thick", "--rh", "150%", "--plate", "3x"))
        .isEqualTo(2);
    assertThat(terminal.err().lines())
        .extracting(line -> line.replaceFirst("starchfilm: (--[a-z]+):.*", "$1"))
        .containsExactly("--starch", "--wet", "--plate", "--rh");
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

  @ParameterizedTest
  @CsvSource({
    "--wet, 0 mm, --wet: 0 given",
    "--wet, 10 m, --wet: 10000 given",
    "--wet, thick, --wet",
    "--rh, 150 %, --rh",
    "--air, 300 F, --air",
    "--air, 400 C, --air",
    "--speed, fast, --speed",
    "--paste, 50-60 C, a range is of no use here",
    "--uneven, 10-20 %, a range is of no use here",
    "--water, -3 g, --water: -3 given"
  })
  void refusesWhatCannotBe(String option, String typed, String named) {
    assertThat(terminal.run("dry", BLEND, option, typed)).isEqualTo(2);
    assertThat(terminal.err()).contains(named).doesNotContain("Exception");
    assertThat(terminal.out()).isEmpty();
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
