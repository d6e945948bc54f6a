package starchfilm.files.saving;

import java.util.List;
import java.util.stream.Collectors;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.saving.NotedLine.NoteKind;

/**
 * One thing to write into a trial file, in the units of its fields and with the digits as typed:
 * the last one says how fine the scale was. {@link NoteWords} makes notes out of typed words.
 */
public sealed interface Note {
  /**
   * The text of a trial file with this in it; everything else stays as it is.
   *
   * @param text the text of a trial file
   * @return the changed text
   * @throws UnreadableFileException where it cannot be in that text
   */
  String in(String text) throws UnreadableFileException;

  /**
   * Says it back to its maker, so that a slip of the finger is seen at once.
   *
   * @return such as {@code weighed 690 g, Fri 27 Nov, 9:08}
   */
  String words();

  /** The notes it is made of, in order. */
  default List<Note> notes() {
    return List.of(this);
  }

  /**
   * The same, with every weighing that does not say so on the plate weighed before, or on another.
   *
   * @param same whether it was the plate weighed before
   * @return the note
   */
  default Note onSamePlate(boolean same) {
    return this;
  }

  /**
   * One more line of a list; what is said of a photo stands apart from its name.
   *
   * @param kind which list
   * @param node the line as the file keeps it
   */
  record Added(NoteKind kind, Located node) implements Note {
    @Override
    public String in(String text) throws UnreadableFileException {
      if (kind != NoteKind.PHOTO || !(node instanceof ObjectValue said)) {
        return TextEdit.append(text, kind.list(), node);
      }
      String with = TextEdit.append(text, kind.list(), Located.text(said.shown("file")));
      return said.members().size() > 1 ? TextEdit.append(with, "photo_notes", said) : with;
    }

    @Override
    public String words() {
      return kind.words(node);
    }

    @Override
    public Added onSamePlate(boolean same) {
      boolean isOpen = kind == NoteKind.WEIGHING && node.get("same_plate").isEmpty();
      return isOpen && node instanceof ObjectValue weighing
          ? new Added(kind, weighing.with("same_plate", Located.flag(same)))
          : this;
    }
  }

  /**
   * A change of the text of which nothing more is asked.
   *
   * @param words as above
   * @param change makes the text
   */
  record Edit(String words, TextChange change) implements Note {
    @Override
    public String in(String text) throws UnreadableFileException {
      return change.in(text);
    }
  }

  /** Makes the text of a trial file out of the one before. */
  @FunctionalInterface
  interface TextChange {
    /** See {@link Note#in}. */
    String in(String text) throws UnreadableFileException;
  }

  /**
   * Several notes at once, written together or not at all.
   *
   * @param notes the notes, in order
   */
  record Several(List<Note> notes) implements Note {
    /** Takes the notes out of others that are several themselves. */
    public Several {
      notes = notes.stream().flatMap(note -> note.notes().stream()).toList();
    }

    @Override
    public String in(String text) throws UnreadableFileException {
      String all = text;
      for (Note note : notes) {
        all = note.in(all);
      }
      return all;
    }

    @Override
    public String words() {
      return notes.stream().map(Note::words).collect(Collectors.joining("; "));
    }

    @Override
    public Several onSamePlate(boolean same) {
      return new Several(notes.stream().map(note -> note.onSamePlate(same)).toList());
    }
  }
}
