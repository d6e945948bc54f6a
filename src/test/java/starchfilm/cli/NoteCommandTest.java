package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** It is 20 April 2026, 12:00; the plate was poured the day before at 9:00. */
class NoteCommandTest {
  private static final String TRIAL =
      """
      {
        "poured_at": "2026-04-19T09:00",
        "recipe": {"starch": [{"kind": "potato", "mass_g": 20}], "water": {"mass_g": 360}},
        "pour": {
          "plate": {"length_mm": 300, "width_mm": 200, "tare_g": 600},
          "poured_g": 150
        }
      }
      """;

  @TempDir private Path folder;
  private Terminal terminal = new Terminal(Path.of(""));

  @BeforeEach
  void writeTrial() throws IOException {
    Files.writeString(folder.resolve("a.json"), TRIAL);
    terminal = new Terminal(folder);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "112 118 131",
        "112; 118; 131",
        "112, 118, 131 um",
        "112um 118um 131um",
        "0.112 0.118 0.131 mm"
      })
  void severalThicknessesAreNotedOneByOne(String typed) {
    assertThat(terminal.run("note", "a.json", "--thickness", typed)).as(terminal.err()).isZero();

    assertThat(terminal.out())
        .containsSubsequence(
            "dry thickness 112 \u00B5m", "dry thickness 118 \u00B5m", "dry thickness 131 \u00B5m");
  }

  @Test
  void notesSeveralThingsAtOnce() throws IOException {
    int exit =
        terminal.run(
            "note",
            "a.json",
            "--weighed",
            "712,0g",
            "--weighed",
            "6h=734 g",
            "--weighed",
            "yesterday 18:30=0.73 kg",
            "--fault",
            "still-wet",
            "--where",
            "middle",
            "--rating",
            "2",
            "--remark",
            "Slow.");
    assertThat(terminal.err()).isEmpty();
    assertThat(exit).isZero();
    assertThat(terminal.out())
        .isEqualToNormalizingNewlines(
            """
            Noted in a.json:
              weighed 712.0 g, Mon 20 Apr, 12:00
              weighed 734 g, +6h
              weighed 730 g, Sun 19 Apr, 18:30
              still wet, middle
              rating 2
              remark: Slow.
            The version before is kept in a.json.before.
            """);
    assertThat(Files.readString(folder.resolve("a.json")))
        .isEqualTo(
            TRIAL.replace(
                "150\n  }\n}",
                """
                150
                  },
                  "weighings": [
                    {"at": "2026-04-20T12:00", "mass_g": 712.0},
                    {"at": "+6h", "mass_g": 734},
                    {"at": "2026-04-19T18:30", "mass_g": 730}
                  ],
                  "faults": [
                    {"kind": "still wet", "where": "middle"}
                  ],
                  "rating": 2,
                  "remarks": [
                    "Slow."
                  ]
                }\
                """));
  }

  @Test
  void notesPourCookStripMoveAndThickness() throws IOException {
    int exit =
        terminal.run(
            "note",
            "a.json",
            "--poured",
            "today 8:00",
            "--poured-mass",
            "151g",
            "--tare",
            "598 g",
            "--cook-time",
            "12min",
            "--cook-top",
            "92C",
            "--cook-lost",
            "26 g",
            "--moved",
            "both",
            "--at",
            "1h ago",
            "--pull",
            "0,93kg",
            "--width",
            "10mm",
            "--stretch",
            "24%",
            "--thickness",
            "0,11mm",
            "--thickness",
            "114um");
    assertThat(terminal.err()).isEmpty();
    assertThat(exit).isZero();
    assertThat(terminal.out())
        .isEqualToNormalizingNewlines(
            """
            Noted in a.json:
              pour: Mon 20 Apr, 8:00, 151 g on one plate, plate 598 g
              cook: 12 min, up to 92 \u00B0C, lost 26 g
              dry thickness 110 \u00B5m
              dry thickness 114 \u00B5m
              strip of 10 mm broke at 0.93 kg, stretched by 24 %
              open faces: both, Mon 20 Apr, 11:00
            The version before is kept in a.json.before.
            """);
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("\"poured_at\": \"2026-04-20T08:00\"")
        .contains("\"tare_g\": 598")
        .contains("\"poured_g\": 151")
        .contains("{\"load_kg\": 0.93, \"width_mm\": 10, \"stretch_pct\": 24}");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "--weighed | 712 mm | `starchfilm: --weighed: \"712 mm\" given, allowed a number in g, such"
            + " as 12.5 g; mm is a unit of length; write a mass`",
        "--weighed | soon=712g | `starchfilm: --weighed: \"soon\" given, allowed a time such as"
            + " +6h, now, 20 min ago, 18:30, yesterday 18:30, friday 7:15, 2.4.2026 18:30 or"
            + " 2026-04-02 18:30; write it like one of these`",
        "--fault | cracks | `starchfilm: --fault: \"cracks\" given, allowed cracked, broke apart,"
            + " curled, shrank, sticky, brittle, cloudy, still wet, bubbles, lumps, scorched,"
            + " mould, stuck, uneven; did you mean cracked?`",
        "--rating | 6 | `starchfilm: --rating: \"6\" given, allowed 1 to 5; write 1 for a failure"
            + " to 5 for a film you want again`",
        "--poured | +6h | `starchfilm: --poured: \"+6h\" given, allowed date and time of the pour;"
            + " write it like 2026-04-02 10:30 or today 10:30`",
        "--photo | b.png | `starchfilm: b.png: there is no such picture; check its name and"
            + " folder`",
      })
  void whatCannotBeNoted(String option, String value, String sentence) throws IOException {
    assertThat(terminal.run("note", "a.json", option, value)).isEqualTo(2);
    assertThat(terminal.err()).isEqualToNormalizingNewlines(sentence + "\n");
    assertThat(terminal.out()).isEmpty();
    assertThat(Files.readString(folder.resolve("a.json"))).isEqualTo(TRIAL);
  }

  @Test
  void whatCannotBeTrueIsNotNoted() throws IOException {
    assertThat(terminal.run("note", "a.json", "--weighed", "1200g")).isEqualTo(2);
    assertThat(terminal.err()).contains("a film of 600 g given, allowed at most the 150 g");
    assertThat(Files.readString(folder.resolve("a.json"))).isEqualTo(TRIAL);
  }

  @Test
  void missingFileAndFolder() {
    assertThat(terminal.run("note", "b.json", "--rating", "2")).isEqualTo(2);
    assertThat(terminal.err())
        .endsWith("b.json: there is no such file; check its name and folder\n");
    Terminal other = new Terminal(folder);
    assertThat(other.run("note", ".", "--rating", "2")).isEqualTo(2);
    assertThat(other.err()).endsWith("it is a folder; name one trial file\n");
  }

  @Test
  void asksWithoutOptions() throws IOException {
    terminal.answering(
        "weigh",
        "20 min ago",
        "heavy",
        "705 g",
        "fault",
        "crackd",
        "cracked",
        "edge",
        "",
        "",
        "cook",
        "",
        "",
        "",
        "rating",
        "3",
        "");
    assertThat(terminal.run("note", "a.json")).isZero();
    assertThat(terminal.err())
        .contains("\"heavy\" given, allowed a number in g")
        .contains("did you mean cracked?");
    assertThat(terminal.out())
        .contains("Note what? weighing, thickness, pull")
        .contains("What did the scale show, plate included, in g?")
        .contains("  weighed 705 g, Mon 20 Apr, 11:40\n  cracked, edge\n  rating 3\n");
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("{\"at\": \"2026-04-20T11:40\", \"mass_g\": 705}")
        .contains("{\"kind\": \"cracked\", \"where\": \"edge\"}")
        .doesNotContain("cook");
  }

  @Test
  void asksForAPourThatWasNotNotedYet() throws IOException {
    Files.writeString(
        folder.resolve("a.json"), TRIAL.replace("\"poured_at\": \"2026-04-19T09:00\",", ""));
    terminal.answering("pour", "9:00", "", "598g", "weighing", "", "731", "");
    assertThat(terminal.run("note", "a.json")).isZero();
    assertThat(terminal.err()).isEmpty();
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("\"poured_at\": \"2026-04-20T09:00\"")
        .contains("\"tare_g\": 598")
        .contains("{\"at\": \"2026-04-20T12:00\", \"mass_g\": 731}");
  }

  @Test
  void anInputThatEndsNotesWhatWasAnsweredInFull() throws IOException {
    terminal.answering("remark", "Half done", "weighing", "now");
    assertThat(terminal.run("note", "a.json")).isZero();
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("Half done")
        .doesNotContain("weighings");
  }

  @Test
  void aSlipCostsNoneOfTheOtherAnswers() throws IOException {
    terminal.answering("rating", "3", "weighing", "20 min ago", "9 g", "remark", "Clear", "");
    assertThat(terminal.run("note", "a.json")).isEqualTo(2);
    assertThat(terminal.err()).contains("starchfilm: ").contains("mass_g");
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("\"rating\": 3")
        .contains("Clear")
        .doesNotContain("\"mass_g\": 9}");
  }

  @Test
  void aSlipBesideAPictureDoesNotNoteWhereThePictureWasTaken() throws IOException {
    Files.write(folder.resolve("dish.jpg"), EveryStepFailsTest.photoWithItsPlace());
    terminal.answering("weighing", "20 min ago", "9 g", "photo", "dish.jpg", "");
    assertThat(terminal.run("note", "a.json")).isEqualTo(2);
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("a-photo-1.jpg")
        .doesNotContain("dish.jpg");
    assertThat(terminal.out()).contains("is a copy without the place it was taken at");
  }

  @Test
  void withoutAnswersNothingIsNoted() throws IOException {
    assertThat(terminal.run("note", "a.json")).isZero();
    assertThat(terminal.out()).endsWith("Nothing noted.\n");
    assertThat(Files.readString(folder.resolve("a.json"))).isEqualTo(TRIAL);
  }

  @Test
  void doesNotAskAboutAFileAtFault() throws IOException {
    Files.writeString(folder.resolve("a.json"), "{");
    assertThat(terminal.run("note", "a.json")).isEqualTo(2);
    assertThat(terminal.err()).contains("an end of the file in the middle of a value");
    assertThat(terminal.out()).isEmpty();
  }

  @Test
  void notesAFilmThatGainedOnlyOnceThePlateIsTold() throws IOException {
    terminal.run("note", "a.json", "--weighed", "6h=700g");
    String before = Files.readString(folder.resolve("a.json"));

    assertThat(terminal.run("note", "a.json", "--weighed", "7h=740g")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("a.json: a film 40 g heavier than 1 h before; nothing was noted.")
        .contains("--same-plate");
    assertThat(Files.readString(folder.resolve("a.json"))).isEqualTo(before);

    assertThat(terminal.run("note", "a.json", "--weighed", "7h=740g", "--same-plate=false"))
        .isZero();
    assertThat(terminal.out()).contains("weighed 740 g, +7h, another plate");
    assertThat(terminal.run("note", "a.json", "--weighed", "8h=740g", "--same-plate")).isZero();
    assertThat(Files.readString(folder.resolve("a.json")))
        .contains("\"mass_g\": 740, \"same_plate\": false", "740, \"same_plate\": true");
  }

  @Test
  void refusesAWeighingInTheFuture() throws IOException {
    assertThat(terminal.run("note", "a.json", "--weighed", "2026-12-25 10:00=700g")).isEqualTo(2);
    assertThat(terminal.err())
        .contains("\"2026-12-25 10:00\" given, allowed a time up to now, 2026-04-20T12:00");
    assertThat(terminal.run("note", "a.json", "--weighed", "200h=700g")).isEqualTo(2);
    assertThat(Files.readString(folder.resolve("a.json"))).isEqualTo(TRIAL);
  }

  @Test
  void takesTheLastNoteBackAndBringsItAgain() throws IOException {
    Path file = folder.resolve("a.json");
    terminal.run("note", "a.json", "--weighed", "6h=700g");
    String noted = Files.readString(file);

    assertThat(terminal.run("note", "a.json", "--undo")).isZero();
    assertThat(terminal.out()).contains("Undone in a.json:", "{\"at\": \"+6h\", \"mass_g\": 700}");
    assertThat(Files.readString(file)).isEqualTo(TRIAL);

    assertThat(terminal.run("note", "a.json", "--undo")).isZero();
    assertThat(Files.readString(file)).isEqualTo(noted);
  }

  @Test
  void takesNothingBackFromAFileThatWasChangedSince() throws IOException {
    Path file = folder.resolve("a.json");
    assertThat(terminal.run("note", "a.json", "--undo")).isEqualTo(2);
    assertThat(terminal.err()).contains("no version before it is kept");
    terminal.run("note", "a.json", "--rating", "2");
    String mine = Files.readString(file).replace("\"rating\": 2", "\"rating\": 3");
    Files.writeString(file, mine);
    Files.setLastModifiedTime(file, FileTime.from(Instant.now().plusSeconds(5)));

    assertThat(terminal.run("note", "a.json", "--undo")).isEqualTo(2);
    assertThat(terminal.err()).contains("the file was changed since; nothing was undone");
    assertThat(Files.readString(file)).isEqualTo(mine);
    assertThat(terminal.run("note", "a.json", "--undo", "--rating", "4")).isEqualTo(2);
  }

  @Test
  void helpTeaches() {
    assertThat(terminal.run("note", "--help")).isZero();
    assertThat(terminal.out()).contains("Without options it asks").contains("--weighed 20h=680g");
  }

  @Test
  void aWeighingThatDoesNotCountYetIsToldAtOnce() {
    Outcome started =
        Outcome.of(
            folder,
            "new",
            "potato 20 g, glycerol 6 g, water 360 g, poured yesterday 18:30, 3 mm on glass");
    assertThat(started.exit()).as(started.err()).isZero();

    Outcome first = Outcome.of(folder, "note", "as-cooked.json", "--weighed", "6h=760g");
    Outcome second = Outcome.of(folder, "note", "as-cooked.json", "--weighed", "12h=740g");

    assertThat(first.exit()).isZero();
    assertThat(first.err()).contains("empty weight is unknown; it counts once that is noted");
    assertThat(second.exit()).isZero();
    assertThat(second.err()).doesNotContain("empty weight");
  }
}
