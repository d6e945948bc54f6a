package starchfilm.files.saving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Puts a picture that came without a place of its own beside a trial, and notes it there. */
public final class NewPhoto {
  private static final int MOST_NAMES = 10_000;

  private NewPhoto() {}

  /**
   * Keeps a picture.
   *
   * @param trialFile the trial file
   * @param bytes the picture's content; a JPEG, PNG or GIF
   * @return the picture's file
   * @throws NotWrittenException where it is no picture or nothing can be written; then neither the
   *     picture nor the note is kept
   */
  public static Path keep(Path trialFile, byte[] bytes) throws NotWrittenException {
    Path kept = written(trialFile, bytes);
    try {
      NoteWriter.add(trialFile, NoteWords.photo(trialFile, kept));
      return kept;
    } catch (NotWrittenException e) {
      delete(kept);
      throw e;
    }
  }

  private static Path written(Path trialFile, byte[] bytes) throws NotWrittenException {
    String base = String.valueOf(trialFile.getFileName()).replaceFirst("\\.[^.]*$", "");
    for (int i = 1; i <= MOST_NAMES; i++) {
      Path file = trialFile.resolveSibling(base + "-photo-" + i + ending(bytes));
      if (SafeFile.create(file, bytes)) {
        return file;
      }
    }
    throw NotWrittenException.because(
        trialFile,
        "there are " + MOST_NAMES + " photos of this trial already",
        "move older ones to another folder");
  }

  /** By its content; what is none of these is refused when it is noted. */
  private static String ending(byte[] bytes) {
    String head =
        new String(Arrays.copyOf(bytes, Math.min(bytes.length, 8)), StandardCharsets.ISO_8859_1);
    if (head.startsWith("GIF8")) {
      return ".gif";
    }
    return head.startsWith("\u0089PNG") ? ".png" : ".jpg";
  }

  private static void delete(Path file) throws NotWrittenException {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      throw NotWrittenException.because(
          file, "a file that was not noted and could not be removed either", "delete it yourself");
    }
  }
}
