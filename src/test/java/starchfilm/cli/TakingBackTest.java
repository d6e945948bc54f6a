package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A slip of the finger is taken back without an editor. */
class TakingBackTest {
  private static final String TRIAL =
      """
      {
        "name": "Blend",
        "poured_at": "2026-04-19T10:00",
        "recipe": {"starch": {"kind": "potato", "mass_g": 20}, "water": {"mass_g": 360}},
        "pour": {
          "plate": {"length_mm": 300, "width_mm": 200, "tare_g": 600},
          "plates": 2,
          "wet_thickness_mm": 2.5
        },
        "weighings": [
          {"at": "+2h", "mass_g": 740},
          {"at": "+6h", "mass_g": 709},
          {"at": "+20h", "mass_g": 660}
        ],
        "remarks": "clear"
      }
      """;

  @TempDir Path folder;
  private Path file;
  private Terminal terminal;

  @BeforeEach
  void write() throws IOException {
    file = Files.writeString(folder.resolve("blend.json"), TRIAL);
    terminal = new Terminal(folder);
  }

  private String noting(String... more) {
    String[] words = new String[more.length + 2];
    words[0] = "note";
    words[1] = "blend.json";
    System.arraycopy(more, 0, words, 2, more.length);
    assertThat(terminal.run(words)).as(terminal.err()).isZero();
    return terminal.out();
  }

  @Test
  void refusesWhatIsSaidOfANoteThatIsMissing() throws IOException {
    assertThat(terminal.run("note", "blend.json", "--at", "10:00")).isEqualTo(2);
    assertThat(terminal.err()).contains("--at: given without anything to note");
    assertThat(terminal.run("note", "blend.json", "--caption", "a crack")).isEqualTo(2);
    assertThat(terminal.run("note", "blend.json", "--thickness", ";")).isEqualTo(2);
    assertThat(terminal.err()).contains("--thickness: given without anything to note");

    assertThat(Files.readString(file)).isEqualTo(TRIAL);
  }

  @Test
  void aCorrectionIsToldWithItsUnitAndAStripMayHoldPounds() {
    noting("--replace", "weighing 2=1 lb 9 oz");
    assertThat(terminal.out()).contains("weighed 709 g, +6h is now 709 g");

    noting("--pull", "2lb", "--width", "0.5in");
    assertThat(terminal.out()).contains("strip of 12.7 mm broke at 0.907 kg");
  }

  @Test
  void listsWhatIsNotedLineByLine() {
    assertThat(noting("--list"))
        .contains("weighing 2: plate 1 weighed 709 g, +6h")
        .contains("remark 1: remark: clear");
  }

  @Test
  void takesOutALineAndLeavesTheRestAsItStands() throws IOException {
    assertThat(noting("--drop", "weighing 2")).contains("removed: plate 1 weighed 709 g, +6h");

    assertThat(Files.readString(file))
        .isEqualTo(TRIAL.replace(",\n    {\"at\": \"+6h\", \"mass_g\": 709}", ""));
  }

  @Test
  void takesOutTheFirstAndTheLastAndThenTheListItself() throws IOException {
    noting("--drop", "weighing 1", "--drop", "weighing 3", "--drop", "weighing 2");

    assertThat(Files.readString(file)).doesNotContain("weighings").contains("\"remarks\"");
    assertThat(terminal.run("check", "blend.json")).isZero();
  }

  @Test
  void correctsAValueAndKeepsItsTime() throws IOException {
    noting("--replace", "weighing 2=705.5 g", "--replace", "remark 1=cloudy");

    assertThat(Files.readString(file))
        .contains("{\"at\": \"+6h\", \"mass_g\": 705.5}")
        .contains("\"remarks\": \"cloudy\"");
  }

  @Test
  void bringsARemovedLineBack() throws IOException {
    noting("--drop", "weighing 3");
    noting("--undo");

    assertThat(Files.readString(file)).isEqualTo(TRIAL);
  }

  @Test
  void undoingTwiceNamesOnlyWhatComesAndGoes() {
    noting("--put-away");

    assertThat(noting("--undo")).contains("  \"put_away\": true").doesNotContain("remarks");
    assertThat(noting("--undo")).contains("  again: \"put_away\": true").doesNotContain("remarks");
  }

  @Test
  void refusesALineThatIsNotThereAndAValueThatCannotBe() throws IOException {
    assertThat(terminal.run("note", "blend.json", "--drop", "weighing 7")).isEqualTo(2);
    assertThat(terminal.run("note", "blend.json", "--replace", "weighing 1=900g")).isEqualTo(2);

    assertThat(terminal.err())
        .contains("--drop: \"weighing 7\" given, allowed weighing 1, weighing 2")
        .contains("a film of 300 g");
    assertThat(Files.readString(file)).isEqualTo(TRIAL);
  }

  @Test
  void refusesAWeighingInTheFutureOrBeforeThePourAndOfAPlateThatWasNotPoured() {
    assertThat(terminal.run("note", "blend.json", "--weighed", "2026-04-25 10:00=640g"))
        .isEqualTo(2);
    assertThat(terminal.run("note", "blend.json", "--weighed", "2026-04-18 10:00=640g"))
        .isEqualTo(2);
    assertThat(terminal.run("note", "blend.json", "--of", "3", "--weighed", "640g")).isEqualTo(2);

    assertThat(terminal.err())
        .contains("what has not happened yet cannot be noted")
        .contains("before the pour")
        .contains("plate 3 given, allowed plate 1 to 2, as poured");
  }

  @Test
  void notesSeveralThicknessesAtOnceAndTakesMillimetresForWhatTheyAre() throws IOException {
    noting("--thickness", "112; 118; 0.131");

    assertThat(Files.readString(file)).contains("112").contains("118").contains("131");
    assertThat(Files.readString(file)).doesNotContain("0.131");
  }

  @Test
  void putsATrialAwayAndFetchesItBack() throws IOException {
    Files.writeString(folder.resolve("other.json"), TRIAL.replace("Blend", "Other"));
    noting("--put-away");
    assertThat(terminal.run("today")).isZero();
    assertThat(terminal.out()).contains("Weigh Other").doesNotContain("Weigh Blend");
    noting("--fetch-back");

    assertThat(Files.readString(file)).isEqualTo(TRIAL);
  }

  @Test
  void givesAPlateUpWithAReasonAndEndsTheTrialWithTheLast() {
    noting("--of", "2", "--given-up", "the cat");
    assertThat(terminal.run("today")).isZero();
    assertThat(terminal.out()).contains("Blend, plate 1");
    noting("--off", "--of", "1");
    terminal = new Terminal(folder);

    assertThat(terminal.run("today")).isZero();
    assertThat(terminal.out()).contains("No plate is drying.");
  }

  @Test
  void notesWhatWasReallyWeighedOut() throws IOException {
    noting("--starch", "19.6g", "--water", "358");

    assertThat(Files.readString(file))
        .contains("\"kind\": \"potato\", \"mass_g\": 19.6")
        .contains("\"water\": {\"mass_g\": 358}");
    assertThat(terminal.run("note", "blend.json", "--vinegar", "10g")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("--vinegar: \"vinegar\" given, allowed potato starch, water");
  }

  @Test
  void aStarterThatIsPouredIsNotInventedAnyMore() throws IOException {
    Files.copy(Path.of("formulations/starter-first-film.json"), folder.resolve("mine.json"));
    assertThat(terminal.run("note", "mine.json", "--poured", "today 10:00"))
        .as(terminal.err())
        .isZero();

    assertThat(Files.readString(folder.resolve("mine.json"))).doesNotContain("invented");
  }

  @Test
  void aTimeThatWasNotedWronglyIsCorrectedAsAValueIs() throws IOException {
    noting("--replace", "weighing 2=yesterday 18:30", "--replace", "weighing 1=3h");

    assertThat(terminal.out())
        .contains(
            "corrected: plate 1 weighed 709 g, +6h is now at Sun 19 Apr, 18:30",
            "corrected: plate 1 weighed 740 g, +2h is now at +3h");
    assertThat(Files.readString(file))
        .contains("{\"at\": \"2026-04-19T18:30\", \"mass_g\": 709}")
        .contains("{\"at\": \"+3h\", \"mass_g\": 740}");
  }

  @Test
  void aTimeBeforeThePourOrToComeIsRefusedAndNothingChanged() throws IOException {
    assertThat(terminal.run("note", "blend.json", "--replace", "weighing 2=2026-04-18 10:00"))
        .isEqualTo(2);
    assertThat(terminal.err()).contains("before the pour");
    assertThat(terminal.run("note", "blend.json", "--replace", "weighing 2=2026-04-22 10:00"))
        .isEqualTo(2);
    assertThat(terminal.err()).contains("allowed a time up to now");

    assertThat(Files.readString(file)).isEqualTo(TRIAL);
  }

  @Test
  void listsWhatIsSaidOfAFaultAndOfAPicture() throws IOException {
    Files.write(
        folder.resolve("edge.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
    Files.writeString(
        file,
        TRIAL.replace(
            "\"remarks\"",
            """
            "faults": [{"kind": "cracked", "where": "edge", "remark": "from the rim"}],
              "photos": ["edge.png"],
              "photo_notes": [
                {"file": "edge.png", "at": "+6h", "caption": "a crack"},
                {"file": "edge.png", "caption": "two cracks"}
              ],
              "remarks\"\
            """));

    assertThat(noting("--list"))
        .contains("fault 1: cracked, edge: from the rim")
        .contains("photo 1: photo edge.png, two cracks, +6h");
  }
}
