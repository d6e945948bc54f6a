package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AppTest {
  @TempDir private Path folder;

  @Test
  void helpNamesTheFirstThingToTry() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("--help")).isZero();
    assertThat(terminal.out()).contains("starchfilm compare formulations").contains("Exit codes");
    assertThat(terminal.err()).isEmpty();
  }

  @Test
  void saysItsVersion() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("--version")).isZero();
    assertThat(terminal.out()).startsWith("starchfilm ");
  }

  @Test
  void noCommandIsWrongUsage() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run()).isEqualTo(2);
    assertThat(terminal.err())
        .isEqualToNormalizingNewlines("starchfilm: no command given\nHelp: starchfilm --help\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"bake", "--colour"})
  void unknownWordsAreWrongUsage(String word) {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run(word)).isEqualTo(2);
    assertThat(terminal.err()).startsWith("starchfilm: ").contains(word);
    assertThat(terminal.out()).isEmpty();
  }

  @Test
  void aNameNoFileCanHaveIsWrongUsage() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("check", "a\0b")).isEqualTo(2);
    assertThat(terminal.err())
        .startsWith("starchfilm: FILE-OR-FOLDER: ")
        .contains("cannot be a file name; check its spelling")
        .doesNotContain("java.nio");
  }

  @Test
  void whatWasTypedIsToldOnOneLineHoweverItWasTyped() {
    Terminal terminal = new Terminal(folder);

    assertThat(terminal.run("note", "--photo", "--poured=\n\u001b[31m\n\n" + "x".repeat(2_000)))
        .isEqualTo(2);
    assertThat(terminal.err().lines()).hasSize(2).allMatch(line -> line.length() < 500);
    assertThat(terminal.err()).doesNotContain("\u001b");
  }
}
