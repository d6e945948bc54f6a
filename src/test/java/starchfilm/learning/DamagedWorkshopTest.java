package starchfilm.learning;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.casting.trial.Trial;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.files.findings.Fault;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.material.ingredient.StarchKind;

/** A workshop file that cannot be true is named in one sentence, and the textbook stands in. */
@Timeout(300)
class DamagedWorkshopTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int MANGLED = Integer.getInteger("starchfilm.mangled", 400);
  private static final String MEND =
      "run the command learn again on this folder; until then the forecasts are the textbook's";

  private static String sound = "";

  @TempDir private Path folder;
  private Trial trial = new MadeUpNotebook(1, Path.of("")).trial();

  @BeforeAll
  static void learn(@TempDir Path folder) throws Exception {
    List<Trial> taught = new MadeUpNotebook(21, folder).trials(3);
    Trial pulled =
        MadeUpNotebook.pulled(
            taught.get(0), taught.get(0).file(), List.of(MadeUpNotebook.strip(5e6, 0.4)));
    sound =
        Files.readString(
            Workshop.taughtBy(folder, List.of(pulled, taught.get(1), taught.get(2))).write());
  }

  @BeforeEach
  void writeItDown() throws IOException {
    trial = new MadeUpNotebook(22, folder).trial();
    Files.writeString(file(), sound);
  }

  @ParameterizedTest
  @CsvSource({
    "0, another format given",
    "1, a file that ends early given",
    "40, a file that ends early given",
    "99, given"
  })
  void cutOff(int percent, String given) throws IOException {
    Files.writeString(file(), sound.substring(0, sound.length() * percent / 100));

    assertThat(fault().sentence())
        .contains(given + ", allowed a file as learn writes it")
        .endsWith(MEND);
  }

  /** Half a word is no word of the format, yet it is the end that is missing. */
  @Test
  void cutOffInAWord() throws IOException {
    Files.writeString(file(), sound.substring(0, sound.indexOf("true") + 2));
    assertThat(fault().sentence()).contains("a file that ends early given");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/format | 1 | format",
        "/format | \"x\" | format",
        "/learnt/rooms | 3 | learnt",
        "/learnt/rooms/0/plates | 0.5 | learnt",
        "/learnt/rooms/0/plates | -1 | learnt",
        "/learnt/rooms/0/factors/0/factor | \"draught\" | learnt",
        "/learnt/rooms/0/factors/0/sd | -0.1 | learnt",
        "/learnt/kinds/0/kind | \"wood\" | learnt",
        "/learnt/films/0/log_factor/sd | -1 | learnt",
        "/plates/0/weighings | -3 | plates",
        "/plates/0/plate/pour_weighed | null | plates",
        "/plates/0/pull | [1, 2] | plates",
        "/plates/0/pull | [null, 2, 2, 2, 2, 2, 2, 2] | plates",
        "/plates/0/pull/0 | \"x\" | plates",
        "/plates/0/pull/0 | 1e300 | plates",
        "/plates/0/pull/0 | -1e14 | plates",
        "/plates/0/precision/0/0 | -5 | plates[1]: figures that no weighings can teach",
        "/plates/0/precision/1/0 | 1e9 | plates",
        "/plates/0/precision/0/0 | 1e9 | plates",
        "/plates/0/precision/3 | [1] | plates",
        "/plates/0/precision/3 | null | plates",
        "/plates/0/precision | [[1]] | plates",
        "/plates/0/plate/starch_shares | {\"WOOD\": 1} | plates",
        "/plates/0/plate/starch_shares | {} | plates",
        "/plates/0/plate/starch_shares | {\"CORN\": -1, \"RICE\": 2} | plates",
        "/plates/0/plate/starch_shares | {\"CORN\": 7} | plates",
        "/strips/0/property | \"colour\" | strips",
        "/strips/0/log_factor/sd | -1 | strips",
        "/strips/0/log_factor/value | 1000 | strips",
        "/learnt_from | 7 | learnt_from",
        "/learnt_from/0/checksum | \"x\" | learnt_from"
      })
  void editedByHand(String place, String value, String field) throws IOException {
    ObjectNode root = (ObjectNode) JSON.readTree(sound);
    JsonPointer pointer = JsonPointer.compile(place);
    JsonNode parent = root.at(pointer.head());
    JsonNode put = JSON.readTree(value);
    if (parent instanceof ArrayNode list) {
      list.set(pointer.last().getMatchingIndex(), put);
    } else {
      ((ObjectNode) parent).set(pointer.last().getMatchingProperty(), put);
    }
    Files.writeString(file(), root.toPrettyString());

    assertThat(fault().sentence())
        .contains("workshop.json", field, "given, allowed a file as learn writes it")
        .doesNotContain("java.", "starchfilm.")
        .endsWith(MEND);
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "1e999"})
  void figuresThatAreNone(String figure) throws IOException {
    Files.writeString(
        file(), sound.replaceFirst("\"deviation\" : [-0-9.E]+", "\"deviation\" : " + figure));

    assertThat(fault().sentence())
        .contains("learnt.rooms[1].factors[1]", "given, allowed a file as learn writes it")
        .endsWith(MEND);
  }

  @Test
  void anythingElse() throws IOException {
    for (String text :
        List.of("[]", "null", "7", "\"x\"", "{}", "[".repeat(100_000), sound + sound, "// x")) {
      Files.writeString(file(), text);
      assertThat(fault().sentence()).as(text.substring(0, 1)).endsWith(MEND);
    }
    Files.write(file(), sound.getBytes(StandardCharsets.UTF_16));
    assertThat(fault().sentence()).contains("text in UTF-16 given").endsWith(MEND);
  }

  @Test
  void fiftyMegabytesAreNotRead() throws IOException {
    byte[] blanks = new byte[50_000_000];
    Arrays.fill(blanks, (byte) ' ');
    Files.write(file(), blanks);

    assertThat(fault().sentence())
        .isEqualTo(
            file().toString().replace('\\', '/') + ": 50 MB given, allowed at most 20 MB; " + MEND);
  }

  @Test
  void learningAgainMendsIt() throws Exception {
    Files.writeString(file(), sound.substring(7));
    Workshops workshops = new Workshops(Clock.systemUTC());
    assertThat(workshops.faults(List.of(trial))).hasSize(1);

    Workshop.taughtBy(folder, List.of(trial)).write();

    assertThat(workshops.faults(List.of(trial))).isEmpty();
    assertThat(workshops.of(trial).isTaught()).isTrue();
  }

  @Test
  void aFolderThatMayNotBeWrittenTo() throws IOException {
    Assumptions.assumeTrue(
        folder.getFileSystem().supportedFileAttributeViews().contains("posix"), "has no rights");
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    try {
      Assumptions.assumeFalse(Files.isWritable(folder), "whoever may write everywhere");
      NotWrittenException refused =
          org.assertj.core.api.Assertions.catchThrowableOfType(
              NotWrittenException.class, () -> Workshop.taughtBy(folder, List.of(trial)).write());
      assertThat(refused).hasMessageContaining("may not be written to; nothing was changed");
      assertThat(file()).hasContent(sound);
    } finally {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
    }
  }

  /** Whatever becomes of the bytes: a sentence and the textbook, or finite figures. */
  @Test
  void mangledAtRandom() throws IOException {
    Random random = new Random(31);
    int refused = 0;
    for (int i = 0; i < MANGLED; i++) {
      String text = mangled(sound, random);
      Files.writeString(file(), text);
      Workshops workshops = new Workshops(Clock.systemUTC());
      List<Fault> faults = workshops.faults(List.of(trial));
      ParameterDistribution known = workshops.atThePour(trial).factors();
      for (UncertainParameter factor : UncertainParameter.values()) {
        assertThat(known.mean().of(factor)).as(text).isFinite();
        assertThat(known.sd(factor)).as(text).isFinite().isNotNegative();
      }
      workshops
          .film(trial)
          .logFactors()
          .forEach((property, factor) -> assertThat(Math.exp(factor.value())).isFinite());
      if (!faults.isEmpty()) {
        refused++;
        assertThat(faults.get(0).sentence()).endsWith(MEND).doesNotContain("\n", "java.");
        isTextbook(known);
      }
    }
    assertThat(refused).isBetween(MANGLED / 10, MANGLED);
  }

  private static String mangled(String text, Random random) {
    StringBuilder mangled = new StringBuilder(text);
    for (int change = 1 + random.nextInt(3); change > 0; change--) {
      int at = random.nextInt(mangled.length());
      switch (random.nextInt(5)) {
        case 0 -> mangled.setCharAt(at, "0123456789-.eE,:[]{}\" x".charAt(random.nextInt(23)));
        case 1 -> mangled.deleteCharAt(at);
        case 2 -> mangled.insert(at, random.nextInt(10));
        case 3 -> mangled.delete(at, Math.min(mangled.length(), at + random.nextInt(200)));
        default -> {
          int digit = at;
          while (digit < mangled.length() && !Character.isDigit(mangled.charAt(digit))) {
            digit++;
          }
          if (digit < mangled.length()) {
            mangled.setCharAt(digit, (char) ('0' + random.nextInt(10)));
          }
        }
      }
    }
    return mangled.toString();
  }

  private Path file() {
    return folder.resolve("workshop.json");
  }

  /** The one fault, after the forecasts were seen to be the textbook's. */
  private Fault fault() {
    Workshops workshops = new Workshops(Clock.systemUTC());
    isTextbook(workshops.atThePour(trial).factors());
    assertThat(workshops.film(trial).logFactors()).isEmpty();
    assertThat(workshops.in(folder).isTaught()).isFalse();
    List<Fault> faults = workshops.faults(List.of(trial));
    assertThat(faults).hasSize(1);
    assertThat(workshops.fault(folder)).contains(faults.get(0));
    assertThat(workshops.in(folder).factors("x", Map.of(StarchKind.CORN, 1.0), true).mean())
        .usingRecursiveComparison()
        .isEqualTo(ParameterDistribution.textbook().mean());
    return faults.get(0);
  }

  private void isTextbook(ParameterDistribution known) {
    WorkshopFileTest.isSame(known, Workshop.untaught(folder).atThePour(trial).factors());
  }
}
