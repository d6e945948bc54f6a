package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LearnCommandTest {
  private static final Path DEMO = Path.of("formulations", "garden");

  @TempDir private Path folder;

  private void copyDemo() throws IOException {
    try (Stream<Path> files = Files.list(DEMO)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    }
    Files.deleteIfExists(workshop());
  }

  private Path workshop() {
    return folder.resolve("workshop.json");
  }

  /** The readme learns from the example: its kept lessons are those that the program learns now. */
  @Test
  void theExampleHoldsWhatIsLearntFromIt() throws IOException {
    copyDemo();
    assertThat(Outcome.of(folder, "learn", ".").exit()).isZero();

    ObjectMapper json = new ObjectMapper();
    JsonNode learnt = json.readTree(workshop().toFile());
    JsonNode kept = json.readTree(DEMO.resolve("workshop.json").toFile());

    assertThat(learnt.equals(LearnCommandTest::difference, kept)).isTrue();
  }

  /** Machines differ in the last digits of a logarithm. */
  private static int difference(JsonNode one, JsonNode other) {
    boolean near =
        one.isNumber()
            && other.isNumber()
            && Math.abs(one.doubleValue() - other.doubleValue())
                <= 1e-6 * Math.max(1, Math.abs(other.doubleValue()));
    return near || one.equals(other) ? 0 : 1;
  }

  @Test
  void saysWhichTrialsKeepToANearerWorkshopFile() throws IOException {
    Path garden = Files.createDirectory(folder.resolve("garden"));
    Files.copy(DEMO.resolve("4-blend.json"), garden.resolve("4-blend.json"));
    assertThat(Outcome.of(folder, "learn", "garden").out()).doesNotContain("nearer");

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.out().replaceAll("\\s+", " "))
        .contains("The trials in garden keep to garden/workshop.json, which is nearer");
  }

  @Test
  void aCopyInABackupFolderCountsOnceAndIsNamed() throws IOException {
    copyDemo();
    Files.createDirectory(folder.resolve("backup"));
    Files.copy(DEMO.resolve("4-blend.json"), folder.resolve("backup/4-blend.json"));

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.out())
        .contains("from 4 plates and 19 weighings")
        .contains("backup/4-blend.json: the same plate as 4-blend.json, which counts once");
    assertThat(Outcome.of(folder, "compare", "4-blend.json", "backup", "--out", "p.html").err())
        .contains("the same plate as");
    // Its own lesson is left out of its forecast, in whichever folder the plate is asked about.
    String copy = Outcome.of(folder, "dry", "backup/4-blend.json").out();
    String said = "backup/4-blend.json: the same plate as 4-blend.json, which counts once.\n";
    assertThat(copy).contains(said);
    assertThat(copy.replace(said, "")).isEqualTo(Outcome.of(folder, "dry", "4-blend.json").out());
  }

  @Test
  void compareNamesTheFirstTenCopiesAndCheckAllOfThem() throws IOException {
    for (int i = 10; i < 23; i++) {
      Files.copy(DEMO.resolve("4-blend.json"), folder.resolve(i + ".json"));
    }

    String compared = Outcome.of(folder, "compare", ".", "--csv", "all.csv").err();

    assertThat(compared.lines().filter(line -> line.contains("the same plate as"))).hasSize(10);
    assertThat(compared)
        .contains("2 more files that repeat another; the command check has them all.\n");
    assertThat(Outcome.of(folder, "check", ".").out().lines())
        .filteredOn(line -> line.contains("the same plate as"))
        .hasSize(12);
  }

  @Test
  void tellsWhatTheDemoTeachesAndKeepsItBesideTheTrials() throws IOException {
    copyDemo();
    int files = files().size();

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.exit()).isZero();
    // Each trial of the demo was read; what is odd about its log is said all the same.
    assertThat(learn.err().lines())
        .hasSize(2)
        .allMatch(line -> line.contains("shed-april.csv"))
        .anyMatch(line -> line.contains("line 127: no reading for 9.5 h"))
        .anyMatch(line -> line.contains("367 readings are averaged over hours"));
    assertThat(learn.out())
        .containsPattern("Your room \"workroom\" dries \\d+ % (slower|faster) than a textbook room")
        .containsPattern("Your room \"shed\" dries \\d+ % (slower|faster) than a textbook room")
        .contains("from 4 plates and 19 weighings", "from 2 plates and 15 weighings")
        .contains("evaporation: ")
        .contains("Film of potato starch, 4 plates:", "Film of tapioca starch, 4 plates:")
        .contains("Your pours:", "not known yet")
        .contains(
            "tensile strength of potato film: ",
            " × textbook (",
            "5 strips",
            "stiffness: not known")
        .contains(
            "Readings that look wrong, given little weight:",
            "2-little-glycerol.json, weighing at +54h")
        .endsWith(String.format("; forecasts use it from now on.%n"))
        .doesNotContain("NaN", "Infinity", "Left out", "null");
    assertThat(learn.out().lines()).allMatch(line -> line.length() <= 92);
    assertThat(files()).hasSize(files + 1);
    assertThat(Outcome.of(folder, "check", ".").out()).contains("6 trials sound");
  }

  @Test
  void aWrongWeighingTeachesNothingAndTheOthersOfItsTrialDo() throws IOException {
    VariedDemo.twoPlates(folder, "kitchen", 1.4);
    Files.writeString(
        folder.resolve("b-heavy.json"),
        VariedDemo.weighed("kitchen", 1).toString().replace(":734", ":7340"));

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.exit()).isEqualTo(2);
    assertThat(learn.err())
        .contains("b-heavy.json, line 1", "weighings[1].mass_g", "the rest of this trial is used");
    assertThat(learn.out()).contains("3 plates");
  }

  @Test
  void aFaultyFileIsNamedAndTeachesNothing() throws IOException {
    VariedDemo.twoPlates(folder, "kitchen", 1.4);
    Outcome sound = Outcome.of(folder, "learn", ".");
    byte[] without = Files.readAllBytes(workshop());
    Files.writeString(folder.resolve("a-broken.json"), "{\"name\": ");

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(sound.exit()).isZero();
    assertThat(learn.exit()).isEqualTo(2);
    assertThat(learn.err().lines()).hasSize(1);
    assertThat(learn.err()).contains("a-broken.json, line 1");
    assertThat(learn.out()).isEqualTo(sound.out());
    assertThat(workshop()).hasBinaryContent(without);
  }

  @Test
  void withoutWeighingsThereIsNothingToLearn() throws IOException {
    VariedDemo.write(folder.resolve("a.json"), VariedDemo.unweighed("kitchen"));

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.exit()).isEqualTo(1);
    assertThat(learn.out()).isEmpty();
    assertThat(learn.err())
        .isEqualToNormalizingNewlines(
            "starchfilm: nothing to learn from: no trial without a fault in . has"
                + " weighings that can be used, or pulled strips; nothing written.\n");
    assertThat(workshop()).doesNotExist();
  }

  /** As when all weighings were taken out after learning, or the file is damaged beyond them. */
  @Test
  void whatWasLearntBeforeIsNamedWhereNothingTeachesItAnyMore() throws IOException {
    VariedDemo.write(folder.resolve("a.json"), VariedDemo.unweighed("kitchen"));
    Files.writeString(workshop(), "damaged");

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.exit()).isEqualTo(1);
    assertThat(learn.err())
        .endsWith(
            String.format(
                "nothing written. %s is as it was; delete it to forecast from the" + " textbook.%n",
                Path.of(".", "workshop.json")));
    assertThat(workshop()).hasContent("damaged");
  }

  @Test
  void onlyFaultyFilesAreWrongInput() throws IOException {
    Files.writeString(folder.resolve("a.json"), "{");

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.exit()).isEqualTo(2);
    assertThat(learn.err()).contains("a.json", "nothing written");
  }

  @Test
  void foldersThatAreNone() throws IOException {
    Path file = VariedDemo.write(folder.resolve("a.json"), VariedDemo.weighed("kitchen", 1));
    Path empty = Files.createDirectory(folder.resolve("empty"));

    assertThat(Outcome.of(folder, "learn", "nowhere"))
        .isEqualTo(
            new Outcome(
                2,
                "",
                String.format(
                    "starchfilm: nowhere: no folder; name the folder that holds your trials, such"
                        + " as learn .%n")));
    assertThat(Outcome.of(folder, "learn", file.toString()).exit()).isEqualTo(2);
    assertThat(Outcome.of(folder, "learn").err()).contains("FOLDER", "starchfilm learn --help");
    Outcome nothing = Outcome.of(folder, "learn", "empty");
    assertThat(nothing.exit()).isEqualTo(2);
    assertThat(nothing.err()).contains("a folder without trial files");
    assertThat(empty).isEmptyDirectory();
  }

  @Test
  void oneWeighingOfOneTrialTeachesALittle() throws IOException {
    ObjectNode trial = VariedDemo.unweighed("loft");
    trial.withArray("weighings").addObject().put("at", "+28h").put("mass_g", 700);
    VariedDemo.write(folder.resolve("a.json"), trial);

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.exit()).isZero();
    assertThat(learn.out())
        .contains("Your room \"loft\" dries ", " slower than ", "from 1 plate and 1 weighing");
  }

  @Test
  void twoRoomsAreToldApartWhateverTheirCapitals() throws IOException {
    VariedDemo.twoPlates(folder.resolve("a"), "Kitchen", 1);
    VariedDemo.write(folder.resolve("b/1.json"), VariedDemo.weighed("kitchen", 1));
    VariedDemo.write(folder.resolve("b/2.json"), VariedDemo.weighed("cellar", 1.9));

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.exit()).isZero();
    assertThat(learn.out())
        .contains("from 3 plates and 18 weighings", "from 1 plate and 6 weighings");
    assertThat(slower(learn.out(), "cellar")).isGreaterThan(slower(learn.out(), "Kitchen") + 15);
  }

  /** Per cent slower than a textbook room; below 0 for faster. */
  private static int slower(String told, String room) {
    Matcher sentence =
        Pattern.compile("room \"" + room + "\" dries (?:(\\d+) % (slower|faster)|as fast)")
            .matcher(told.replaceAll("\\s+", " "));
    assertThat(sentence.find()).as(told).isTrue();
    if (sentence.group(1) == null) {
      return 0;
    }
    int percent = Integer.parseInt(sentence.group(1));
    return sentence.group(2).equals("slower") ? percent : -percent;
  }

  @Test
  void stripsAloneTeachToo() throws IOException {
    VariedDemo.write(
        folder.resolve("a.json"), VariedDemo.pulled(VariedDemo.unweighed("kitchen"), 9, 8.5, 10));

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.exit()).isZero();
    assertThat(learn.out())
        .contains("Strips you pulled, compared with the textbook for home film:", "3 strips")
        .doesNotContain("Your room", "Your pours");
  }

  @Test
  void mendsADamagedFileAndKeepsItAside() throws IOException {
    VariedDemo.twoPlates(folder, "kitchen", 1.4);
    Files.writeString(workshop(), "{\"format\": 1,");
    assertThat(Outcome.of(folder, "dry", "taught-1.json").err())
        .contains("workshop.json, line 1", "run the command learn again");

    assertThat(Outcome.of(folder, "learn", ".").exit()).isZero();

    assertThat(Outcome.of(folder, "dry", "taught-1.json").err()).isEmpty();
    assertThat(folder.resolve("workshop.json.before")).hasContent("{\"format\": 1,");
  }

  @Test
  void saysWhereItCannotBeWritten() throws IOException {
    VariedDemo.twoPlates(folder, "kitchen", 1.4);
    Files.createDirectories(workshop().resolve("in the way"));

    Outcome learn = Outcome.of(folder, "learn", ".");

    assertThat(learn.exit()).isEqualTo(2);
    assertThat(learn.err().lines()).hasSize(1);
    assertThat(learn.err()).contains("workshop.json", "nothing was changed");
    assertThat(learn.out()).doesNotContain("Kept in");
  }

  private List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> !file.getFileName().toString().startsWith(".")).toList();
    }
  }

  @Test
  void saysThatItReplacedAWorkshopFileThatItDidNotWrite() throws IOException {
    VariedDemo.twoPlates(folder, "kitchen", 1.4);
    Files.writeString(workshop(), "{\"mine\": 1}");

    Outcome replaced = Outcome.of(folder, "learn", ".");

    assertThat(replaced.out().replaceAll("\\s+", " "))
        .contains(
            "The workshop.json that was there is not as this version writes it; it is kept as"
                + " workshop.json.before");
    assertThat(folder.resolve("workshop.json.before")).hasContent("{\"mine\": 1}");
    assertThat(Outcome.of(folder, "learn", ".").out()).doesNotContain("that was there");
  }
}
