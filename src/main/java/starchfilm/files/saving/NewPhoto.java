package starchfilm.files.saving;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.notebook.TrialReader;
import starchfilm.files.saving.NoteWriter.WrittenNote;
import starchfilm.files.saving.NotedLine.NoteKind;

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
      Picture.refuseUnlessShown(picture.name(), picture.content());
    }
    ObjectValue said =
        Located.object()
            .with("file", "")
            .with("caption", caption.map(Located::text))
            .with(
                "plate",
                plate.stream().mapToObj(BigDecimal::valueOf).map(Located::number).findFirst());
    List<Path> kept = new ArrayList<>();
    List<Note> notes = new ArrayList<>();
    try {
      for (Chosen picture : pictures) {
        notes.add(noted(said, picture.content(), kept));
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
  public record NamedPhotos(List<Note> notes, List<Path> copies) {
    public NamedPhotos {
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
  public NamedPhotos named(List<Note> notes) throws NotWrittenException {
    List<Note> seen = new ArrayList<>();
    List<Path> copies = new ArrayList<>();
    try {
      for (Note note : notes) {
        seen.add(
            note instanceof Note.Added photo && photo.kind() == NoteKind.PHOTO
                ? named(photo, copies)
                : note);
      }
    } catch (NotWrittenException e) {
      SafeFile.delete(copies);
      throw e;
    }
    return new NamedPhotos(seen, copies);
  }

  /** One that cannot be noted stays as it is, which is stated when it is noted. */
  private Note named(Note.Added photo, List<Path> written) throws NotWrittenException {
    byte[] content;
    try {
      content = Files.readAllBytes(Picture.beside(trialFile, photo.node().shown("file")));
    } catch (NotWrittenException | IOException e) {
      return photo;
    }
    return photo.node() instanceof ObjectValue said ? noted(said, content, written) : photo;
  }

  /** The photo with its date; in a file of its own where it has none or that tells the place. */
  private Note noted(ObjectValue photo, byte[] content, List<Path> written)
      throws NotWrittenException {
    byte[] kept = keepPlace ? content : CameraFacts.withoutPlace(content);
    String name = photo.shown("file");
    if (name.isEmpty() || !Arrays.equals(kept, content)) {
      String base = TrialReader.baseName(trialFile) + "-photo-";
      String ending = Picture.of(kept).orElse(Picture.JPEG).ending();
      Path file = SafeFile.create(trialFile.resolveSibling(""), i -> base + i + ending, kept);
      written.add(file);
      name = NoteWords.photo(trialFile, file);
    }
    ObjectValue dated =
        photo.get("at").isPresent() ? photo : photo.with("at", takenAt(content).map(Located::text));
    return new Note.Added(NoteKind.PHOTO, dated.with("file", name));
  }

  /** By the camera's clock, where that can be: a camera may have been set wrongly. */
  private Optional<String> takenAt(byte[] picture) {
    return CameraFacts.takenAt(picture)
        .filter(taken -> pouredAt.filter(pour -> !pour.isAfter(taken)).isPresent())
        .map(LocalDateTime::toString);
  }
}
