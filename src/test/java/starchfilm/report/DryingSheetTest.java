package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DryingSheetTest {
  @ParameterizedTest
  @ValueSource(ints = {40, 60, 80, 92})
  void tableAndCurveFitTheTerminal(int width) {
    List<String> lines =
        new DryingSheet(new SampleTrial().analysis(), List.of(), List.of(), width).lines();

    assertThat(lines.stream().filter(line -> line.matches(" *[0-9.]* *[|+].*| .*thick spot.*")))
        .isNotEmpty()
        .allMatch(line -> line.length() <= width || line.contains("* average"));
    assertThat(String.join("\n", lines)).contains("thin edge", "average", "thick spot");
  }
}
