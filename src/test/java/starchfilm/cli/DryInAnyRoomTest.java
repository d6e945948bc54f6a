package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sentences about a plate in rooms from driest to saturated. */
class DryInAnyRoomTest {
  private static final Path FORMULATIONS = Path.of("formulations").toAbsolutePath();

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"5 %", "30 %", "75 %", "85 %", "95 %", "100 %"})
  void holdNoInfinitiesAndNoChangeThatChangesNothing(String humidity) {
    for (String trial :
        new String[] {
          "starter-first-film.json", "garden/1-thick-tray.json", "garden/2-little-glycerol.json"
        }) {
      Terminal terminal = new Terminal(folder);

      int code = terminal.run("dry", FORMULATIONS.resolve(trial).toString(), "--rh", humidity);

      assertThat(code).as(terminal.err()).isZero();
      String words = terminal.out().replaceAll("\\s+", " ");
      assertThat(words).doesNotContain("Infinity", "∞", "NaN", "never %", "never mm");
      assertThat(words).doesNotContainPattern("[ :]([0-9.]+) → \\1 hours");
    }
  }

  @Test
  void whatMostlyFailsIsSaidBeforeTheTimesOfTheRest() {
    Terminal terminal = new Terminal(folder);

    terminal.run(
        "dry",
        "--starch",
        "potato 20 g",
        "--glycerol",
        "6 g",
        "--purity",
        "99%",
        "--water",
        "360 g",
        "--vinegar",
        "10g",
        "--wet",
        "3mm",
        "--room",
        "8C,85%");

    assertThat(terminal.out().replaceAll("\\s+", " "))
        .containsSubsequence(
            "Probably never peelable all over in this room. In about 8 of 10 likely cases",
            "the times are those of the other cases",
            "Peelable after")
        .doesNotContain("keeps its size and curls");
  }

  /** Water condenses on what is colder than the dew point, however dry the room. */
  @Test
  void aBenchBelowTheDewPointIsBlamedAndNoMoistureIsInvented() {
    Terminal terminal = new Terminal(folder);

    terminal.run(
        "dry",
        FORMULATIONS.resolve("starter-first-film.json").toString(),
        "--room",
        "20C,50%",
        "--bench",
        "5C");

    assertThat(terminal.out().replaceAll("\\s+", " "))
        .contains(
            "On this bench, colder than the air, the room is too damp to dry the film: it would"
                + " settle at more water than anybody has measured in film (none is stated above 90"
                + " % RH). A warmer bench or drier air is needed.")
        .doesNotContain("This room is too damp", "curls", "the thick spot will be");
  }
}
