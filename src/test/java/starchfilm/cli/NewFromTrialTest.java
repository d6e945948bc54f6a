package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Trials begun from an earlier one with one thing changed. The clock stands at 20 April 2026. */
class NewFromTrialTest {
  private static final String COOKED =
      "20.0 g potato, 6 g glycerol 88%, 360 g water, vinegar 10 g 5%; 2x 30x20cm glass, 3 mm;"
          + " cooked 10 min at 90C; in the Kitchen 20C,55%; called First try";

  @TempDir Path folder;
  private Terminal terminal;

  @BeforeEach
  void cookTheEarlierOne() {
    new Terminal(folder).run("new", COOKED);
    terminal = new Terminal(folder);
  }

  @Test
  void refusesAnOptionThatUndoesTheNamedChange() {
    assertThat(
            terminal.run("new", "--from", "first-try.json", "--but", "thinner", "--wet", "2.8mm"))
        .isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("--but: \"thinner\" given beside another change");
    assertThat(terminal.run("new", "--from", "first-try.json", "--but", "thinner", "--rh", "60%"))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);
  }

  @Test
  void poursAnEarlierTrialAgainButThinner() throws IOException {
    assertThat(terminal.run("new", "--from", "first-try.json", "--but", "thinner"))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);

    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains(
            "Changed: wet thickness 3 → 2.1 mm.",
            "What is neither changed nor written here is as in the trial First try: recipe, cook,"
                + " pour, room.");
    assertThat(Files.readString(folder.resolve("first-try-thinner.json")))
        .contains("\"from\" : \"first-try.json\"", "\"wet_thickness_mm\" : 2.1", "20.0")
        .doesNotContain("poured_at");
  }

  @Test
  void saysThatALogIsOfItsOwnDays() throws IOException {
    for (String file : List.of("5-blend-in-the-shed.json", "shed-april.csv")) {
      Files.copy(Path.of("formulations/garden", file), folder.resolve(file));
    }
    String told = "Its log shed-april.csv is of the days of that pour and is left out";

    terminal.run("new", "--from", "5-blend-in-the-shed.json", "--name", "Again");
    assertThat(terminal.out().replaceAll("\\s+", " ")).contains(told);
    terminal.run("new", "--from", "5-blend-in-the-shed.json", "--room", "18C,60%");
    assertThat(terminal.out().replaceAll("\\s+", " ")).containsOnlyOnce(told);
  }

  @ParameterizedTest
  @CsvSource({
    "more glycerol, glycerol 32 → 40 g per 100 g dry starch",
    "more water, starch in the paste 4",
    "fan, air speed 0.1 →",
    "poured hotter, paste when poured 60 → 7",
    "warmer, air 20 →"
  })
  void changesOneThingByItsWord(String word, String told) {
    assertThat(terminal.run("new", "--from", "first-try.json", "--but", word))
        .as(terminal.err())
        .isEqualTo(ExitCodes.DONE);
    assertThat(terminal.out()).containsPattern("Changed: " + told);
  }

  @Test
  void takesTheNewValueItself() throws IOException {
    terminal.run("new", "--from", "first-try.json", "--wet", "1.5mm", "--name", "Thin");

    assertThat(Files.readString(folder.resolve("thin.json")))
        .contains("\"wet_thickness_mm\" : 1.5", "\"from\" : \"first-try.json\"");
  }

  @Test
  void refusesAChangeItDoesNotKnowAndOneWithoutATrial() {
    assertThat(terminal.run("new", "--from", "first-try.json", "--but", "wetter"))
        .isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("--but: \"wetter\" given, allowed", "thinner");
    assertThat(terminal.run("new", COOKED, "--but", "thinner")).isEqualTo(ExitCodes.WRONG_INPUT);
    assertThat(terminal.err()).contains("name that trial's file with --from");
  }

  @Test
  void comparesATrialWithTheOneItWasMadeFrom() throws IOException {
    String[] lines = {"3 mm; 2026-04-01 10:00; called One", "4 mm; 2026-04-02 10:00; called Two"};
    for (String rest : lines) {
      terminal.run(
          "new", "20 g potato, 6 g glycerol, 360 g water; 30x20cm glass; 20C,55%; " + rest);
    }
    terminal.run(
        "new",
        "--from",
        "one.json",
        "--wet",
        "2 mm",
        "--poured",
        "2026-04-03 10:00",
        "--name",
        "Three");
    terminal.run("compare", ".", "--out", "page.html");

    assertThat(Files.readString(folder.resolve("page.html")))
        .contains("What changed from trial 1</h3>");
  }
}
