package starchfilm.files.saving;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

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
   * @param caption what they show, if said
   * @param plate which plate they show, if said
   * @param pouredAt when it was poured, if known: then a picture is dated by its camera
   * @param keepPlace true to keep what says where they were taken
   * @return what was written to the trial file
   * @throws NotWrittenException where one is no picture or nothing can be written; then neither
   *     pictures nor note are kept
   */
  public static NoteWriter.Written keep(
      Path trialFile,
      List<Chosen> pictures,
      Optional<String> caption,
      OptionalInt plate,
      Optional<LocalDateTime> pouredAt,
      boolean keepPlace)
      throws NotWrittenException {
    for (Chosen picture : pictures) {
      Optional<Picture.Objection> objection = Picture.objection(picture.content());
      if (objection.isPresent()) {
        throw Picture.refused(picture.name(), objection.get());
      }
    }
    List<Path> kept = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    try {
      for (Chosen picture : pictures) {
        byte[] content =
            keepPlace ? picture.content() : CameraFacts.withoutPlace(picture.content());
        Path file = written(trialFile, content);
        kept.add(file);
        notes.add(
            new Note.Photographed(
                NoteWords.photo(trialFile, file).name(),
                takenAt(picture.content(), pouredAt),
                caption,
                plate));
      }
      return NoteWriter.add(trialFile, new Note.Several(notes));
    } catch (NotWrittenException e) {
      for (Path picture : kept) {
        delete(picture);
      }
      throw e;
    }
  }

  /** By the camera's clock, where that can be: a camera may have been set wrongly. */
  static Optional<String> takenAt(byte[] picture, Optional<LocalDateTime> pouredAt) {
    return CameraFacts.takenAt(picture)
        .filter(taken -> pouredAt.filter(pour -> !pour.isAfter(taken)).isPresent())
        .map(LocalDateTime::toString);
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
