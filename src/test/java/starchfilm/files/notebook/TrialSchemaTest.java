package starchfilm.files.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import starchfilm.files.notebook.TrialField.ValueKind;
import starchfilm.proof.DemoTrials;

/** The published schema and the reader say the same of types, ranges and words. */
class TrialSchemaTest {
  private static final JsonSchema SCHEMA = schema();

  @TempDir private Path folder;

  static List<Path> formulations() {
    return DemoTrials.files();
  }

  @ParameterizedTest
  @MethodSource("formulations")
  void holdsForEveryFormulation(Path file) throws IOException {
    assertThat(complaints(Files.readString(file))).isEmpty();
  }

  @Test
  void holdsForTheSoundTrialThatTheCasesStartFrom() {
    assertThat(complaints(TrialText.SOUND)).isEmpty();
    assertThat(TrialText.faults(folder, TrialText.SOUND)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "name                        | `\"B\"`",
        "invented                    | true",
        "poured_at                   | `\"2026-04-02\"`",
        "poured_at                   | `\"2026-04-02 9:30\"`",
        "poured_at                   | `\"2026-04-02T09:30:00+02:00\"`",
        "scale_g                     | 0.1",
        "recipe.starch               | `{\"kind\": \"waxy corn\", \"mass_g\": 20}`",
        "recipe.starch.0.kind        | `\"unknown\"`",
        "recipe.starch.0.mass_g      | `\"unknown\"`",
        "recipe.starch.0.mass_g      | `{\"from\": 15, \"to\": 25}`",
        "recipe.starch.0.mass_g      | `\"20 g\"`",
        "recipe.starch.0.mass_g      | `\"2 tbsp\"`",
        "pour.plate.length_mm        | `\"30 cm\"`",
        "recipe.starch.0.moisture_pct| 0",
        "recipe.glycerol.mass_g      | 0",
        "recipe.glycerol.purity_pct  | 97",
        "recipe.glycerol             | `{\"volume_ml\": 5, \"purity_pct\": 99}`",
        "recipe.salt_g               | 0.5",
        "cook.top_C                  | 130",
        "pour.wet_thickness_mm       | 2.5",
        "pour.plates                 | 1",
        "pour.plate.material         | `\"silicone\"`",
        "room.rh_pct                 | 100",
        "room.rh_pct                 | 0",
        "room.air_C                  | 1",
        "room.swing                  | `{\"coolest_C\": 6, \"warmest_C\": 16, \"driest_rh_pct\": 50, \"dampest_rh_pct\": 85, \"warmest_at\": \"15:00\"}`",
        "room.bench_C                | 35",
        "moved                       | `[{\"at\": \"+48h\", \"faces\": \"both\"}]`",
        "moved                       | `{\"at\": \"+2d 6h\", \"faces\": \"turned\"}`",
        "weighings.0.at              | `\"2026-04-02T12:00\"`",
        "weighings.0.at              | `\"+90min\"`",
        "weighings.0.same_plate      | true",
        "weighings                   | `{\"at\": \"+1,5h\", \"mass_g\": 100, \"with_plate\": false}`",
        "dry_thickness_um            | 110",
        "dry_thickness_um            | `[100, 120]`",
        "faults                      | `{\"kind\": \"still wet\", \"where\": \"middle\"}`",
        "pulls                       | `[{\"load_kg\": 0.9, \"width_mm\": 10, \"thickness_um\": 110}]`",
        "rating                      | 5",
        "remarks                     | `\"good\"`",
        "remarks                     | `[\"good\", \"clear\"]`",
        "own_field                   | `{\"a\": [1, 2]}`",
      })
  void bothAccept(String path, String json) {
    String text = TrialText.with(path, json);
    assertThat(complaints(text)).as("schema").isEmpty();
    assertThat(TrialText.faults(folder, text)).as("reader").isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "name                        | 7",
        "name                        | `\" \"`",
        "invented                    | `\"yes\"`",
        "poured_at                   | `\"2 April\"`",
        "poured_at                   | `\"+6h\"`",
        "scale_g                     | 0",
        "recipe                      | 5",
        "recipe                      | ``",
        "recipe                      | `{\"water\": {\"mass_g\": 300}}`",
        "recipe.starch               | `[]`",
        "recipe.starch               | `\"potato\"`",
        "recipe.starch.0             | 20",
        "recipe.starch.0.kind        | `\"sago\"`",
        "recipe.starch.0.mass_g      | -4",
        "recipe.starch.0.mass_g      | 0",
        "recipe.starch.0.mass_g      | 1e6",
        "recipe.starch.0.mass_g      | null",
        "recipe.starch.0.mass_g      | `\"20\"`",
        "recipe.starch.0.mass_g      | `{\"from\": 15}`",
        "recipe.starch.0.mass_g      | `{\"from\": -1, \"to\": 5}`",
        "recipe.starch.0.moisture_pct| 0.17",
        "recipe.starch.0.moisture_pct| 31",
        "recipe.glycerol             | 6",
        "recipe.glycerol.mass_g      | true",
        "recipe.glycerol.purity_pct  | 0.82",
        "recipe.glycerol.purity_pct  | 1",
        "recipe.glycerol.purity_pct  | 101",
        "recipe.glycerol.salt_pct    | -1",
        "recipe.vinegar.acidity_pct  | 0.05",
        "recipe.water.mass_g         | -1",
        "recipe.water                | []",
        "cook.minutes                | 601",
        "cook.top_C                  | 200",
        "pour.plate                  | `\"glass\"`",
        "pour.plate.material         | `\"slate\"`",
        "pour.plate.length_mm        | 5",
        "pour.plate.thickness_mm     | 0",
        "pour.plates                 | 0",
        "pour.plates                 | 1.5",
        "pour.poured_g               | 0",
        "pour.wet_thickness_mm       | 0",
        "pour.wet_thickness_mm       | 0.001",
        "pour.wet_thickness_mm       | 100",
        "pour.unevenness_pct         | 0.25",
        "pour.unevenness_pct         | 95",
        "pour.paste_C                | 99",
        "room.air_C                  | 0.5",
        "room.air_C                  | 91",
        "room.rh_pct                 | 101",
        "room.rh_pct                 | 0.55",
        "room.air_speed_m_per_s      | -0.1",
        "room.swing                  | `{\"coolest_C\": 6}`",
        "room.log_csv                | 5",
        "moved                       | `[{\"at\": \"+48h\"}]`",
        "moved                       | `[{\"at\": \"+48h\", \"faces\": \"lower\"}]`",
        "use.after_days              | 1000",
        "weighings.0.at              | `\"later\"`",
        "weighings.0.at              | 6",
        "weighings.0                 | `{\"mass_g\": 700}`",
        "weighings.0                 | `{\"at\": \"+6h\"}`",
        "weighings.0.mass_g          | 0",
        "weighings.0.with_plate      | 1",
        "weighings.0.same_plate      | 1",
        "dry_thickness_um            | 0",
        "dry_thickness_um            | `[100, \"thin\"]`",
        "faults                      | `[{\"kind\": \"ugly\"}]`",
        "faults                      | `[{\"where\": \"edge\"}]`",
        "faults                      | `[{\"kind\": \"curled\", \"where\": \"left\"}]`",
        "pulls                       | `[{\"load_N\": 0, \"width_mm\": 10}]`",
        "pulls                       | `[{\"load_N\": 5, \"width_mm\": 0.1}]`",
        "rating                      | 6",
        "rating                      | 2.5",
        "remarks                     | `[1]`",
        "photos                      | `[1]`",
      })
  void bothRefuse(String path, String json) {
    String text = TrialText.with(path, json == null ? "" : json);
    assertThat(complaints(text)).as("schema").isNotEmpty();
    assertThat(TrialText.faults(folder, text)).as("reader").isNotEmpty();
  }

  static List<TrialField> fields() {
    return TrialField.TRIAL.all();
  }

  @ParameterizedTest
  @MethodSource("fields")
  void everyExampleIsWhatItsFieldMayHold(TrialField field) {
    if (field.example().contains("..")) {
      return;
    }
    String path = field.path();
    String json = field.example();
    // What makes no sense alone is told whole: what it needs beside the field stands in its own
    // example.
    TrialField around = around(path);
    boolean whole = around.many() || around.path().startsWith("room.");
    if (whole && !around.path().isEmpty()) {
      json = field.kind() == ValueKind.SECTION ? json : entry(around, field);
      path = around.path();
    }
    String text = TrialText.with(path, json);
    assertThat(complaints(text)).as("schema").isEmpty();
    if (!field.key().equals("diameter_mm")
        && !field.key().equals("jar")
        && !field.key().equals("area_cm2")
        && !field.key().equals("rim_height_mm")
        && !field.key().equals("log_csv")) {
      assertThat(TrialText.faults(folder, text)).as("reader").isEmpty();
    }
  }

  private static TrialField around(String path) {
    return path.contains(".")
        ? fields().stream()
            .filter(field -> field.path().equals(path.substring(0, path.lastIndexOf('.'))))
            .findFirst()
            .orElseThrow()
        : TrialField.TRIAL;
  }

  private static String entry(TrialField list, TrialField field) {
    StringBuilder entry = new StringBuilder("{\"" + field.key() + "\": " + field.example());
    for (TrialField other : list.fields().values()) {
      if (other.required() && !other.equals(field)) {
        entry.append(", \"").append(other.key()).append("\": ").append(other.example());
      }
    }
    return entry.append("}").toString();
  }

  private static Set<ValidationMessage> complaints(String text) {
    return SCHEMA.validate(text, InputFormat.JSON);
  }

  private static JsonSchema schema() {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(TrialSchema.text());
  }
}
