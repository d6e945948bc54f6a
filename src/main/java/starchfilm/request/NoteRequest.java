package starchfilm.request;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.trial.Trial;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.Note;
import starchfilm.request.Field.FieldSection;

/**
 * The notes that somebody makes of a trial: as options, in a form, or answered one by one.
 *
 * @param notes the notes, in the order in which they are written
 * @param pouredAt when it was poured, by these notes or else by its file
 * @param keepsPlace whether a picture keeps what says where it was taken
 */
public record NoteRequest(List<Note> notes, Optional<LocalDateTime> pouredAt, boolean keepsPlace) {
  /** The fields that may be noted, as a command shows them. */
  public static final List<FieldSection> SECTIONS =
      Field.sections("note", "strip", "went wrong", "pot");

  public NoteRequest {
    notes = List.copyOf(notes);
  }

  /**
   * The same with other notes, as they were answered.
   *
   * @param answered the notes
   */
  public NoteRequest with(List<Note> answered) {
    return new NoteRequest(answered, pouredAt, keepsPlace);
  }

  /**
   * The trial something is noted of.
   *
   * @param file its file
   * @param folder where the names of pictures start from
   * @param clock the clock on the wall
   * @param trial what its file says so far; empty where it cannot be read
   */
  public record Subject(Path file, Path folder, Clock clock, Optional<Trial> trial) {
    Optional<LocalDateTime> pouredAt() {
      return trial.flatMap(Trial::pouredAt);
    }

    /** Whether a note of one plate must say which, as several were poured. */
    boolean hasSeveralPlates() {
      return trial.filter(poured -> poured.plates() > 1).isPresent();
    }
  }

  /**
   * Reads what was written.
   *
   * @param entries what was written
   * @param subject the trial
   * @throws RefusedRequestException where it cannot be meant
   * @throws NotWrittenException where a line of the file is named and the file cannot be read
   */
  public static NoteRequest read(Entries entries, Subject subject) throws NotWrittenException {
    return new NoteReader(new EntryReader(entries), subject).read();
  }

  /**
   * Finds the field that a form asks for first.
   *
   * @param kind the kind of note the form is of
   * @return empty where there is no such form
   */
  public static Optional<Field> main(String kind) {
    return SECTIONS.stream()
        .flatMap(section -> section.fields().stream())
        .filter(field -> field.parts().stream().anyMatch(part -> part.forms().contains(kind)))
        .filter(field -> !field.label().equals("time"))
        .findFirst();
  }
}
