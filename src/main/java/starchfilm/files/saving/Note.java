package starchfilm.files.saving;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

  /**
   * One more line of a list.
   *
   * @param kind which list
   * @param node the line as the file keeps it
   */
  record Added(NoteKind kind, Located node) implements Note {
    @Override
    public String in(String text) throws UnreadableFileException {
      return TextEdit.append(text, kind.list(), node);
    }

    @Override
    public String words() {
      return kind.words(node);
    }

    /** Whether it is a weighing that does not say whether it was the plate weighed before. */
    boolean leavesPlateOpen() {
      return kind == NoteKind.WEIGHING && node.get("same_plate").isEmpty();
    }

    /**
     * The same weighing, with the plate named; any other line as it is.
     *
     * @param same whether it was the plate weighed before
     * @return the note
     */
    public Added onSamePlate(boolean same) {
      return kind == NoteKind.WEIGHING && node instanceof ObjectValue weighing
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
   * A photo beside the trial file.
   *
   * @param name its name from the trial's folder on, with / between folders
   * @param at when it was taken, as {@code at} keeps it, if known
   * @param caption what it shows, if said
   * @param plate which plate it shows, if said
   */
  record Photographed(String name, Optional<String> at, Optional<String> caption, OptionalInt plate)
      implements Note {
    /** A photo of which nothing else is said. */
    public Photographed(String name) {
      this(name, Optional.empty(), Optional.empty(), OptionalInt.empty());
    }

    @Override
    public String in(String text) throws UnreadableFileException {
      String with = TextEdit.append(text, "photos", Located.text(name));
      return said().members().size() > 1 ? TextEdit.append(with, "photo_notes", said()) : with;
    }

    @Override
    public String words() {
      return LineWords.of(said(), "[plate {plate} ]photo {file}[, {caption}][, {at}]");
    }

    private ObjectValue said() {
      return Located.object()
          .with("file", name)
          .with("at", at.map(Located::text))
          .with("caption", caption.map(Located::text))
          .with(
              "plate",
              plate.stream().mapToObj(BigDecimal::valueOf).map(Located::number).findFirst());
    }
  }

  /**
   * Several notes at once, written together or not at all.
   *
   * @param notes the notes, in order
   */
  record Several(List<Note> notes) implements Note {
    /** Takes the notes out of others that are several themselves. */
    public Several {
      notes =
          notes.stream()
              .flatMap(note -> note instanceof Several s ? s.notes.stream() : Stream.of(note))
              .toList();
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

    /**
     * The same notes, with the plate named for every weighing.
     *
     * @param same whether it was the plate weighed before
     * @return the notes
     */
    public Several onSamePlate(boolean same) {
      return new Several(
          notes.stream()
              .map(note -> note instanceof Added line ? line.onSamePlate(same) : note)
              .toList());
    }
  }
}
