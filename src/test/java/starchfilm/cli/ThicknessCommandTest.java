package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ThicknessCommandTest {
  private static final String BLEND =
      Path.of("formulations", "garden", "4-blend.json").toAbsolutePath().toString();

  @TempDir private Path folder;
  private Terminal terminal;

  @BeforeEach
  void openTerminal() {
    terminal = new Terminal(folder);
  }

  @Test
  void tellsThicknessGramsAndLimits() {
    assertThat(terminal.run("thickness", BLEND, "--by", "5d")).isZero();

    assertThat(terminal.out())
        .startsWith("Pour ")
        .containsSubsequence("in 9 of 10", "in 5 of 10")
        .containsPattern(
            "mm wet, \\d+ g per plate: it is dry through\\s+everywhere\\s+by \\w+ \\d+ \\w+,"
                + "\\s+\\d+:\\d\\d")
        .contains(
            "it would settle",
            "Orchard's",
            "Without a rim, paste runs off the plate above about 5.2 mm")
        .doesNotContain("NaN", "Infinity");
    assertThat(terminal.out().lines()).allMatch(line -> line.length() <= 92);
    assertThat(terminal.err()).isEmpty();
  }

  @Test
  void saysThatAThicknessIsNotUsedWhereOneIsAskedFor() {
    String blend = Path.of("formulations", "garden", "4-blend.json").toAbsolutePath().toString();

    assertThat(terminal.run("thickness", blend, "--by", "5d", "--wet", "2mm")).isZero();

    assertThat(terminal.out()).contains("--wet is not used: how thick to pour is what is asked.");
  }

  @Test
  void aRecipeCanBeTyped() {
    int exitCode =
        terminal.run(
            "thickness",
            "--starch",
            "potato",
            "20 g",
            "--glycerol",
            "6 g",
            "--water",
            "400 g",
            "--plate",
            "200x300mm ptfe",
            "--rim",
            "12mm",
            "--room",
            "25C,40%",
            "--by",
            "friday");

    assertThat(exitCode).isZero();
    assertThat(terminal.out())
        .contains("within 4.0 days on ptfe, 30 × 20 cm", "The rim stands 12 mm above the plate");
  }

  /** It said 370 days, as if a date were a forecast. */
  @Test
  void saysTheDateThatWasGiven() {
    terminal.run("thickness", BLEND, "--by", "365d");
    assertThat(terminal.out()).contains("That is within 365 days");
  }

  @Test
  void saysWhereNoPourIsInTime() {
    assertThat(terminal.run("thickness", BLEND, "--by", "20min")).isEqualTo(1);
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .startsWith("No pour is dry through everywhere by ")
        .contains("in 9 of 10 likely cases, not even one of 0.1 mm.");
  }

  @Test
  void saysOfAFilmThatWillBeThinThatItTears() {
    String tears = "Under 50 µm when dry: such thin film tears easily";
    terminal.run("thickness", BLEND, "--by", "20h");
    assertThat(terminal.out().replaceAll("\\s+", " ")).contains(tears);
    assertThat(Outcome.of(folder, "thickness", BLEND, "--by", "9d").out()).doesNotContain("Under");
  }

  /** No pour may be sure enough while another is still found. */
  @Test
  void speaksOfTheSurestPourThereIs() {
    assertThat(Outcome.of(folder, "thickness", BLEND, "--by", "2h").out())
        .contains("No pour is dry through", "Poured 0.10 mm deep it is dry through in 2");
  }

  /** The deepest pour that is computed is none that somebody would make. */
  @Test
  void namesNoTimeWhereAnyPourIsInTime() {
    assertThat(terminal.run("thickness", BLEND, "--by", "90d", "--room", "25C,20%")).isZero();
    assertThat(terminal.out())
        .startsWith("Any pour up to 25 mm is dry through everywhere by ")
        .doesNotContain("Poured ", "the film ", "Choose a later date");
  }

  @Test
  void airBesideARoomIsRefusedAndASpeedBesideItIsUsed() {
    assertThat(terminal.run("thickness", BLEND, "--by", "5d", "--room", "19C,55%", "--air", "30C"))
        .isEqualTo(2);
    assertThat(terminal.err()).contains("--air: given beside --room, which says it too");

    terminal.run("thickness", BLEND, "--by", "5d", "--room", "19C,55%", "--speed", "0.5");
    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("in 55 % RH and 19 °C, air at 0.50 m/s");
  }

  @Test
  void saysWhatItTookForGranted() {
    terminal.run("thickness", "--starch", "potato", "20g", "--water", "400g", "--by", "2d");

    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains("Not given, so assumed: moisture of the powder (--starch) as 15 to 20 %")
        .contains("humidity (--rh) as 35 to 70 %");
  }

  @Test
  void asksForTheDate() {
    assertThat(terminal.run("thickness", BLEND)).isEqualTo(2);
    assertThat(terminal.err())
        .isEqualToNormalizingNewlines(
            "starchfilm: --by: not given; write when it must be dry, such as 5d\n");
  }
}
