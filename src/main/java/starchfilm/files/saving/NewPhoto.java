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
import starchfilm.files.findings.Fault;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located;
import starchfilm.files.notebook.BesideFile;

/** Puts a picture that came without a place of its own beside a trial, and notes it there. */
public final class NewPhoto {
  private NewPhoto() {}

  /**
   * A picture as it was chosen.
   *
   * @param name what its sender calls it; only named in a refusal
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
      Optional<Fault> fault = Picture.fault(picture.name(), picture.content());
      if (fault.isPresent()) {
        throw new NotWrittenException(fault.get());
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
      delete(kept);
      throw e;
    }
  }

  /**
   * Notes, with each picture among them that already lies beside the trial dated by its camera. One
   * that tells where it was taken is noted as a copy that does not; it stays as it was itself.
   *
   * @param notes the notes
   * @param copies the copies that were written, to be deleted where the notes are refused
   */
  public record Named(List<Note> notes, List<Path> copies) {
    public Named {
      notes = List.copyOf(notes);
      copies = List.copyOf(copies);
    }

    /** Deletes the copies. */
    public void discard() throws NotWrittenException {
      delete(copies);
    }
  }

  /**
   * Looks at the pictures among some notes.
   *
   * @param trialFile the trial file
   * @param notes the notes
   * @param pouredAt when it was poured, if known: then a picture is dated by its camera
   * @param keepPlace true to keep what says where they were taken
   * @return the notes; a picture that cannot be noted stands in them as it was named
   * @throws NotWrittenException where a copy cannot be written; then there is none
   */
  public static Named named(
      Path trialFile, List<Note> notes, Optional<LocalDateTime> pouredAt, boolean keepPlace)
      throws NotWrittenException {
    List<Note> seen = new ArrayList<>();
    List<Path> copies = new ArrayList<>();
    try {
      for (Note note : notes) {
        Optional<byte[]> content =
            note instanceof Note.Photographed photo ? beside(trialFile, photo) : Optional.empty();
        seen.add(
            content.isPresent() && note instanceof Note.Photographed photo
                ? named(trialFile, photo, content.get(), pouredAt, keepPlace, copies)
                : note);
      }
    } catch (NotWrittenException e) {
      delete(copies);
      throw e;
    }
    return new Named(seen, copies);
  }

  private static Note.Photographed named(
      Path trialFile,
      Note.Photographed photo,
      byte[] content,
      Optional<LocalDateTime> pouredAt,
      boolean keepPlace,
      List<Path> copies)
      throws NotWrittenException {
    byte[] kept = keepPlace ? content : CameraFacts.withoutPlace(content);
    String name = photo.name();
    if (!Arrays.equals(kept, content)) {
      Path copy = written(trialFile, kept);
      copies.add(copy);
      name = NoteWords.photo(trialFile, copy).name();
    }
    Optional<String> at = photo.at().isPresent() ? photo.at() : takenAt(content, pouredAt);
    return new Note.Photographed(name, at, photo.caption(), photo.plate());
  }

  /** Its bytes; empty where it cannot be noted, which is stated when it is. */
  private static Optional<byte[]> beside(Path trialFile, Note.Photographed photo) {
    Located.Place place = new Located.Place("photos", 1, 1);
    Optional<Path> file = BesideFile.find(trialFile, photo.name(), place, new Findings(""));
    try {
      if (file.isEmpty()
          || !Files.isRegularFile(file.get())
          || Picture.fault(photo.name(), file.get()).isPresent()) {
        return Optional.empty();
      }
      return Optional.of(Files.readAllBytes(file.get()));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** By the camera's clock, where that can be: a camera may have been set wrongly. */
  static Optional<String> takenAt(byte[] picture, Optional<LocalDateTime> pouredAt) {
    return CameraFacts.takenAt(picture)
        .filter(taken -> pouredAt.filter(pour -> !pour.isAfter(taken)).isPresent())
        .map(LocalDateTime::toString);
  }

  private static Path written(Path trialFile, byte[] bytes) throws NotWrittenException {
    String base = TrialFileText.baseName(trialFile) + "-photo-";
    return SafeFile.create(trialFile.resolveSibling(""), i -> base + i + ending(bytes), bytes);
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

  private static void delete(List<Path> files) throws NotWrittenException {
    for (Path file : files) {
      try {
        Files.deleteIfExists(file);
      } catch (IOException e) {
        throw NotWrittenException.because(
            file,
            "a file that was not noted and could not be removed either",
            "delete it yourself");
      }
    }
  }
}
