package starchfilm.files.saving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.files.findings.Notice;
import starchfilm.files.notebook.Notebook;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.notebook.TrialText;
import starchfilm.files.saving.NoteWriter.WrittenNote;
import starchfilm.proof.OwnJava;

@Timeout(120)
class SafeFileTest {
  @TempDir private Path folder;
  private Path file;

  @BeforeEach
  void writeTrial() throws IOException {
    file = folder.resolve("a.json");
    Files.writeString(file, TrialText.SOUND);
  }

  @Test
  void threadsAndProcessesAtOnceLoseNothing(@TempDir Path outside) throws Exception {
    int each = 15;
    List<Process> processes =
        List.of(start("p1", each, outside.resolve("p1")), start("p2", each, outside.resolve("p2")));
    List<Thread> threads = new ArrayList<>();
    for (String name : List.of("t1", "t2", "t3")) {
      Thread thread = new Thread(() -> addRemarks(name, each));
      thread.start();
      threads.add(thread);
    }
    for (Thread thread : threads) {
      thread.join();
    }
    for (Process process : processes) {
      assertThat(process.waitFor()).isZero();
    }
    assertThat(remarks())
        .containsExactlyInAnyOrderElementsOf(
            IntStream.rangeClosed(1, each)
                .boxed()
                .flatMap(
                    i -> List.of("p1 " + i, "p2 " + i, "t1 " + i, "t2 " + i, "t3 " + i).stream())
                .toList());
  }

  @Test
  void writersOfOneProgramDoNotKeepAnotherOut(@TempDir Path outside) throws Exception {
    Process other = start("other", 10, outside.resolve("other"));
    List<Thread> busy = new ArrayList<>();
    for (String name : List.of("b1", "b2", "b3")) {
      Thread thread =
          new Thread(
              () -> {
                for (int i = 0; other.isAlive(); i++) {
                  addRemarks(name + " " + i + " of", 1);
                }
              });
      thread.start();
      busy.add(thread);
    }
    assertThat(other.waitFor()).isZero();
    for (Thread thread : busy) {
      thread.join();
    }
    assertThat(remarks().stream().filter(remark -> remark.startsWith("other"))).hasSize(10);
  }

  @Test
  void aKillAtAnyMomentLeavesAWholeFile(@TempDir Path outside) throws Exception {
    Random random = new Random(5);
    int written = 0;
    for (int round = 0; round < 4; round++) {
      Path said = outside.resolve("round" + round);
      Process process = start("round" + round, 100_000, said);
      int atLeast = 1 + random.nextInt(20);
      while (lines(said) < atLeast) {
        Thread.sleep(1);
      }
      Thread.sleep(random.nextInt(10), random.nextInt(999_999));
      process.destroyForcibly().waitFor();
      String prefix = "round" + round + " ";
      long kept = remarks().stream().filter(r -> r.startsWith(prefix)).count();
      // All that was reported is there; one more may have been written and not reported.
      assertThat(kept).isBetween(lines(said), lines(said) + 1);
      written += (int) kept;
      assertThat(remarks()).hasSize(written);
      NoteWriter.add(file, NoteWriterTest.rated(1 + round));
    }
    try (var names = Files.list(folder)) {
      assertThat(names.map(p -> p.getFileName().toString()))
          .containsExactlyInAnyOrder("a.json", "a.json.before", ".starchfilm.lock");
    }
  }

  @Test
  void aChangeByOtherMeansMeanwhileIsKept() throws Exception {
    List<String> seen = new ArrayList<>();
    SafeFile.rewrite(
        file,
        before -> {
          String text = new String(before.orElseThrow(), StandardCharsets.UTF_8);
          seen.add(text);
          if (seen.size() == 1) {
            write("by hand");
          }
          return (text + " and by us").getBytes(StandardCharsets.UTF_8);
        });
    assertThat(seen).containsExactly(TrialText.SOUND, "by hand");
    assertThat(file).hasContent("by hand and by us");
    assertThat(folder.resolve("a.json.before")).hasContent("by hand");
  }

  @Test
  void aFileThatNeverComesToRestIsLeftAlone() {
    int[] count = {0};
    NotWrittenException e =
        catchThrowableOfType(
            NotWrittenException.class,
            () ->
                SafeFile.rewrite(
                    file,
                    before -> {
                      write("change " + count[0]++);
                      return new byte[] {1};
                    }));
    assertThat(e.getMessage())
        .endsWith("another program keeps changing this file; close it there and try again");
    assertThat(file).hasContent("change 4");
  }

  @Test
  void writesANewFile() throws Exception {
    Path fresh = folder.resolve("workshop.json");
    SafeFile.rewrite(fresh, before -> before.isPresent() ? new byte[] {2} : new byte[] {1});
    assertThat(Files.readAllBytes(fresh)).containsExactly(1);
    assertThat(folder.resolve("workshop.json.before")).doesNotExist();
  }

  @Test
  void keepsALinkAndTheRightsOfTheFile() throws Exception {
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    Path link = folder.resolve("link.json");
    Files.createSymbolicLink(link, file);
    NoteWriter.add(link, NoteWriterTest.rated(2));
    assertThat(link).isSymbolicLink();
    assertThat(Files.readString(file)).contains("\"rating\": 2");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rw-r-----");
  }

  @Test
  void aFolderThatCannotBeForcedToTheDiskDoesNotUnsayTheNote() throws Exception {
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("-wx------"));
    try {
      assumeFalse(Files.isReadable(folder), "the system's own user may read everywhere");
      WrittenNote written = NoteWriter.add(file, NoteWriterTest.remark("once"));
      assertThat(written.notices())
          .extracting(Notice::text)
          .contains(
              "it is written, but the system does not say whether that has reached the disk yet");
      assertThat(Files.readString(file)).containsOnlyOnce("once");
    } finally {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  @Test
  void saysWhereTheVersionBeforeOfALinkedFileIs(@TempDir Path elsewhere) throws Exception {
    Path link = Files.createSymbolicLink(elsewhere.resolve("sym.json"), file);
    WrittenNote written = NoteWriter.add(link, NoteWriterTest.rated(2));
    assertThat(written.before().orElseThrow()).exists().hasContent(TrialText.SOUND);
  }

  @Test
  void saysThatTheOtherNamesOfAFileStayAsTheyWere() throws Exception {
    Path other = Files.createLink(folder.resolve("h2.json"), file);
    WrittenNote written = NoteWriter.add(file, NoteWriterTest.rated(2));
    assertThat(written.notices())
        .singleElement()
        .extracting(Notice::text)
        .isEqualTo("it had 2 names (hard links); under the others stays the version before");
    assertThat(other).hasContent(TrialText.SOUND);
  }

  @Test
  void refusesALinkThatLeadsNowhere() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("ln.json"), Path.of("gone.json"));
    NotWrittenException e =
        catchThrowableOfType(
            NotWrittenException.class, () -> SafeFile.rewrite(link, before -> new byte[] {1}));
    assertThat(e.getMessage()).contains("ln.json: a link that leads nowhere");
    assertThat(link).isSymbolicLink();
  }

  @Test
  void aNameTooLongForTheVersionBeforeIsSaidToBe() throws IOException {
    Path longest = Files.copy(file, folder.resolve("a".repeat(246) + ".json"));
    NotWrittenException e =
        catchThrowableOfType(
            NotWrittenException.class, () -> NoteWriter.add(longest, NoteWriterTest.rated(2)));
    assertThat(e.getMessage())
        .endsWith(
            "the name of the file is too long for the version before to be kept beside it; nothing"
                + " was changed; give it a name of fewer than 240 bytes");
    assertThat(longest).hasContent(TrialText.SOUND);
  }

  @Test
  void folderThatMayNotBeWrittenTo() throws Exception {
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    try {
      assumeFalse(Files.isWritable(folder), "the system's own user may write everywhere");
      NotWrittenException e =
          catchThrowableOfType(
              NotWrittenException.class, () -> NoteWriter.add(file, NoteWriterTest.rated(3)));
      assertThat(e.getMessage())
          .endsWith(
              "this file or its folder may not be written to; nothing was changed;"
                  + " check the folder's permissions, or use another folder");
      assertThat(file).hasContent(TrialText.SOUND);
    } finally {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  @Test
  void saysWhatTheSystemSaid() {
    IOException full = new FileSystemException("a.json", null, "No space left on device");
    assertThat(WriteFailure.of(full).sentence())
        .isEqualTo("the disk is full; nothing was changed; make room and try again");
    IOException plain = new IOException("No space left on device");
    assertThat(WriteFailure.of(plain).given()).isEqualTo("the disk is full");
    IOException denied = new AccessDeniedException("a.json");
    assertThat(WriteFailure.of(denied).given())
        .isEqualTo("this file or its folder may not be written to");
    IOException readOnly = new FileSystemException("a.json", null, "Read-only file system");
    assertThat(WriteFailure.of(readOnly).given())
        .isEqualTo("this file or its folder may not be written to");
    IOException other = new IOException("Input/output error");
    assertThat(WriteFailure.of(other).sentence())
        .isEqualTo(
            "the system could not write the file; nothing was changed; check the disk and try"
                + " again");
  }

  /** Whole lines of a file. */
  private static long lines(Path text) throws IOException {
    return Files.exists(text) ? Files.readString(text).chars().filter(c -> c == '\n').count() : 0;
  }

  private Process start(String name, int count, Path out) throws IOException {
    return OwnJava.of(NoteLoop.class.getName(), file.toString(), name, Integer.toString(count))
        .redirectOutput(out.toFile())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  private void addRemarks(String name, int count) {
    try {
      NoteLoop.main(new String[] {file.toString(), name, Integer.toString(count)});
    } catch (NotWrittenException e) {
      throw new IllegalStateException(e);
    }
  }

  private List<String> remarks() {
    Notebook notebook = NotebookReader.read(List.of(file));
    assertThat(notebook.faults()).isEmpty();
    return notebook.trials().get(0).seen().remarks();
  }

  private void write(String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
