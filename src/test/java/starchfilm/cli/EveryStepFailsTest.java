package starchfilm.cli;

import static java.nio.file.StandardCopyOption.COPY_ATTRIBUTES;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import starchfilm.proof.FailingStep;
import starchfilm.proof.FailingStep.Killed;
import starchfilm.proof.FailingStep.StepFault;
import starchfilm.proof.FaultyDisk;

/**
 * Every file opened, written, synced, renamed or deleted by the commands that save, failing one
 * after another: a broken disk, a full one, the program killed there. Each file is the old or the
 * new one, whole; what is said is what is true; the same again then does it.
 */
class EveryStepFailsTest {
  private static final String LEFTOVER = "\\.starchfilm-[0-9a-f-]+\\.new";

  @TempDir private Path folders;
  private Path first = Path.of("");
  private Path folder = Path.of("");

  @BeforeEach
  void makeFolder() throws IOException {
    first = Files.createDirectory(folders.resolve("first"));
    folder = Files.createDirectory(folders.resolve("folder"));
    Files.copy(Path.of("formulations/garden/4-blend.json"), first.resolve("a.json"));
    Files.write(first.resolve("dish.jpg"), photoWithItsPlace());
    assertThat(new Terminal(first).run("note", "a.json", "--remark", "before")).isZero();
    assertThat(new Terminal(first).run("today", ".", "--calendar", "days.ics")).isZero();
    // Now there is something that may be written over.
    Files.writeString(first.resolve("days.ics"), "PRODID:-//starchfilm//plates, an older one");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "note a.json --remark seen",
        "note a.json --photo dish.jpg",
        "note a.json --undo",
        "today . --calendar days.ics",
        "today . --calendar other.ics",
        "assay --mass 500g --label 90% --keep kitchen",
        "learn ."
      })
  void everyFileIsTheOldOrTheNewOne(String command) throws IOException {
    String[] words = command.split(" ");
    Map<String, String> before = contents(first);
    copyFirst();
    FailingStep none = new FailingStep(-1, StepFault.BROKEN);
    Terminal well = new Terminal(new FaultyDisk(none).at(folder));
    assertThat(well.run(words)).as(well.err()).isZero();
    Map<String, String> after = contents(folder);
    assertThat(after).isNotEqualTo(before);
    assertThat(none.steps()).contains("open", "write", "sync", "rename");

    int cases = 0;
    for (int step = 0; step < none.steps().size(); step++) {
      for (StepFault fault : StepFault.values()) {
        String which = command + ", " + none.steps().get(step) + " " + step + ", " + fault;
        copyFirst();
        Terminal terminal = new Terminal(new FaultyDisk(new FailingStep(step, fault)).at(folder));
        int exit = run(terminal, words);
        Map<String, String> now = contents(folder);
        assertOldOrNew(which, now, before, after, exit);
        if (exit > 0) {
          assertThat(exit).as(which).isEqualTo(2);
          assertThat(terminal.err()).as(which).contains("nothing was changed");
        }
        if (exit >= 0) {
          assertThat(terminal.err())
              .as(which)
              .doesNotContain("itself failed", "Exception", "java.");
        }
        if (exit != 0 && !isDone(now, after)) {
          Terminal again = new Terminal(folder);
          assertThat(again.run(words)).as(which + ": " + again.err()).isZero();
          Map<String, String> then = contents(folder);
          // After a kill the photo may be there and not noted; then it comes a second time.
          then.keySet().removeIf(name -> exit < 0 && name.equals("a-photo-2.jpg"));
          then.replaceAll((name, content) -> content.replace("a-photo-2.jpg", "a-photo-1.jpg"));
          assertThat(isDone(then, after)).as(which).isTrue();
        }
        cases++;
      }
    }
    System.out.printf("%s: %d faults at %d steps%n", command, cases, none.steps().size());
  }

  /** The exit code; -1 where it was killed. */
  private static int run(Terminal terminal, String... words) {
    try {
      int exit = terminal.run(words);
      return terminal.err().contains(Killed.class.getName()) ? -1 : exit;
    } catch (Killed killed) {
      return -1;
    }
  }

  private static void assertOldOrNew(
      String which,
      Map<String, String> now,
      Map<String, String> before,
      Map<String, String> after,
      int exit) {
    now.forEach(
        (name, content) -> {
          if (name.matches(LEFTOVER)) {
            assertThat(exit).as(which + ": half a file beside").isEqualTo(-1);
          } else if (!name.endsWith(".before")) {
            assertThat(content)
                .as(which + ": " + name)
                .isIn(before.getOrDefault(name, after.get(name)), after.get(name));
          } else {
            // The version before is kept a moment earlier than the new one comes in its place.
            String file = name.replace(".before", "");
            assertThat(content).as(which + ": " + name).isIn(before.get(name), before.get(file));
          }
        });
    assertThat(now.keySet()).as(which).containsAll(before.keySet());
    if (exit == 0) {
      assertThat(isDone(now, after)).as(which + ": said to be done").isTrue();
    } else if (exit > 0) {
      assertThat(isDone(now, before)).as(which + ": said not to be changed").isTrue();
      assertThat(after.keySet()).as(which).containsAll(now.keySet());
    }
  }

  /** Whether every file is as there, versions before apart. */
  private static boolean isDone(Map<String, String> now, Map<String, String> there) {
    return without(now).equals(without(there));
  }

  private static Map<String, String> without(Map<String, String> files) {
    Map<String, String> kept = new TreeMap<>(files);
    kept.keySet()
        .removeIf(
            name -> name.endsWith(".before") || name.endsWith(".lock") || name.matches(LEFTOVER));
    return kept;
  }

  private void copyFirst() throws IOException {
    for (String name : contents(folder).keySet()) {
      Files.delete(folder.resolve(name));
    }
    for (String name : contents(first).keySet()) {
      Files.copy(first.resolve(name), folder.resolve(name), COPY_ATTRIBUTES);
    }
  }

  private static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        contents.put(
            String.valueOf(file.getFileName()),
            Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    }
    return contents;
  }

  /** It is noted as a copy without its place, so that two files are written. */
  static byte[] photoWithItsPlace() throws IOException {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(20, 10, BufferedImage.TYPE_INT_RGB), "jpeg", plain);
    byte[] place =
        "http://ns.adobe.com/xap/1.0/\0<x exif:GPSLatitude='48,8.2N'/>"
            .getBytes(StandardCharsets.US_ASCII);
    ByteArrayOutputStream photo = new ByteArrayOutputStream();
    photo.write(plain.toByteArray(), 0, 2);
    photo.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (2 + place.length)});
    photo.writeBytes(place);
    photo.write(plain.toByteArray(), 2, plain.size() - 2);
    return photo.toByteArray();
  }
}
