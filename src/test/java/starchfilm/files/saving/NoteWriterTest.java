package starchfilm.files.saving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.FaceChange;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.json.Located;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.notebook.TrialText;
import starchfilm.files.saving.NoteWriter.WrittenNote;
import starchfilm.files.saving.NotedLine.NoteKind;

class NoteWriterTest {
  private static final byte[] PNG = {
    (byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R'
  };

  static final NoteWords WORDS =
      new NoteWords(new MomentParser(Clock.systemUTC()), Optional.empty());

  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void writeTrial() throws IOException {
    file = folder.resolve("a.json");
    Files.writeString(file, TrialText.SOUND);
  }

  @Test
  void addsAWeighingAndNothingElse() throws Exception {
    Trial trial = NoteWriter.add(file, weighing("+12h", "712.0")).trial().orElseThrow();
    assertThat(trial.seen().weighings()).hasSize(2);
    // The digits typed are kept: the scale showed tenths of a gram, the plate's tare whole ones.
    assertThat(trial.seen().weighings().get(1).massSdKg())
        .isCloseTo(Math.hypot(1e-4, 1e-3) / Math.sqrt(12), within(1e-15));
    assertThat(Files.readString(file))
        .isEqualTo(
            TrialText.SOUND.replace(
                "\"mass_g\": 730}", "\"mass_g\": 730}, {\"at\": \"+12h\", \"mass_g\": 712.0}"));
    assertThat(Files.readString(folder.resolve("a.json.before"))).isEqualTo(TrialText.SOUND);
  }

  @Test
  void everyKindOfNoteReadsBackAsNoted() throws Exception {
    Files.write(folder.resolve("plate.png"), PNG);
    Note all =
        new Note.Several(
            List.of(
                put(
                    Map.of(
                        "poured_at", "2026-04-02T11:00",
                        "pour.poured_g", "148",
                        "pour.plate.tare_g", "601")),
                put(Map.of("cook.minutes", "12", "cook.top_C", "91", "cook.water_lost_g", "27")),
                weighing("2026-04-02T20:00", "720"),
                WORDS.weighed("80", Located.text("+30h"), Optional.empty(), true),
                WORDS.thicknesses("110; 120", Optional.empty()),
                line(
                    NoteKind.PULL,
                    "{'load_N': 9.4, 'width_mm': 10, 'thickness_um': 114, 'stretch_pct': 24}"),
                line(NoteKind.PULL, "{'load_kg': 0.9, 'width_mm': 10}"),
                line(
                    NoteKind.FAULT,
                    "{'kind': 'still wet', 'where': 'middle', 'at': '+40h',"
                        + " 'remark': 'like \\'jelly\\''}"),
                line(NoteKind.MOVE, "{'at': '+50h', 'faces': 'both'}"),
                rated(4),
                remark("Smells of vinegar.\nGone after a day."),
                photo("plate.png")));
    WrittenNote written = NoteWriter.add(file, all);
    Trial trial = written.trial().orElseThrow();
    assertThat(NotebookReader.read(List.of(file)).trials()).containsExactly(trial);
    assertThat(trial.pouredAt().orElseThrow()).hasToString("2026-04-02T11:00");
    assertThat(trial.recipe().cook().durationS().value()).isEqualTo(720);
    assertThat(trial.seen().weighings())
        .extracting(Weighing::timeS)
        .containsExactly(21_600.0, 32_400.0, 108_000.0);
    assertThat(trial.seen().dryThicknessesM()).hasSize(2);
    assertThat(trial.seen().pulls()).hasSize(2);
    assertThat(trial.seen().faults().get(0).remark()).contains("like \"jelly\"");
    assertThat(trial.casting().faces())
        .containsExactly(new FaceChange(180_000, FaceChange.OpenFaces.BOTH));
    assertThat(trial.seen().rating()).hasValue(4);
    assertThat(trial.seen().remarks()).containsExactly("Smells of vinegar.\nGone after a day.");
    assertThat(trial.seen().photos()).hasSize(1);
  }

  @Test
  void fieldsOfOnesOwnTheirOrderAndTheLayoutStay() throws Exception {
    String own =
        TrialText.SOUND.replace(
            "\"cook\":", "\"zz_weather\": {\"b\": 1.0, \"a\": []},\n\n  \"cook\":");
    Files.writeString(file, "\uFEFF" + own);
    NoteWriter.add(file, rated(3));
    assertThat(Files.readString(file))
        .isEqualTo("\uFEFF" + own.replace("730}]", "730}],\n  \"rating\": 3"));
  }

  @Test
  void refusesWhatTheReaderWouldRefuse() {
    assertThat(refusal(weighing("+12h", "900")))
        .isEqualTo(
            "a.json, line 23, column 72: weighings[2].mass_g: a film of 300 g given, allowed at most"
                + " the 150 g that were poured; check the mass, the plate's tare_g, and whether"
                + " with_plate is right");
    assertThat(refusal(weighing("2026-04-02T09:00", "700")))
        .endsWith(
            "a weighing 1 h before the pour given, allowed the time of the pour or later; check this"
                + " time and poured_at");
    assertThat(refusal(weighing("2026-04-02T16:00", "700")))
        .endsWith(
            "a second weighing at the same time given, allowed one weighing at a"
                + " time; delete one, or correct its time");
    assertThat(refusal(rated(9))).contains("rating: 9 given, allowed 1 to 5");
  }

  @Test
  void notesARangeWhereTheFieldTakesOne() throws Exception {
    NoteWriter.add(file, put(Map.of("cook.minutes", "12-14 min")));
    assertThat(Files.readString(file)).contains("\"minutes\": {\"from\": 12, \"to\": 14}");
    assertThat(put(Map.of("cook.minutes", "12-14 min")).words()).isEqualTo("cook: 12 to 14 min");
  }

  @Test
  void refusesPicturesThatAreNone() throws IOException {
    Files.writeString(folder.resolve("text.jpg"), "no picture");
    Files.write(
        folder.resolve("phone.heic"), "\0\0\0\u0018ftypheic".getBytes(StandardCharsets.ISO_8859_1));
    try (RandomAccessFile big = new RandomAccessFile(folder.resolve("big.png").toFile(), "rw")) {
      big.setLength(200_000_000);
    }
    assertThat(refusal(photo("text.jpg")))
        .isEqualTo(
            "text.jpg: a file that is no picture given, allowed JPEG, PNG or GIF; name the picture itself");
    assertThat(refusal(photo("phone.heic")))
        .isEqualTo(
            "phone.heic: a photo or film in a format of phones given, allowed JPEG, PNG or GIF;"
                + " export it as JPEG");
    assertThat(refusal(photo("big.png")))
        .isEqualTo("big.png: a picture of 200 MB given, allowed at most 30 MB; save it smaller");
    assertThat(refusal(photo("gone.png")))
        .isEqualTo("gone.png: there is no such picture; check its name and folder");
    assertThat(refusal(photo("../plate.png")))
        .isEqualTo(
            "../plate.png: \"../plate.png\" given, allowed the name of a file beside this one or in a"
                + " folder below it; move the file there and write its name with /");
  }

  @Test
  void asksBeforeAFilmThatGainedIsNoted() throws Exception {
    assertThat(refusal(weighing("+8h", "750"))).contains("a film 20 g heavier than 2 h before");
    assertThat(refusal(weighing("+6h 1min", "734")))
        .contains("a film 4 g heavier than 1 minute before");
    assertThat(
            NoteWriter.add(file, weighing("+6h 1min", "731"))
                .trial()
                .orElseThrow()
                .seen()
                .weighings())
        .as("a gram more is what the scale may show")
        .hasSize(2);
  }

  @Test
  void keepsAFilmThatGainedOnceThePlateIsTold() throws Exception {
    NoteWriter.add(file, weighing("+12h", "700"));
    Note.Added heavier = weighing("+13h", "725");

    assertThat(
            NoteWriter.add(file, heavier.onSamePlate(false))
                .trial()
                .orElseThrow()
                .seen()
                .weighings())
        .as("another plate's weighing is kept in the file and left out of the trial")
        .hasSize(2);
    assertThat(Files.readString(file)).contains("\"mass_g\": 725, \"same_plate\": false");
    Note.Added again = weighing("+14h", "726");
    assertThat(
            NoteWriter.add(file, again.onSamePlate(true)).trial().orElseThrow().seen().weighings())
        .hasSize(3);
  }

  @Test
  void leavesAnUntoldGainWithinMinutesOutOfTheTrial() throws IOException {
    Files.writeString(
        file,
        TrialText.with(
            "weighings",
            """
            [{"at": "+6h", "mass_g": 700}, {"at": "+6h 2min", "mass_g": 730},
             {"at": "+7h", "mass_g": 729}]"""));
    var read = NotebookReader.read(List.of(file));
    assertThat(read.trials().get(0).seen().weighings())
        .extracting(Weighing::timeS)
        .containsExactly(6 * 3600.0, 7 * 3600.0);
    assertThat(read.notices())
        .extracting(notice -> notice.text())
        .containsExactly(
            "a film 30 g heavier than 2 minutes before; left out until \"same_plate\": true stands"
                + " beside it, or false for another plate");
  }

  @Test
  void aFileBrokenByHandIsLeftAsItIs() throws IOException {
    Files.writeString(file, TrialText.SOUND.replace("\"name\": \"A\",", "\"name\": \"A\""));
    assertThat(refusal(rated(3)))
        .isEqualTo(
            "a.json, line 3, column 3: a field without a comma before it given, allowed JSON as RFC"
                + " 8259 has it; put a comma after the field before");
  }

  @Test
  void otherFaultsOfTheFileDoNotStandInTheWay() throws Exception {
    Files.writeString(file, TrialText.with("room.rh_pct", "130"));
    assertThat(NoteWriter.add(file, rated(3)).trial()).isEmpty();
    assertThat(Files.readString(file)).contains("\"rating\": 3");
  }

  @Test
  void aNumberThatIsNoneStaysWithItsFault() throws Exception {
    String odd = TrialText.SOUND.replace("\"name\"", "\"rating\": NaN, \"name\"");
    Files.writeString(file, odd);
    NoteWriter.add(file, remark("Seen."));
    assertThat(Files.readString(file)).contains("NaN").contains("Seen.");
  }

  @Test
  void noFileNoNote() {
    file = folder.resolve("b.json");
    NotWrittenException e =
        catchThrowableOfType(NotWrittenException.class, () -> NoteWriter.add(file, rated(3)));
    assertThat(e.getMessage()).endsWith("b.json: there is no such file; check its name and folder");
    assertThat(file).doesNotExist();
  }

  private static Note.Added weighing(String at, String grams) {
    return WORDS.weighed(grams, Located.text(at), Optional.empty(), false);
  }

  private static Note put(Map<String, String> typed) {
    Map<String, Located> values = new LinkedHashMap<>();
    typed.forEach((path, words) -> values.put(path, WORDS.value(path, words)));
    return NoteWords.put(values);
  }

  private static Note line(NoteKind kind, String json) throws UnreadableFileException {
    return new Note.Added(kind, LocatedReader.read(json.replace('\'', '"')));
  }

  private static Note photo(String file) {
    return new Note.Added(NoteKind.PHOTO, Located.object().with("file", file));
  }

  static Note rated(int stars) {
    return new Note.Edit(
        "rating " + stars,
        text -> TextEdit.set(text, "rating", LocatedReader.read(String.valueOf(stars))));
  }

  static Note remark(String words) {
    return WORDS.one(NoteKind.REMARK, words);
  }

  /** The sentence of a refused note; the file must be untouched and nothing left beside it. */
  private String refusal(Note note) {
    try {
      String before = Files.readString(file);
      NotWrittenException e =
          catchThrowableOfType(NotWrittenException.class, () -> NoteWriter.add(file, note));
      assertThat(Files.readString(file)).isEqualTo(before);
      assertThat(folder.resolve("a.json.before")).doesNotExist();
      return e.getMessage().replace(folder.toString().replace('\\', '/') + "/", "");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
