package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ParagraphTest {
  @ParameterizedTest
  @CsvSource({"60, 60", "80, 80", "200, 92", "10, 40", "wide, 80", "'', 80"})
  void isAsWideAsTheTerminalAndReadsWell(String columns, int width) {
    assertThat(Paragraph.width(Optional.of(columns))).isEqualTo(width);
  }

  @ParameterizedTest
  @CsvSource({
    "frobnicate x, is no command",
    "dyr, did you mean dry?",
    "dry --wett 3mm, did you mean --wet?",
    "dry --thickness 3mm, did you mean --wet?",
    "plan --humidity 50%, did you mean --rh?",
    "plan --film stiff, did you mean --feel?",
    "compare --output x, did you mean --out?",
    "dry --frobnicate 3, --frobnicate is no option of this command"
  })
  void aCommandOrOptionThatIsNoneIsToldInWords(String typed, String told) {
    Terminal terminal = new Terminal(Path.of(""));

    assertThat(terminal.run(typed.split(" ", -1))).isEqualTo(2);
    assertThat(terminal.err()).contains(told).doesNotContain("index");
  }
}
