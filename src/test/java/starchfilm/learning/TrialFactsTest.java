package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.NotebookReader;

/** An edited trial is known by the facts that learning reads, and by no others. */
class TrialFactsTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String TRIAL =
      """
      {
        "name": "Edited",
        "poured_at": "2026-04-19T10:00",
        "recipe": {
          "starch": [{"kind": "potato", "mass_g": 12.0, "moisture_pct": 17}],
          "glycerol": {"mass_g": 4.2, "purity_pct": 99},
          "water": {"mass_g": 230}
        },
        "cook": {"minutes": 10, "top_C": 90, "water_lost_g": 14},
        "pour": {
          "plate": {"material": "glass", "length_mm": 300, "width_mm": 200, "thickness_mm": 4, "tare_g": 598},
          "poured_g": 150
        },
        "room": {"name": "kitchen", "air_C": 20, "rh_pct": 50},
        "weighings": [{"at": "+6h", "mass_g": 730}, {"at": "+24h", "mass_g": 680}],
        "pulls": [{"load_N": 9, "width_mm": 10, "thickness_um": 110, "stretch_pct": 25}],
        "remarks": ["as it was"],
        "rating": 3
      }
      """;

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/weighings/0/mass_g | 730.1",
        "/weighings/1/at | \"+25h\"",
        "/pulls/0/load_N | 9.1",
        "/pulls/0/stretch_pct | 26",
        "/recipe/water/mass_g | 231",
        "/recipe/starch/0/kind | \"corn\"",
        "/cook/minutes | 11",
        "/pour/poured_g | 151",
        "/pour/plate/material | \"steel\"",
        "/pour/plate/tare_g | 599",
        "/room/name | \"shed\"",
        "/room/air_C | 21",
        "/room/rh_pct | {\"from\": 45, \"to\": 55}"
      })
  void changeWithAFactThatLearningReads(String place, String value) throws IOException {
    assertThat(facts(edited(place, value))).isNotEqualTo(facts(TRIAL));
  }

  /** The last digits of a figure may differ between machines, and nobody edits those. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/name | \"Other\"",
        "/remarks/0 | \"as it is\"",
        "/rating | 4",
        "/room/name | \"Kitchen\"",
        "/weighings/1/at | \"2026-04-20T10:00\"",
        "/pulls/0/stretch_pct | 25.0000000000001",
        "/room/rh_pct | 50.00000000001"
      })
  void stayWithAnyOther(String place, String value) throws IOException {
    assertThat(facts(edited(place, value))).isEqualTo(facts(TRIAL));
  }

  /** Written another way, and in another order, the file says the same. */
  @Test
  void stayWithHowTheFileIsWritten() throws IOException {
    ObjectNode root = (ObjectNode) JSON.readTree(TRIAL);
    root.set("name", root.remove("name"));
    root.withArray("weighings").add(root.withArray("weighings").remove(0));

    assertThat(facts(root.toPrettyString())).isEqualTo(facts(TRIAL));
  }

  @ParameterizedTest
  @ValueSource(strings = {"weighings", "pulls"})
  void changeWithReadingsThatAreGone(String readings) throws IOException {
    ObjectNode root = (ObjectNode) JSON.readTree(TRIAL);
    root.remove(readings);

    assertThat(facts(root.toString())).isPresent().isNotEqualTo(facts(TRIAL));
  }

  /** A trial that teaches nothing, or that no model takes, has no facts. */
  @Test
  void areThoseOfTrialsThatCanTeach() throws IOException {
    ObjectNode bare = (ObjectNode) JSON.readTree(TRIAL);
    bare.remove(List.of("weighings", "pulls"));
    ObjectNode strips = (ObjectNode) JSON.readTree(TRIAL);
    strips.remove("weighings");
    assertThat(TrialFacts.ofAll(folder, List.of(trial(TRIAL)))).hasSize(1);
    assertThat(TrialFacts.ofAll(folder, List.of(trial(strips.toString())))).hasSize(1);
    assertThat(TrialFacts.ofAll(folder, List.of(trial(bare.toString())))).isEmpty();
  }

  private static String edited(String place, String value) throws IOException {
    ObjectNode root = (ObjectNode) JSON.readTree(TRIAL);
    int last = place.lastIndexOf('/');
    JsonNode parent = root.at(place.substring(0, last));
    if (parent instanceof ObjectNode object) {
      object.set(place.substring(last + 1), JSON.readTree(value));
    } else {
      ((ArrayNode) parent).set(Integer.parseInt(place.substring(last + 1)), JSON.readTree(value));
    }
    return root.toString();
  }

  private Optional<String> facts(String text) throws IOException {
    return TrialFacts.of(folder, trial(text)).map(TrialFacts::checksum);
  }

  private Trial trial(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("trial.json"), text);
    return NotebookReader.read(List.of(file)).trials().get(0);
  }

  /** Whose weighing and whose strip it was is read, too. */
  @Test
  void changeWithThePlateAReadingIsOf() throws IOException {
    ObjectNode root = (ObjectNode) JSON.readTree(TRIAL);
    ((ObjectNode) root.path("pour")).put("plates", 3);
    Optional<String> ofOne = facts(root.toString());
    ((ObjectNode) root.at("/weighings/1")).put("plate", 2);
    Optional<String> ofTwo = facts(root.toString());
    ((ObjectNode) root.at("/weighings/0")).put("plate", 2);
    Optional<String> allOfTwo = facts(root.toString());
    ((ObjectNode) root.at("/pulls/0")).put("plate", 2);
    Optional<String> stripOfTwo = facts(root.toString());
    ((ObjectNode) root.at("/pulls/0")).put("plate", 3);
    assertThat(List.of(ofOne, ofTwo, allOfTwo, stripOfTwo, facts(root.toString())))
        .doesNotHaveDuplicates()
        .allMatch(Optional::isPresent);
  }

  /** A weighed plate that no model takes teaches nothing; its strips are another matter. */
  @Test
  void areNoneOfAWeighedPlateThatNoModelTakes() throws IOException {
    Trial trial = trial(TRIAL);
    Trial deep = trial.cast(trial.casting().with(trial.casting().pour().to(0.06)), List.of());
    Trial unweighed = SyntheticPlates.with(deep, deep.file(), List.of(), deep.seen().pulls());
    assertThat(TrialFacts.of(folder, trial)).isPresent();
    assertThat(TrialFacts.of(folder, deep)).isEmpty();
    assertThat(TrialFacts.of(folder, unweighed)).isPresent();
  }

  @Test
  void areEightHexadecimalDigits() {
    assertThatThrownBy(() -> new TrialFacts("a.json", "0123456g"))
        .hasMessage("no checksum: 0123456g");
  }
}
