package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BrowserTest {
  private static final String ADDRESS = "http://127.0.0.1:4321/";

  @ParameterizedTest
  @CsvSource({
    "Windows 11, NONE, rundll32",
    "Mac OS X, NONE, open",
    "Linux, DISPLAY, xdg-open",
    "Linux, WAYLAND_DISPLAY, xdg-open"
  })
  void opensItWithWhatTheSystemHas(String system, String variable, String program) {
    assertThat(Browser.words(system, Map.of(variable, ":0"), ADDRESS))
        .hasValueSatisfying(words -> assertThat(words).startsWith(program).endsWith(ADDRESS));
  }

  @Test
  void opensNothingWithoutAScreen() {
    assertThat(Browser.words("Linux", Map.of(), ADDRESS)).isEmpty();
  }

  @Test
  void bearsThatThereIsNoBrowser() {
    assertThat(Browser.started(List.of("no-such-browser-here", ADDRESS))).isFalse();
  }
}
