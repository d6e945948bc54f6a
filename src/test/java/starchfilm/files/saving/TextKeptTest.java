package starchfilm.files.saving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.LocatedWriter;
import starchfilm.files.notebook.TrialText;

/** What an edit of a trial's text or fields leaves as it was. */
class TextKeptTest {
  private static final String WINDOWS = "\uFEFF" + TrialText.SOUND.replace("\n", "\r\n");

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void write() throws IOException {
    file = Files.writeString(folder.resolve("a.json"), WINDOWS);
  }

  @Test
  void aTextFromAFormKeepsLineEndsAndByteOrderMark() throws Exception {
    TrialFileText there = TrialFileText.of(file);
    String asPosted = there.text().replace("\r\n", "\n");
    TrialFileText.replace(file, asPosted, there.version());
    assertThat(Files.readString(file)).isEqualTo(WINDOWS);
    String edited = asPosted.replace("\"name\": \"A\"", "\"name\": \"B\"");
    String version = TrialFileText.replace(file, edited, there.version());
    assertThat(Files.readString(file)).isEqualTo(WINDOWS.replace("\"A\"", "\"B\""));
    assertThat(TrialFileText.of(file).version()).isEqualTo(version);
  }

  @Test
  void fieldsOfAStarchAreSetWhereTheyStand() throws Exception {
    String text =
        TrialText.SOUND.replace(
            "[{\"kind\": \"potato\", \"mass_g\": 20.0, \"moisture_pct\": 17.5}]",
            "[\n      {\"kind\": \"potato\",  \"_bag\": 3, \"mass_g\": 20.0}\n    ]");
    assertThat(text).contains("_bag");
    assertThat(with(text, Map.of("recipe.starch.0.mass_g", "21.0")))
        .isEqualTo(text.replace("20.0", "21.0"));
    assertThat(with(text, Map.of("recipe.starch.1.kind", "corn", "recipe.starch.1.mass_g", "5")))
        .isEqualTo(text.replace("20.0}\n", "20.0},\n      {\"kind\": \"corn\", \"mass_g\": 5}\n"));
    String single = text.replace("[\n", "\n").replace("\n    ],", ",");
    assertThat(with(single, Map.of("recipe.starch.0.mass_g", "21.0")))
        .isEqualTo(single.replace("20.0", "21.0"));
  }

  @Test
  void aTrialPouredAgainHasNeitherHistoryNorLogAndIsNotPutAway() throws Exception {
    String text =
        """
        {"put_away": true, "poured_at": "2026-04-02", "rating": 4, "weighings": [], "name": "A",
         "recipe": {"salt_g": 1}, "room": {"name": "shed", "log_csv": "shed.csv"}, "_own": 1}\
        """;
    ObjectValue fresh = FreshTrial.of(LocatedReader.object(text, ""));
    assertThat(LocatedWriter.line(fresh))
        .isEqualTo(
            "{\"name\": \"A\", \"recipe\": {\"salt_g\": 1}, \"room\": {\"name\": \"shed\"},"
                + " \"_own\": 1}");
  }

  @Test
  void aStarchWithoutItsKindIsTakenOutAndTheOthersStayAsWritten() throws Exception {
    String one = "[\n      {\"kind\": \"potato\",  \"mass_g\": 20.0}\n    ]";
    String two = one.replace("}\n", "},\n      {\"kind\": \"corn\", \"mass_g\": 5}\n");
    String around = "{\"recipe\": {\"starch\": %s}}";
    assertThat(with(around.formatted(two), Map.of("recipe.starch.1.kind", "")))
        .isEqualTo(around.formatted(one));
    assertThat(with(around.formatted(one), Map.of("recipe.starch.2.kind", "corn")))
        .isEqualTo(around.formatted(two.replace(", \"mass_g\": 5", "")));
  }

  @Test
  void aFieldOfWhatIsNoObjectIsRefusedInOneSentence() {
    for (String recipe : List.of("[]", "[{}]", "5", "null", "\"corn\"")) {
      for (String path : List.of("recipe.water.mass_g", "recipe.starch.0.mass_g")) {
        assertThatThrownBy(() -> with("{\"recipe\": " + recipe + "}", Map.of(path, "5")))
            .isInstanceOf(NotWrittenException.class)
            .hasMessageContaining("recipe that is no object")
            .hasMessageContaining("fix the file first");
      }
    }
  }

  @Test
  void aFieldOfOnesOwnMayHoldWhateverTheReaderPassesOver() throws Exception {
    String text = TrialText.SOUND.replace("\"name\"", "\"_own\": NaN, \"name\"");
    assertThat(with(text, Map.of("recipe.water.mass_g", "361")))
        .isEqualTo(text.replace("360", "361"));
    assertThat(NoteWriterTest.WORDS.confirmed("+6h", Optional.empty()).in(text))
        .isEqualTo(text.replace("730}", "730, \"confirmed\": true}"));
  }

  @Test
  void aWeighingIsFoundByItsTimeSincePourOfWhichOnlyTheDayIsNoted() throws Exception {
    String text =
        """
        {"poured_at": "2026-04-02", "weighings": [{"at": "2026-04-02T18:00", "mass_g": 730}]}\
        """;
    assertThat(NoteWriterTest.WORDS.confirmed("+6h", Optional.empty()).in(text))
        .isEqualTo(text.replace("730}", "730, \"confirmed\": true}"));
  }

  @Test
  void theTimeOfThePourIsTypedAsPeopleSayIt() throws NotWrittenException {
    String text = "{\"name\": \"A\", \"poured_at\": \"2026-04-02T10:30\"}";

    for (String typed : List.of("yesterday 18:30", "1.4.2026 18:30", "2026-04-01 18:30")) {
      assertThat(with(text, Map.of("poured_at", typed)))
          .as(typed)
          .isEqualTo(text.replace("02T10:30", "01T18:30"));
    }
    assertThat(with(text, Map.of("poured_at", "2026-04-01")))
        .isEqualTo(text.replace("02T10:30", "01"));
    assertThatThrownBy(() -> with(text, Map.of("poured_at", "in spring")))
        .isInstanceOf(NotWrittenException.class)
        .hasMessageContaining("yesterday 18:30");
  }

  private static String with(String text, Map<String, String> typed) throws NotWrittenException {
    Clock clock = Clock.fixed(Instant.parse("2026-04-02T12:00:00Z"), ZoneOffset.UTC);
    return FieldEdit.with(text, typed, new MomentParser(clock));
  }
}
