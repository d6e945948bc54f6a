package starchfilm.files.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import starchfilm.files.findings.Fault;
import starchfilm.material.recipe.GlycerolOrigin;

/** Where the glycerol of a trial comes from, as its file says it. */
class GlycerolOriginTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      textBlock =
          """
          "origin": "bought";                     BOUGHT
          "origin": "bought", "salt_pct": 0;      BOUGHT
          "origin": "recovered";                  RECOVERED
          "origin": "unknown", "salt_pct": 3;     RECOVERED
          "salt_pct": 3;                          RECOVERED
          "salt_pct": 0;                          UNKNOWN
          "salt_pct": "unknown";                  UNKNOWN
          "purity_pct": 82;                       UNKNOWN
          """)
  void takesAJarAsRecoveredWhereItsSaltIsStatedAndAsUnknownWhereNothingIs(
      String field, GlycerolOrigin origin) {
    Notebook notebook = read(field);

    assertThat(notebook.faults()).isEmpty();
    assertThat(notebook.trials().get(0).recipe().glycerol().stock().origin()).isEqualTo(origin);
  }

  @Test
  void refusesBoughtGlycerolThatHoldsSalt() {
    assertThat(read("\"origin\": \"bought\", \"salt_pct\": 3").faults())
        .extracting(Fault::sentence)
        .singleElement()
        .asString()
        .contains("recipe.glycerol.origin")
        .contains("write \"recovered\", or take salt_pct out");
  }

  @Test
  void refusesAnOriginItDoesNotKnow() {
    assertThat(read("\"origin\": \"shop\"").faults())
        .extracting(Fault::sentence)
        .singleElement()
        .asString()
        .contains("bought", "recovered", "unknown");
  }

  private Notebook read(String field) {
    return TrialText.read(
        folder,
        "{\"name\": \"a\", \"recipe\": {\"starch\": {\"kind\": \"potato\", \"mass_g\": 20},"
            + " \"glycerol\": {\"mass_g\": 6, "
            + field
            + "}, \"water\": {\"mass_g\": 360}}, \"pour\": {\"wet_thickness_mm\": 3}}");
  }
}
