package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DryingTextTest {
  @ParameterizedTest
  @ValueSource(ints = {40, 60, 80, 92})
  void tableAndCurveFitTheTerminal(int width) {
    List<String> lines = DryingText.of(new SampleTrial().analysis(), width);

    assertThat(lines.stream().filter(line -> line.matches(" *[0-9.]* *[|+].*| .*thick spot.*")))
        .isNotEmpty()
        .allMatch(line -> line.length() <= width || line.contains("* average"));
    assertThat(String.join("\n", lines)).contains("thin edge", "average", "thick spot");
  }
}
