package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CheckCommandTest {
  private static final Path STARTER =
      Path.of("formulations", "starter-first-film.json").toAbsolutePath();

  @TempDir private Path folder;
  private Terminal terminal;

  @BeforeEach
  void openTerminal() {
    terminal = new Terminal(folder);
  }

  @Test
  void soundFilesAreDone() {
    assertThat(terminal.run("check", STARTER.toString())).isZero();
    assertThat(terminal.out()).isEqualToNormalizingNewlines("1 trial sound.\n");
    assertThat(terminal.err()).isEmpty();
  }

  @Test
  void namesEveryFaultOfEveryFile() throws IOException {
    Files.copy(STARTER, folder.resolve("sound.json"));
    Files.writeString(folder.resolve("a.json"), "{\"name\": 3}");
    Files.writeString(folder.resolve("b.json"), "");

    assertThat(terminal.run("check", folder.toString())).isEqualTo(2);

    assertThat(terminal.err()).contains("a.json, line 1").contains("b.json");
    assertThat(terminal.out()).startsWith("1 trial sound, 2 files with ");
  }

  @Test
  void whatWasLearntAndCannotBeReadIsAFault() throws IOException {
    Files.copy(STARTER, folder.resolve("sound.json"));
    Files.writeString(folder.resolve("workshop.json"), "{\"about\": \"Written by");

    assertThat(terminal.run("check", folder.toString())).isEqualTo(2);

    assertThat(terminal.err()).contains("workshop.json, line 1").contains("run the command learn");
    assertThat(terminal.out()).startsWith("1 trial sound, 1 file with 1 fault.");
  }

  @Test
  void aMissingFileIsAFault() {
    assertThat(terminal.run("check", "nowhere.json")).isEqualTo(2);
    assertThat(terminal.err()).contains("nowhere.json");
  }

  @Test
  void aFolderWithoutTrialsIsAFault() {
    assertThat(terminal.run("check", folder.toString())).isEqualTo(2);
    assertThat(terminal.err()).contains("folder without trial files");
  }

  @Test
  void helpHasAnExample() {
    assertThat(terminal.run("check", "--help")).isZero();
    assertThat(terminal.out()).contains("starchfilm check formulations/garden");
  }
}
