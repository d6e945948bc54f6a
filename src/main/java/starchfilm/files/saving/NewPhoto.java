package starchfilm.files.saving;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import starchfilm.files.findings.Fault;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.saving.NoteWriter.WrittenNote;

/**
 * Puts pictures beside a trial, and notes them there.
 *
 * @param trialFile the trial file
 * @param pouredAt when it was poured, if known: then a picture is dated by its camera
 * @param keepPlace true to keep what says where a picture was taken
 */
public record NewPhoto(Path trialFile, Optional<LocalDateTime> pouredAt, boolean keepPlace) {
  /**
   * A picture as it was chosen.
   *
   * @param name what its sender calls it; only named in a refusal
   * @param content its bytes; a JPEG, PNG or GIF
   */
  @SuppressWarnings("ArrayRecordComponent") // read once, never compared
  public record Chosen(String name, byte[] content) {}

  /**
   * Keeps pictures that came without a place of their own.
   *
   * @param pictures the pictures
   * @param caption what they show, if said
   * @param plate which plate they show, if said
   * @return what was written to the trial file
   * @throws NotWrittenException where one is no picture or nothing can be written; then neither
   *     pictures nor note are kept
   */
  public WrittenNote keep(List<Chosen> pictures, Optional<String> caption, OptionalInt plate)
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
        notes.add(
            noted(
                new Note.Photographed("", Optional.empty(), caption, plate),
                picture.content(),
                kept));
      }
      return NoteWriter.add(trialFile, new Note.Several(notes));
    } catch (NotWrittenException e) {
      SafeFile.delete(kept);
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
      SafeFile.delete(copies);
    }
  }

  /**
   * Looks at the pictures among some notes.
   *
   * @param notes the notes
   * @return the notes; a picture that cannot be noted stands in them as it was named
   * @throws NotWrittenException where a copy cannot be written; then there is none
   */
  public Named named(List<Note> notes) throws NotWrittenException {
    List<Note> seen = new ArrayList<>();
    List<Path> copies = new ArrayList<>();
    try {
      for (Note note : notes) {
        Optional<byte[]> content =
            note instanceof Note.Photographed photo ? beside(photo) : Optional.empty();
        seen.add(
            content.isPresent() && note instanceof Note.Photographed photo
                ? noted(photo, content.get(), copies)
                : note);
      }
    } catch (NotWrittenException e) {
      SafeFile.delete(copies);
      throw e;
    }
    return new Named(seen, copies);
  }

  /** Its bytes; empty where it cannot be noted, which is stated when it is. */
  private Optional<byte[]> beside(Note.Photographed photo) {
    try {
      return Optional.of(Files.readAllBytes(Picture.beside(trialFile, photo.name())));
    } catch (NotWrittenException | IOException e) {
      return Optional.empty();
    }
  }

  /** The photo with its date; in a file of its own where it has none or that tells the place. */
  private Note.Photographed noted(Note.Photographed photo, byte[] content, List<Path> written)
      throws NotWrittenException {
    byte[] kept = keepPlace ? content : CameraFacts.withoutPlace(content);
    String name = photo.name();
    if (name.isEmpty() || !Arrays.equals(kept, content)) {
      String base = TrialReader.baseName(trialFile) + "-photo-";
      String ending = Picture.of(kept).orElse(Picture.JPEG).ending();
      Path file = SafeFile.create(trialFile.resolveSibling(""), i -> base + i + ending, kept);
      written.add(file);
      name = NoteWords.photo(trialFile, file);
    }
    Optional<String> at = photo.at().or(() -> takenAt(content));
    return new Note.Photographed(name, at, photo.caption(), photo.plate());
  }

  /** By the camera's clock, where that can be: a camera may have been set wrongly. */
  private Optional<String> takenAt(byte[] picture) {
    return CameraFacts.takenAt(picture)
        .filter(taken -> pouredAt.filter(pour -> !pour.isAfter(taken)).isPresent())
        .map(LocalDateTime::toString);
  }
}
