package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plate that is typed instead of a file, or beside one. */
class DryTypedTest {
  @TempDir private Path folder;
  private Terminal terminal;

  @BeforeEach
  void openTerminal() {
    terminal = new Terminal(folder);
  }

  @Test
  void saysWhichOfTwoThicknessesCounts() {
    assertThat(terminal.run("dry", DryCommandTest.BLEND, "--wet", "2.2mm", "--poured-mass", "150g"))
        .isZero();

    assertThat(terminal.out())
        .contains("The wet thickness follows from --poured-mass; --wet is not used.");
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
    assertThat(terminal.run("dry", DryCommandTest.BLEND, option, typed)).isEqualTo(2);
    assertThat(terminal.err()).contains(named).doesNotContain("Exception");
    assertThat(terminal.out()).isEmpty();
  }
}
