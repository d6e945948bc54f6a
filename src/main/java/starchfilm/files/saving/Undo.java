package starchfilm.files.saving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.files.saving.SafeFile.WrittenFile;

/**
 * Takes the last change of a trial file back: the version kept before it comes in its place, and
 * the version with the change is kept instead, so that the same once more brings the change back.
 */
public final class Undo {
  private Undo() {}

  /**
   * A change that was taken back.
   *
   * @param lines the lines of the file that went with it, and those that came again, stripped
   * @param version the version the file has now
   * @param kept where the version with it is kept; empty where both versions are the same
   */
  public record TakenBack(List<String> lines, String version, Optional<Path> kept) {
    public TakenBack {
      lines = List.copyOf(lines);
    }
  }

  /**
   * Takes the last change back if the file is still as it made it.
   *
   * @param file the trial file
   * @param version the version that the change made; empty where nobody knows it, then a file that
   *     was written later than the version before it was kept is taken as changed since
   * @return what was taken back
   * @throws NotWrittenException where the file was changed since, no version before it is kept, or
   *     the file cannot be written; it is as it was
   */
  public static TakenBack last(Path file, Optional<String> version) throws NotWrittenException {
    List<String> lines = new ArrayList<>();
    WrittenFile written =
        SafeFile.takeBack(
            file,
            before -> {
              byte[] now =
                  before.orElseThrow(
                      () ->
                          NotWrittenException.because(
                              file, "there is no such file", "check its name and folder"));
              try {
                byte[] then = kept(file, now, version);
                lines.clear();
                lines.addAll(gone(now, then));
                gone(then, now).forEach(line -> lines.add("again: " + line));
                return then;
              } catch (IOException e) {
                throw NotWrittenException.because(file, e);
              }
            });
    return new TakenBack(lines, written.version(), written.before());
  }

  private static byte[] kept(Path file, byte[] now, Optional<String> version)
      throws IOException, NotWrittenException {
    Path there = file.toRealPath();
    Path before = there.resolveSibling(there.getFileName() + SafeFile.BEFORE);
    if (!Files.isRegularFile(before)) {
      throw NotWrittenException.because(
          file, "no version before it is kept", "there is nothing to undo");
    }
    boolean asMade =
        version.isPresent()
            ? version.get().equals(TrialFileText.version(now))
            // The version before is copied after the new one is written, so a later file is not
            // ours.
            : Files.getLastModifiedTime(there).compareTo(Files.getLastModifiedTime(before)) <= 0;
    if (!asMade) {
      throw NotWrittenException.because(
          file,
          "the file was changed since; nothing was undone",
          "correct it in the file, or compare it with " + before.getFileName());
    }
    return Files.readAllBytes(before);
  }

  private static List<String> gone(byte[] now, byte[] then) {
    List<String> left = new ArrayList<>(lines(then));
    List<String> gone = new ArrayList<>();
    for (String line : lines(now)) {
      if (!left.remove(line)) {
        gone.add(line);
      }
    }
    return gone;
  }

  /** Without the comma at their ends, which comes and goes with the line after. */
  private static List<String> lines(byte[] text) {
    return new String(text, StandardCharsets.UTF_8)
        .lines()
        .map(line -> line.strip().replaceFirst(",$", ""))
        .toList();
  }
}
