package starchfilm.files.saving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Puts a picture that came without a place of its own beside a trial, and notes it there. */
public final class NewPhoto {
  private static final int MOST_NAMES = 10_000;

  private NewPhoto() {}

  /**
   * A picture as it was chosen.
   *
   * @param name what its sender calls it; only told in a refusal
   * @param content its bytes; a JPEG, PNG or GIF
   */
  @SuppressWarnings("ArrayRecordComponent") // read once, never compared
  public record Chosen(String name, byte[] content) {}

  /**
   * Keeps pictures.
   *
   * @param trialFile the trial file
   * @param pictures the pictures
   * @return what was written to the trial file
   * @throws NotWrittenException where one is no picture or nothing can be written; then neither
   *     pictures nor note are kept
   */
  public static NoteWriter.Written keep(Path trialFile, List<Chosen> pictures)
      throws NotWrittenException {
    for (Chosen picture : pictures) {
      Optional<Picture.Objection> objection = Picture.objection(picture.content());
      if (objection.isPresent()) {
        throw Picture.refused(picture.name(), objection.get());
      }
    }
    List<Path> kept = new ArrayList<>();
    try {
      for (Chosen picture : pictures) {
        kept.add(written(trialFile, picture.content()));
      }
      return NoteWriter.add(
          trialFile,
          new Note.Several(kept.stream().map(p -> NoteWords.photo(trialFile, p)).toList()));
    } catch (NotWrittenException e) {
      for (Path picture : kept) {
        delete(picture);
      }
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
