package starchfilm.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a stranger may put into a file, its name or a command line, and where output may go. */
@Timeout(60)
class HostileFilesTest {
  private static final Path STARTER =
      Path.of("formulations/starter-first-film.json").toAbsolutePath();

  @TempDir private Path folder;
  private Terminal terminal;
  private String sound = "";

  @BeforeEach
  void open() throws IOException {
    terminal = new Terminal(folder);
    sound = Files.readString(STARTER);
  }

  private void trial(String file, String from, String to) throws IOException {
    assertThat(sound).contains(from);
    Files.writeString(folder.resolve(file), sound.replace(from, to));
  }

  @Test
  void namesCannotCommandTheTerminalNorForgeALine() throws IOException {
    trial(
        "t.json",
        "\"First film: potato, bendable\"",
        "\"a\\u001b[31mRED\\u001b]0;pwn\\u0007b \\u009b \\u202e ok\\r\\n9 trials sound.\"");
    assertThat(terminal.run("dry", "t.json")).isZero();
    assertThat(terminal.run("check", "x\u001b[2J.json")).isEqualTo(2);
    assertThat(terminal.run("compare", "t.json", "--out", "no\u001b[2J/x.html")).isEqualTo(2);
    assertThat(terminal.out() + terminal.err())
        .doesNotContain("\u001b", "\u0007", "\u009b", "\u202e", "\n9 trials sound.")
        .contains("9 trials sound.");
  }

  @Test
  void outputThatIsLostIsSaidAndIsNoSuccess() throws IOException {
    Files.copy(STARTER, folder.resolve("t.json"));
    StringWriter err = new StringWriter();
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("No space left on device");
          }
        };
    for (String[] command : new String[][] {{"check", "t.json"}, {"dry", "t.json", "--csv", "-"}}) {
      CommandContext surroundings =
          new CommandContext(
              folder,
              Clock.systemUTC(),
              new PrintWriter(full, true),
              new PrintWriter(err, true),
              new BufferedReader(new StringReader("")));
      assertThat(new App(surroundings).run(command)).isEqualTo(2);
    }
    assertThat(err.toString())
        .isEqualToNormalizingNewlines(
            "starchfilm: the output could not be written: the disk is full, or the program that"
                + " reads it has ended.\n"
                + "starchfilm: the output could not be written: the disk is full, or the program"
                + " that reads it has ended.\n");
  }

  @Test
  void aWordThatBeginsWithAnAtSignIsThatWord() throws IOException {
    Files.copy(STARTER, folder.resolve("t.json"));
    Files.writeString(folder.resolve("one.txt"), "Hello");
    Path words = Files.writeString(folder.resolve("args.txt"), "t.json");
    assertThat(terminal.run("note", "t.json", "--remark", "@" + words)).isZero();
    assertThat(Files.readString(folder.resolve("t.json"))).contains("\"@" + words + "\"");
    assertThat(terminal.run("check", "@" + words)).isEqualTo(2);
  }

  @Test
  void tenFaultsOfAFileAreToldAndTheRestCounted() throws IOException {
    String starches = IntStream.range(0, 5_000).mapToObj(i -> "5").collect(Collectors.joining(","));
    Files.writeString(folder.resolve("bad.json"), "{\"recipe\": {\"starch\": [" + starches + "]}}");
    assertThat(terminal.run("check", "bad.json")).isEqualTo(2);
    assertThat(terminal.err().lines()).hasSize(11);
    assertThat(terminal.err())
        .endsWith(String.format("bad.json: and 4990 more; fix these first%n"));
    assertThat(terminal.out()).contains("1 file with 5000 faults.");
  }

  @Test
  void aHundredFaultyFilesAreToldAndTheRestCounted() throws IOException {
    for (int i = 0; i < 130; i++) {
      Files.writeString(folder.resolve(i + ".json"), "[]");
    }
    assertThat(terminal.run("check", ".")).isEqualTo(2);
    assertThat(terminal.err().lines()).hasSize(101);
    assertThat(terminal.err()).contains("and faults in 30 more files; fix these first");
  }

  @Test
  void aCellOfAMegabyteIsNotRepeated() throws IOException {
    Files.writeString(
        folder.resolve("log.csv"), "time,C,%\n2026-04-01 10:00," + "9x".repeat(500_000) + ",50\n");
    trial("t.json", "\"rh_pct\": 50}", "\"rh_pct\": 50, \"log_csv\": \"log.csv\"}");
    assertThat(terminal.run("check", "t.json")).isEqualTo(2);
    assertThat(terminal.err()).isNotEmpty();
    assertThat(terminal.err().lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThan(999));
  }

  @Test
  void fieldsThatAreNotUsedAreNamedAndCounted() throws IOException {
    trial(
        "t.json",
        "\"water\":",
        "\"acid\": {\"kind\": \"citric\"}, \"filler\": 3, \"_mine\": 1, \"water\":");
    String says =
        "t.json: not used: recipe.acid, recipe.filler; begin the names of fields of your own with"
            + " _";
    assertThat(terminal.run("check", "t.json")).isZero();
    assertThat(terminal.out()).contains(says);
    assertThat(terminal.run("dry", "t.json")).isZero();
    assertThat(terminal.err()).contains(says);
    assertThat(terminal.run("compare", "t.json", "--out", "-")).isZero();
    assertThat(terminal.out()).contains("not used: recipe.acid, recipe.filler");
  }

  @Test
  void manyFieldsThatAreNotUsedAreBounded() throws IOException {
    String many =
        IntStream.range(0, 60_000)
            .mapToObj(i -> "\"strange" + i + "\": 1, ")
            .collect(Collectors.joining());
    trial("t.json", "\"name\": \"First", many + "\"name\": \"First");
    assertThat(terminal.run("check", "t.json")).isZero();
    assertThat(terminal.out())
        .contains(
            "strange9 and 59990 more;", "Only the first 1000 were checked for typing mistakes");
  }

  @Test
  void whatLearnKeepsIsNeverTakenForATrial() throws IOException {
    Files.copy(STARTER, folder.resolve("t.json"));
    Files.copy(Path.of("formulations/garden/workshop.json"), folder.resolve("workshop.json"));
    assertThat(terminal.run("check", "t.json", "workshop.json")).isZero();
    assertThat(terminal.out())
        .contains("workshop.json: what learn keeps, not a trial; skipped", "1 trial sound.");
    assertThat(terminal.run("compare", "t.json", "workshop.json", "--out", "-")).isZero();
  }

  @Test
  void whatDryWroteIsNeverTakenForATrial() throws IOException {
    Files.copy(STARTER, folder.resolve("t.json"));
    assertThat(terminal.run("dry", "t.json", "--json", "forecast.json")).isZero();
    assertThat(terminal.run("check", ".")).isZero();
    assertThat(terminal.out())
        .contains("forecast.json: written by dry --json, not a trial; skipped", "1 trial sound.");
    assertThat(terminal.run("note", "forecast.json", "--rating", "4")).isEqualTo(2);
  }

  @Test
  void weighingsMayBeTypedBesideAFileWithAByteOrderMark() throws IOException {
    Files.writeString(folder.resolve("t.json"), "\uFEFF" + sound);
    assertThat(terminal.run("dry", "t.json", "--weighed", "6h=120g")).as(terminal.err()).isZero();
  }

  @Test
  void aLinkThatLeadsNowhereIsNamed() throws IOException {
    Files.copy(STARTER, folder.resolve("t.json"));
    Files.createSymbolicLink(folder.resolve("lost.json"), Path.of("unplugged/lost.json"));
    assertThat(terminal.run("check", ".")).isEqualTo(2);
    assertThat(terminal.err())
        .contains(
            "lost.json: a link that leads nowhere; plug in the disk it leads to, or delete the"
                + " link");
  }

  /** Nothing waits for a pipe that nobody writes to, and nothing so named is passed over. */
  @Test
  @Timeout(60)
  void whatIsNamedAsATrialAndIsNoFileIsNamed() throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "needs mkfifo");
    Files.copy(STARTER, folder.resolve("t.json"));
    Files.createDirectories(folder.resolve("x.json/inner"));
    Files.copy(STARTER, folder.resolve("x.json/inner/u.json"));
    Files.createDirectory(folder.resolve("b.jar.json"));
    Files.createDirectory(folder.resolve("workshop.json"));
    Files.createSymbolicLink(folder.resolve("link.json"), Path.of("x.json"));
    String pipe = folder.resolve("p.json").toString();
    assertThat(new ProcessBuilder("mkfifo", pipe).start().waitFor()).isZero();

    assertThat(terminal.run("check", ".")).isEqualTo(2);
    assertThat(terminal.err())
        .contains(
            "p.json: something that is neither file nor folder given, allowed a file; name a file,"
                + " or rename or move what is called so",
            "link.json: a folder given, allowed a file",
            "b.jar.json: a folder given, allowed a file",
            "workshop.json: a folder given, allowed a file");
    assertThat(terminal.out())
        .contains(
            "x.json: a folder named as a trial file; it is searched for trials like any other"
                + " folder",
            "2 trials sound, 4 files with 4 faults.");
    assertThat(terminal.run("compare", ".")).isEqualTo(2);
    assertThat(terminal.run("today", ".")).isEqualTo(2);
    assertThat(Outcome.of(folder, "note", "p.json", "--rating", "2").err())
        .endsWith("p.json: it is neither a file nor a folder; name one trial file\n");
  }

  @Test
  void aFileThatTheSystemMakesUpIsNotRead() {
    assumeTrue(Files.exists(Path.of("/proc/self/status")), "needs /proc");
    assertThat(terminal.run("check", "/proc/self/status")).isEqualTo(2);
    assertThat(terminal.err()).contains("something that is neither file nor folder");
  }

  @Test
  void aPourInTheFarFutureIsQuestioned() throws IOException {
    trial("t.json", "\"recipe\":", "\"poured_at\": \"2206-11-26T10:00\", \"recipe\":");
    assertThat(terminal.run("check", "t.json")).isZero();
    assertThat(terminal.out())
        .contains("poured_at: 2206-11-26 is far from today; is the year right?");
  }

  @Test
  void aRimIsSavedAsItWasMeasured() throws IOException {
    assertThat(terminal.plan("--rim", "12mm", "--save", "saved")).isZero();
    try (var saved = Files.newDirectoryStream(folder.resolve("saved"), "*.json")) {
      for (Path file : saved) {
        assertThat(Files.readString(file)).containsPattern("\"rim_height_mm\" : 12\\s");
      }
    }
    assertThat(terminal.run("check", "saved")).isZero();
  }
}
