package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.trial.Trial;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.learning.Workshop;
import starchfilm.proof.Kills;
import starchfilm.proof.OwnJava;

/**
 * The served program killed while four readers send forms: what it said was saved is there, every
 * file is whole, and it starts again on what is left. {@link Kills} says how often.
 */
@Timeout(3_000)
class SavesSurvivedTest {
  /** Then the readers take a new notebook, for one with a thousand weighings is slow to learn. */
  private static final int KILLS_OF_A_NOTEBOOK = 10;

  private static final Pattern OURS =
      Pattern.compile(
          "[a-z0-9-]+\\.json(\\.before)?|drying-photo-\\d+\\.png|\\.starchfilm\\.lock"
              // What a killed program was about to put in place; the next save takes it away.
              + "|\\.starchfilm-[0-9a-f-]+\\.new");

  private static final Pattern PHOTO_NUMBER = Pattern.compile("photo (\\d+)\n");

  @TempDir private Path notebooks;
  private Path folder = Path.of("");

  @Test
  void aKillAtAnyMoment() throws Exception {
    Random random = Kills.moments();
    int saved = 0;
    String token = "";
    BusyReaders readers = new BusyReaders();
    for (int kill = 0; kill < Kills.COUNT; kill++) {
      if (kill % KILLS_OF_A_NOTEBOOK == 0) {
        saved += readers.saved();
        readers = new BusyReaders();
        folder = Files.createDirectory(notebooks.resolve("notebook" + kill));
        Files.writeString(folder.resolve(BusyReaders.FILE), BusyReaders.trialText());
        Files.copy(Path.of("formulations/garden/4-blend.json"), folder.resolve("4-blend.json"));
      }
      if (kill % 8 == 3) {
        killWhileItStarts(random);
      } else {
        token = killWhileTheyWork(readers, token, random);
      }
      assertNothingLost(readers);
    }
    saved += readers.saved();
    System.out.printf("served and killed %d times in %d saves; nothing lost%n", Kills.COUNT, saved);
  }

  private void killWhileItStarts(Random random) throws Exception {
    Process program =
        OwnJava.of("starchfilm.cli.Main", "open", folder.toString(), "--no-open").start();
    Thread.sleep(random.nextInt(900));
    program.destroyForcibly().waitFor();
  }

  private String killWhileTheyWork(BusyReaders readers, String lastToken, Random random)
      throws Exception {
    try (ServedProgram program = ServedProgram.startUnpacked(folder)) {
      PageClient visitor = new PageClient(program.page("/").toString());
      String token = opensAgain(visitor, lastToken);
      readers.start(visitor, random.nextLong());
      int atLeast = 1 + random.nextInt(Kills.LONG ? 40 : 20);
      while (readers.answers() < atLeast) {
        Thread.sleep(1);
      }
      assertThat(program.process().isAlive()).isTrue();
      Kills.soon(program.process(), random);
      readers.stop();
      return token;
    }
  }

  /** Every page is there, and a form left open since before the kill changes nothing. */
  private String opensAgain(PageClient visitor, String lastToken) throws IOException {
    String notebook = visitor.get("/trials").body();
    assertThat(notebook).contains("On the shelf").doesNotContain("wrong entry");
    for (String page : List.of("/trial?file=" + BusyReaders.FILE, "/plates", "/learnt")) {
      assertThat(visitor.get(page).statusCode()).as(page).isEqualTo(200);
    }
    byte[] before = Files.readAllBytes(folder.resolve(BusyReaders.FILE));
    assertThat(
            visitor
                .postBare(
                    "/trial/note",
                    List.of(),
                    "token",
                    lastToken,
                    "file",
                    BusyReaders.FILE,
                    "kind",
                    "rated",
                    "rating",
                    "1")
                .statusCode())
        .isEqualTo(403);
    assertThat(folder.resolve(BusyReaders.FILE)).hasBinaryContent(before);
    return PageClient.hidden(notebook, "token");
  }

  private void assertNothingLost(BusyReaders readers) throws Exception {
    Notebook notebook = NotebookReader.read(List.of(folder));
    assertThat(notebook.faults()).isEmpty();
    SavedTrial now = SavedTrial.in(folder.resolve(BusyReaders.FILE));
    readers.weighings.holdAgainst(now.weighings());
    readers.faults.holdAgainst(now.faults());
    readers.edits.holdAgainst(now.water());
    List<String> photos = new ArrayList<>();
    for (String photo : now.photos()) {
      photos.add(numberIn(folder.resolve(photo)));
    }
    readers.photos.holdAgainst(photos);
    readers.trials.holdAgainst(
        notebook.trials().stream()
            .map(Trial::name)
            .filter(name -> name.startsWith(BusyReaders.NEW_TRIAL))
            .sorted(
                Comparator.comparing(
                    name -> Integer.valueOf(name.substring(BusyReaders.NEW_TRIAL.length()))))
            .toList());
    Workshop workshop = Workshop.read(folder);
    assertThat(workshop.isTaught() || !readers.hasLearnt()).isTrue();
    assertTheVersionBeforeIsWhole(now);
    assertNoHalfFiles();
  }

  private void assertTheVersionBeforeIsWhole(SavedTrial now) throws IOException {
    Path file = folder.resolve(BusyReaders.FILE + ".before");
    if (Files.exists(file)) {
      SavedTrial before = SavedTrial.in(file);
      assertIsFollowedBy(before.weighings(), now.weighings());
      assertIsFollowedBy(before.faults(), now.faults());
      assertIsFollowedBy(before.photos(), now.photos());
    }
  }

  private static void assertIsFollowedBy(List<String> before, List<String> now) {
    assertThat(now.size()).isBetween(before.size(), before.size() + 1);
    assertThat(now.subList(0, before.size())).isEqualTo(before);
  }

  private void assertNoHalfFiles() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        String name = String.valueOf(file.getFileName());
        assertThat(name).matches(OURS);
        if (name.startsWith("drying-photo-")) {
          numberIn(file);
        }
      }
    }
  }

  /** The number of a photo, which must be whole. */
  private static String numberIn(Path photo) throws IOException {
    byte[] content = Files.readAllBytes(photo);
    Matcher number = PHOTO_NUMBER.matcher(new String(content, StandardCharsets.ISO_8859_1));
    assertThat(number.find()).as("%s, %d bytes", photo, content.length).isTrue();
    assertThat(Arrays.equals(content, BusyReaders.photo(Integer.parseInt(number.group(1)))))
        .as("%s, %d bytes", photo, content.length)
        .isTrue();
    return number.group(1);
  }
}
