package starchfilm.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;
import starchfilm.files.findings.Fault;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.SafeFile;
import starchfilm.files.saving.SafeFile.WrittenFile;
import starchfilm.request.Field;

/**
 * Where a result goes: a file, replaced in one step so that nobody finds half of it, or standard
 * output.
 *
 * <p>Only a result of the same kind is ever written over, and the one before is kept; a trial file
 * or a page of the user's own, say, is left alone.
 *
 * @param typed as the user named it
 * @param path empty for standard output
 */
record OutputFile(Asked asked, String typed, OutputKind kind, Optional<Path> path) {
  private static final String STANDARD_OUTPUT = "-";

  /** What is written, and the mark by which a file of the kind is known. */
  enum OutputKind {
    /** The page of {@code compare}. */
    COMPARISON(
        "comparison page of this program",
        "<meta name=\"generator\" content=\"starchfilm comparison page\">"),
    /** The weigh-out sheets of {@code plan}. */
    SHEETS(
        "page of weigh-out sheets of this program",
        "<meta name=\"generator\" content=\"starchfilm weigh-out sheets\">"),
    /** Labels to stick on plates. */
    LABELS(
        "page of labels of this program",
        "<meta name=\"generator\" content=\"starchfilm labels\">"),
    /** A drying curve as CSV. */
    CURVE("table of a drying curve", "time_h,at,film_g_low"),
    /** A drying forecast as JSON. */
    FORECAST("drying forecast", "{\n  \"what\" : \"drying forecast\""),
    /** When to look at plates, as a calendar. */
    CALENDAR("calendar of plates to look after", "PRODID:-//starchfilm//plates"),
    /** An answer as a table. */
    TABLE("table of this program", "what,name"),
    /** An answer as JSON. */
    DATA("data of this program", "{\n  \"what\" : \"");

    /** The mark stands within this much of the beginning (bytes). */
    private static final int HEAD = 2_000;

    private final String words;
    private final String mark;

    OutputKind(String words, String mark) {
      this.words = words;
      this.mark = mark;
    }

    /** An empty file may be written over: there is nothing to lose. */
    private boolean mayReplace(byte[] there) {
      byte[] head = Arrays.copyOf(there, Math.min(there.length, HEAD));
      return head.length == 0 || new String(head, StandardCharsets.UTF_8).contains(mark);
    }
  }

  /**
   * A result's place, refused at once where it cannot be written, before anything is computed.
   *
   * @param option the option that named it, for the sentence
   * @param typed what the user typed; {@code -} for standard output
   * @param kind what will be written
   * @return the place
   */
  static OutputFile of(Asked asked, Field option, String typed, OutputKind kind) {
    if (typed.equals(STANDARD_OUTPUT)) {
      return new OutputFile(asked, typed, kind, Optional.empty());
    }
    String given = option.name() + " " + typed;
    Path path = asked.resolve(Asked.path(option, typed)).toAbsolutePath().normalize();
    if (Files.isDirectory(path)) {
      throw refused(given, "is a folder; name a file in it");
    }
    if (!Files.isDirectory(path.resolveSibling("."))) {
      throw refused(given, "has no folder to go to; make the folder first");
    }
    if (NotebookReader.isOwn(path)) {
      throw refused(given, "is the name of what learn or assay --keep keeps; choose another name");
    }
    if (Files.isSymbolicLink(path) && !Files.exists(path)) {
      throw refused(given, "is a link that leads nowhere; choose another name");
    }
    // The system's names for open files look like files themselves when those are redirected.
    if (path.resolveSibling("x").equals(Path.of("/dev/x"))
        || path.startsWith("/proc")
        || (Files.exists(path) && !Files.isRegularFile(path))) {
      throw refused(given, "is a device or a pipe, no file; write - for standard output");
    }
    if (Files.exists(path) && !mayReplace(given, path, kind)) {
      throw refused(given, noneOf(kind));
    }
    return new OutputFile(asked, typed, kind, Optional.of(path));
  }

  private static String noneOf(OutputKind kind) {
    return "is there and is no " + kind.words + "; it was left alone, choose another name";
  }

  private static boolean mayReplace(String given, Path path, OutputKind kind) {
    try (java.io.InputStream in = Files.newInputStream(path)) {
      return kind.mayReplace(in.readNBytes(OutputKind.HEAD));
    } catch (IOException unreadable) {
      throw refused(given, "is there and may not be read; choose another name");
    }
  }

  /**
   * Whether the result goes to standard output.
   *
   * @return true for {@code -}
   */
  boolean isStandardOutput() {
    return path.isEmpty();
  }

  /**
   * Writes the result.
   *
   * @param result gives the whole text
   */
  void write(Supplier<String> result) {
    if (path.isEmpty()) {
      asked.out().printResult(result.get());
      return;
    }
    byte[] text = result.get().getBytes(StandardCharsets.UTF_8);
    try {
      WrittenFile written =
          SafeFile.replace(
              path.get(),
              before -> {
                // It may have come while the result was computed.
                if (before.isPresent() && !kind.mayReplace(before.get())) {
                  throw CommandFailure.wrongInput(typed + " " + noneOf(kind) + ".");
                }
                return text;
              });
      written.remarks().forEach(remark -> asked.err().println(typed + ": " + remark));
    } catch (NotWrittenException refused) {
      Fault why = refused.faults().get(0);
      throw CommandFailure.wrongInput(typed + ": " + why.given() + "; " + why.mend() + ".");
    }
  }

  private static CommandFailure refused(String given, String why) {
    return CommandFailure.wrongInput(given + " " + why + ".");
  }
}
