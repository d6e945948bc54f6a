package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.report.caution.Caution;

/** Heat, fans and mould are warned of where they are, and not where they are not. */
class CautionsOfPlacesTest {
  private static final String PLATE =
      "\"material\": \"acrylic\", \"length_mm\": 300, \"width_mm\": 200";

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "'\"air_C\": 65, \"rh_pct\": 10', true, false",
    "'\"air_C\": 20, \"rh_pct\": 50, \"air_speed_m_per_s\": 1.0', false, true",
    "'\"air_C\": 20, \"rh_pct\": 40', false, false"
  })
  void hotAirAndFans(String room, boolean hot, boolean fan) throws IOException {
    String said = dry(room, "");

    assertThat(said.contains(Caution.HOT_PLACE.sentence())).isEqualTo(hot);
    assertThat(said.contains(Caution.FANS_AND_HEATERS.sentence())).isEqualTo(fan);
    assertThat(said).doesNotContain(Caution.RECOVERED_GLYCEROL.subject() + " may");
  }

  @Test
  void mouldThatWasSeenIsNeverToBeBlownOn() throws IOException {
    String said = dry("\"air_C\": 20, \"rh_pct\": 40", ", \"faults\": [{\"kind\": \"mould\"}]");

    assertThat(said).contains(Caution.MOULD.sentence(), "Never blow air at mouldy film");
  }

  private String dry(String room, String more) throws IOException {
    Files.writeString(
        folder.resolve("trial.json"),
        "{\"name\": \"a\", \"recipe\": {\"starch\": {\"kind\": \"potato\", \"mass_g\": 20},"
            + " \"glycerol\": {\"mass_g\": 6, \"purity_pct\": 99, \"origin\": \"bought\"},"
            + " \"water\": {\"mass_g\": 360}}, \"pour\": {\"wet_thickness_mm\": 2, \"plate\": {"
            + PLATE
            + "}}, \"room\": {"
            + room
            + "}"
            + more
            + "}");
    Terminal terminal = new Terminal(folder);
    assertThat(terminal.run("dry", "trial.json")).as(terminal.err()).isZero();
    return terminal.out().replaceAll("\\s+", " ");
  }
}
