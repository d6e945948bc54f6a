package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A jar that was kept: trials and plans take from it by name, and what is left is counted. */
class KeptJarTest {
  private static final String PLAN =
      "plan|--starch|potato|--plates|2x300x200mm glass|--room|19C,55%|--jar|";

  @TempDir private Path folder;

  @BeforeEach
  void keep() throws IOException {
    assertThat(
            run("assay|--mass|125 g|--origin|recovered|--density|1.2 g/ml|--at|20 C|--keep|batch")
                .exit())
        .isZero();
    // As if it had been weighed before the trials below were poured.
    Path file = folder.resolve("batch.jar.json");
    ObjectNode jar = (ObjectNode) new ObjectMapper().readTree(Files.readString(file));
    jar.put("weighed_at", "2020-01-01T09:00");
    Files.writeString(file, jar.toPrettyString());
  }

  private Outcome run(String typed) {
    return Outcome.of(folder, typed.split("\\|"));
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private void cast(String name, String poured, double grams) throws IOException {
    ObjectNode trial = VariedDemo.weighed("workroom", 1);
    trial.put("name", name).put("poured_at", poured);
    ((ObjectNode) trial.path("recipe"))
        .set(
            "glycerol",
            new ObjectMapper().createObjectNode().put("jar", "batch").put("mass_g", grams));
    VariedDemo.write(folder.resolve(name + ".json"), trial);
  }

  @Test
  void aJarNothingWasTakenFromHoldsWhatItHeld() {
    run("assay|--mass|400 ml|--label|99.5 %|--keep|full");

    assertThat(oneLine(run("check|.").out()))
        .containsPattern("Jar full: ([0-9]+ g \\([0-9]+ to [0-9]+ g\\)) left\\. It held \\1 on");
  }

  @Test
  void saysWhatIsLeftAfterTheTrialsThatTookFromIt() throws IOException {
    cast("a", "2026-03-07T10:15", 5.2);
    cast("b", "2026-03-08T10:15", 20);
    cast("old", "2019-03-08T10:15", 50);

    assertThat(oneLine(run("check|.").out()))
        .containsPattern("Jar batch: 99\\.8 g \\(99.4 to 100 g\\) left\\.")
        .contains("2 trials took 25.2 g.")
        .contains("1 trial poured before that not counted.")
        .contains("3 trials sound.");
  }

  @Test
  void warnsOfATrialThatTakesMoreThanIsLeft() throws IOException {
    cast("a", "2026-03-07T10:15", 100);
    cast("b", "2026-03-08T10:15", 30);

    String said = oneLine(run("check|.").out());

    assertThat(said)
        .contains("b.json: recipe.glycerol.jar: 30 g out of the jar batch, which has 25");
    assertThat(said).doesNotContain("a.json: recipe.glycerol.jar");
    assertThat(oneLine(run("dry|b.json").err())).contains("30 g out of the jar batch");
  }

  /** As the jar's range has it: a trial that says the same by itself is forecast alike. */
  @Test
  void forecastsCarryTheRangeOfTheJar() throws IOException {
    cast("named", "2026-03-07T10:15", 5.2);
    JsonNode jar = new ObjectMapper().readTree(folder.resolve("batch.jar.json").toFile());
    ObjectNode said =
        (ObjectNode) new ObjectMapper().readTree(folder.resolve("named.json").toFile());
    ObjectNode glycerol = (ObjectNode) said.path("recipe").path("glycerol");
    glycerol.remove("jar");
    for (String key : List.of("purity_pct", "salt_pct", "origin")) {
      glycerol.set(key, jar.path(key));
    }
    VariedDemo.write(folder.resolve("said.json"), said);

    assertThat(jar.path("purity_pct").path("from").asDouble())
        .isLessThan(jar.path("purity_pct").path("to").asDouble());
    assertThat(run("dry|named.json").out()).isEqualTo(run("dry|said.json").out());
  }

  @Test
  void planTakesFromItAndWhatIsSavedNamesIt() throws IOException {
    Outcome plan = run(PLAN + "batch|--save|.");

    assertThat(oneLine(plan.out()))
        .contains("Jar batch: 125 g")
        .contains("no more glycerol than the low end of what is left, 125 g")
        .contains("recovered");
    JsonNode saved = new ObjectMapper().readTree(folder.resolve("most-film.json").toFile());
    assertThat(saved.path("recipe").path("glycerol").path("jar").asText()).isEqualTo("batch");
    assertThat(oneLine(run("check|.").out())).contains("not poured yet would take");
  }

  @Test
  void planElsewhereWritesWhatTheJarHolds() throws IOException {
    run(PLAN + "batch|--save|other");

    JsonNode saved = new ObjectMapper().readTree(folder.resolve("other/most-film.json").toFile());
    assertThat(saved.path("recipe").path("glycerol").has("jar")).isFalse();
    assertThat(saved.path("recipe").path("glycerol").path("purity_pct").has("from")).isTrue();
  }

  @Test
  void aTypedTrialTakesFromItByName() {
    Outcome dry = run("dry|--starch|potato 60g|--glycerol|200g|--jar|batch|--water|900g|--wet|3mm");

    assertThat(oneLine(dry.out())).contains("It takes 200 g out of the jar batch, which has 125 g");
  }

  @Test
  void wrongNamesAndDoubledFactsAreRefusedInASentence() throws IOException {
    assertThat(run(PLAN + "bach").err())
        .contains("--jar: \"bach\" given, allowed a jar kept in this folder: batch;")
        .doesNotContain("unknown g");
    assertThat(run(PLAN + "batch|--jar|batch").err())
        .contains("--jar: given more than once, allowed once")
        .doesNotContain("unknown g");
    assertThat(run(PLAN + "batch|--purity|80%").err()).contains("--purity: given beside --jar");
    assertThat(run("assay|--mass|1g|--label|99%|--keep|a/b:c").exit()).isEqualTo(2);
    cast("a", "2026-03-07T10:15", 5.2);
    Path file = folder.resolve("a.json");
    String sound = Files.readString(file);
    Files.writeString(file, sound.replace("\"batch\"", "\"bach\""));
    assertThat(run("check|.").err())
        .contains("recipe.glycerol.jar: \"bach\" given, allowed a jar kept in this folder: batch;");
    Files.writeString(
        file, sound.replace("\"jar\" : \"batch\"", "\"jar\" : \"batch\", \"purity_pct\" : 80"));
    assertThat(run("check|.").err()).contains("purity_pct beside the jar batch");
  }

  @Test
  void aFaultOfItsFileIsToldWithItsLineAndStopsNoOtherTrial() throws IOException {
    cast("a", "2026-03-07T10:15", 5.2);
    VariedDemo.write(folder.resolve("other.json"), VariedDemo.weighed("workroom", 1));
    Path file = folder.resolve("batch.jar.json");
    Files.writeString(
        file, Files.readString(file).replaceFirst("\"from\" : [0-9.]+", "\"from\" : -3"));

    Outcome check = run("check|.");

    assertThat(check.err()).contains("batch.jar.json, line", "-3 given, allowed 0 to 100000 g");
    assertThat(check.out()).contains("1 trial sound");
  }

  @Test
  void noCommandTakesItsFileForATrial() throws IOException {
    cast("a", "2026-03-07T10:15", 5.2);

    for (String command : List.of("check|.", "learn|.", "compare|a.json|batch.jar.json")) {
      Outcome outcome = run(command);
      assertThat(outcome.exit()).as(command).isZero();
      assertThat(outcome.err() + outcome.out())
          .as(command)
          .doesNotContain("without the field recipe");
    }
  }

  @Test
  void aJarNobodyCanTellIsNotKept() {
    Outcome withheld =
        run(
            "assay|--mass|900 g|--oil|rapeseed|1 l|--alcohol|methanol|220 ml|--catalyst|NaOH|3.5 g"
                + "|--density|1.15 g/ml|--at|20 C|--keep|no");

    assertThat(withheld.exit()).isEqualTo(1);
    assertThat(folder.resolve("no.jar.json")).doesNotExist();
  }
}
