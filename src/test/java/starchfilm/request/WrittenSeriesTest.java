package starchfilm.request;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenSeriesTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-04-20T12:00:00Z"), ZoneId.of("UTC"));

  @TempDir private Path folder;

  /** "Order of the pots: A, A" tells nobody which is which. */
  @ParameterizedTest
  @ValueSource(strings = {"A,a", "A,,B", " , "})
  void groupsThatCannotBeToldApartAreRefused(String names) {
    Map<String, String> words = new HashMap<>();
    words.put("--glycerol", "250g");
    words.put("--starch", "potato");
    words.put("--room", "20C,50%");
    words.put("--plate,--plates", "6x 30x20cm");
    words.put("--vary", "glycerol " + (names.equals("A,,B") ? "15,20,25" : "15,20"));
    words.put("--groups", names);

    assertThatThrownBy(() -> PlanQuestion.read(Written.options(words), folder, NOON))
        .hasMessageEndingWith(
            "a name twice, or none given, allowed a name of its own for each group; write names"
                + " such as Red,Green,Blue");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3 | 10 groups of 3 plates, allowed 30 or more",
        "999999999999999999"
            + " | 10 groups of 999999999999999999 plates, allowed 9999999999999999990 or more"
      })
  void asManyPlatesAreAskedForAsTheGroupsNeed(String replicates, String needed) {
    Map<String, String> words = new HashMap<>();
    words.put("--glycerol", "250g");
    words.put("--starch", "potato");
    words.put("--room", "20C,50%");
    words.put("--plate,--plates", "4x 30x20cm");
    words.put("--vary", "glycerol 10,15,20,25,30,35,40,45,50,55");
    words.put("--replicates", replicates);

    assertThatThrownBy(() -> PlanQuestion.read(Written.options(words), folder, NOON))
        .hasMessage(
            "--plate,--plates: 4 plates given for " + needed + "; write how many there are in all");
  }
}
