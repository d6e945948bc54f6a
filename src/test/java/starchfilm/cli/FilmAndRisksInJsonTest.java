package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What other programs read of a film and its risks. */
class FilmAndRisksInJsonTest {
  private static final List<String> FIGURES =
      List.of(
          "strength_MPa",
          "stretch_pct",
          "stiffness_MPa",
          "glass_transition_C",
          "moisture_kg_per_kg_dry",
          "permeability_g_mm_per_m2_d_kPa");
  private static final List<String> LEVELS = List.of("low", "watch", "likely", "expected");

  @TempDir private Path folder;

  @Test
  void everyFigureHasItsRangeAndEveryRiskItsLevel() throws IOException {
    JsonNode answer = answer("starter-first-film.json", "");
    for (String figure : FIGURES) {
      JsonNode range = answer.at("/film/" + figure);
      assertThat(range.at("/low").asDouble()).as(figure).isLessThan(range.at("/middle").asDouble());
      assertThat(range.at("/middle").asDouble()).isLessThan(range.at("/high").asDouble());
      assertThat(range.has("withheld")).isFalse();
    }
    assertThat(answer.at("/film/strength_MPa/middle").asDouble()).isBetween(0.5, 60.0);
    assertThat(answer.at("/film/moisture_kg_per_kg_dry/middle").asDouble()).isBetween(0.05, 0.3);
    assertThat(LEVELS)
        .contains(
            answer.at("/risk/crack/level").asText(),
            answer.at("/risk/curl").asText(),
            answer.at("/risk/mould").asText());
    assertThat(answer.at("/risk/crack/critical_dry_thickness_um").asDouble())
        .isBetween(100.0, 5000.0);
    assertThat(answer.at("/verdict").asText()).isNotEmpty();
    assertThat(answer.at("/spots/thick_spot/dry_through").has("middle_h")).isTrue();
  }

  @Test
  void aFigureThatNobodyKnowsIsWithheldWithAReason() throws IOException {
    JsonNode damp = answer("starter-first-film.json", "95");
    for (String figure : FIGURES) {
      JsonNode range = damp.at("/film/" + figure);
      assertThat(range.at("/withheld").asText()).as(figure).contains("90 % RH");
      assertThat(range.has("middle")).isFalse();
    }
  }

  /** The answer for a packed trial whose film is used in air of a humidity. */
  private JsonNode answer(String trial, String usePercent) throws IOException {
    ObjectMapper mapper = new ObjectMapper();
    JsonNode file = mapper.readTree(Path.of("formulations", trial).toFile());
    if (!usePercent.isEmpty()) {
      ((com.fasterxml.jackson.databind.node.ObjectNode) file)
          .putObject("use")
          .put("rh_pct", Integer.parseInt(usePercent));
    }
    Files.writeString(folder.resolve("trial.json"), file.toString());
    Terminal terminal = new Terminal(folder);
    assertThat(terminal.run("dry", "trial.json", "--json", "out.json")).as(terminal.err()).isZero();
    return mapper.readTree(folder.resolve("out.json").toFile());
  }
}
