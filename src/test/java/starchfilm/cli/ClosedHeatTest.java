package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Film of glycerol that may hold methanol is not dried in an oven, dehydrator or cupboard. */
class ClosedHeatTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "recovered, room, 60, 2",
    "unknown, room, 60, 2",
    "recovered, Dehydrator, 35, 2",
    "unknown, the oven, 40, 2",
    "unknown, airing cupboard, 32, 2",
    "recovered, greenhouse, 44, 0",
    "bought, oven, 60, 0",
    "bought, dehydrator, 45, 0"
  })
  void refusesThemUnlessTheGlycerolWasBought(String origin, String room, String celsius, int rc)
      throws IOException {
    Files.writeString(
        folder.resolve("trial.json"),
        ("{\"name\": \"a\", \"recipe\": {\"starch\": {\"kind\": \"potato\", \"mass_g\": 20},"
                + " \"glycerol\": {\"mass_g\": 6, \"purity_pct\": 85, \"origin\": \"%s\"},"
                + " \"water\": {\"mass_g\": 360}}, \"pour\": {\"wet_thickness_mm\": 3},"
                + " \"room\": {\"name\": \"%s\", \"air_C\": %s, \"rh_pct\": 20}}")
            .formatted(origin, room, celsius));
    says(rc, "dry", "trial.json");
    says(
        rc,
        "plan",
        "--glycerol",
        "250g",
        "--purity",
        "82%",
        "--origin",
        origin,
        "--starch",
        "potato",
        "--plates",
        "2x300x200mm glass",
        "--room",
        celsius + "C,20%",
        "--room-name",
        room);
  }

  private void says(int rc, String... words) {
    Terminal terminal = new Terminal(folder);
    assertThat(terminal.run(words)).as(terminal.err()).isEqualTo(rc);
    if (rc == 2) {
      assertThat(terminal.err())
          .contains("an open, aired room of at most 45 °C")
          .contains("bought with a label");
    }
  }
}
