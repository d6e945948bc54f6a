package starchfilm.files.saving;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.MomentParser;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.Member;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.LocatedWriter;
import starchfilm.files.json.PackedText;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.FieldInput;
import starchfilm.files.notebook.TrialField;

/**
 * One line that was noted into a trial file, to be looked at, corrected or taken out.
 *
 * @param kind what it tells
 * @param number which of its kind, from 1 in the order of the file
 * @param node what stands in the file
 * @param told what it says; of a picture, what is noted of it; of a weighing, of which plate
 */
public record NotedLine(NoteKind kind, int number, Located node, Located told) {
  private static final String UM = "dry_thickness_um";
  private static final Map<String, List<String>> ROWS =
      PackedText.rows(NotedLine.class, "noted-lines.words", 4).stream()
          .collect(Collectors.toMap(row -> row.get(0), row -> row));

  /** The kind of a line; where it stands and how it is said is a row of a table. */
  public enum NoteKind {
    /** A weighing. */
    WEIGHING,
    /** A dry thickness. */
    THICKNESS,
    /** A pulled strip. */
    PULL,
    /** A fault; its remark can be corrected. */
    FAULT,
    /** Peeled or turned; cannot be corrected, only taken out. */
    MOVE,
    /** A single plate: its tare, its end, or the thickness of its film. */
    PLATE,
    /** The rating. */
    RATING,
    /** A remark. */
    REMARK,
    /** A photo; its caption can be corrected. */
    PHOTO;

    private final List<String> row = Objects.requireNonNull(ROWS.get(name()));

    /** The field its lines stand in. */
    String list() {
      return row.get(1);
    }

    /** The field of a line's value; empty where the line is the value. */
    String field() {
      return row.get(2);
    }

    /** What may stand in a line, as it is declared. */
    TrialField declared() {
      return TrialField.TRIAL.field(list());
    }

    /** What a line says. */
    String words(Located line) {
      return LineWords.of(line, row.get(3).split(" \\| ", -1));
    }
  }

  /** The name of the line, such as {@code weighing 2}. */
  public String name() {
    String word = kind.name().toLowerCase(Locale.ROOT);
    return kind == NoteKind.RATING ? word : word + " " + number;
  }

  /**
   * The line in words.
   *
   * @return such as {@code weighed 690 g, Fri 27 Nov, 9:08}
   */
  public String words() {
    return kind.words(told);
  }

  /** Returns whether it has a value that can be corrected. */
  public boolean isCorrectable() {
    return kind != NoteKind.MOVE
        && !(kind == NoteKind.PLATE
            && node.get("given_up").isEmpty()
            && !(node.get(UM).orElse(node) instanceof NumberValue));
  }

  /** Its value as it stands, in the unit of its field; may be empty. */
  public String value() {
    return kind == NoteKind.PHOTO ? "" : node.shown(node instanceof ObjectValue ? field() : "");
  }

  /** The unit of its value; empty for words. */
  public String unit() {
    return declared().unit();
  }

  private String field() {
    return kind == NoteKind.PULL && node.get("load_kg").isPresent()
        ? "load_kg"
        : kind == NoteKind.PLATE && node.get(UM).isPresent() ? UM : kind.field();
  }

  private TrialField declared() {
    return node instanceof ObjectValue ? kind.declared().field(field()) : kind.declared();
  }

  /**
   * Everything that was noted.
   *
   * @param text the text of a trial file
   * @return its lines, kind by kind, in the order of the file
   * @throws NotWrittenException where the text is no JSON object
   */
  public static List<NotedLine> of(String text) throws NotWrittenException {
    return of(TrialFileText.fields(text));
  }

  private static List<NotedLine> of(Located trial) {
    List<NotedLine> lines = new ArrayList<>();
    for (NoteKind kind : NoteKind.values()) {
      int number = 0;
      for (Located node : trial.entries(kind.list())) {
        Located told =
            switch (kind) {
              case PHOTO -> told(node, trial);
              case WEIGHING -> ofItsPlate(node, trial);
              default -> node;
            };
        lines.add(new NotedLine(kind, ++number, node, told));
      }
    }
    return lines;
  }

  /** A weighing with the first plate's number, where it names none and several were poured. */
  private static Located ofItsPlate(Located weighing, Located trial) {
    boolean isOfFirst =
        weighing.get("plate").isEmpty() && !trial.shown("pour.plates").matches("1?");
    return isOfFirst && weighing instanceof ObjectValue known
        ? known.with("plate", Located.text("1"))
        : weighing;
  }

  /** A picture with what is noted of it; a later entry counts over an earlier one. */
  private static Located told(Located picture, Located trial) {
    ObjectValue told = Located.object().with("file", picture);
    for (Located note : trial.entries("photo_notes")) {
      if (note instanceof ObjectValue said && said.shown("file").equals(picture.shown())) {
        for (Map.Entry<String, Member> one : said.members().entrySet()) {
          told = told.with(one.getKey(), one.getValue().value());
        }
      }
    }
    return told;
  }

  /**
   * A line by its name.
   *
   * @param lines what was noted
   * @param typed such as {@code weighing 2} or {@code rating}
   * @return the line
   */
  public static NotedLine named(List<NotedLine> lines, String typed) {
    String wanted = typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    return lines.stream()
        .filter(line -> line.name().equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                new MistypedException(
                    typed,
                    lines.isEmpty()
                        ? "a line that was noted, and none was"
                        : String.join(", ", lines.stream().map(NotedLine::name).toList()),
                    "name a line as --list does"));
  }

  /**
   * A line by its name, as somebody saw it.
   *
   * @param lines what is noted now
   * @param name such as {@code weighing 2}
   * @param was what stood there, as {@link #seen()} tells it
   * @return the line
   */
  public static NotedLine seen(List<NotedLine> lines, String name, String was) {
    NotedLine line = named(lines, name);
    if (!line.seen().equals(was)) {
      throw new MistypedException(
          name,
          "a line that is as you saw it",
          "it was changed meanwhile; look at it, and choose again");
    }
    return line;
  }

  /** The text in the file, by which the line is known again. */
  public String seen() {
    return LocatedWriter.line(node);
  }

  /**
   * The line with another value; checks that it can be read, before anything is written.
   *
   * @param typed the value as typed
   * @return the note
   */
  public Note with(String typed) {
    if (!isCorrectable()) {
      throw new MistypedException(
          typed, "no other value of " + name(), "delete it and note it again");
    }
    TrialField of = kind == NoteKind.PHOTO ? TrialField.TRIAL.field("remarks") : declared();
    Located value = FieldInput.of(of, typed.strip());
    return new Note.Edit(
        "corrected: " + words() + " is now " + value.shown() + unit(of), text -> with(text, value));
  }

  private static String unit(TrialField of) {
    return of.unit().isEmpty() ? "" : " " + of.unit().replace("um", "\u00B5m");
  }

  private String with(String text, Located value) throws UnreadableFileException {
    String place = place(text);
    if (kind == NoteKind.PHOTO) {
      // The picture stays; what is said of it goes over what was said before.
      ObjectValue said = Located.object().with("file", node).with(kind.field(), value);
      return TextEdit.append(text, "photo_notes", said);
    }
    return TextEdit.set(text, node instanceof ObjectValue ? place + "." + field() : place, value);
  }

  /**
   * When it was, as it is noted.
   *
   * @param pouredAt when the trial was poured, if known
   * @return time since the pour (s); empty where none is noted or it cannot be read
   */
  public OptionalDouble afterPourS(Optional<LocalDateTime> pouredAt) {
    try {
      Optional<Located> time = timeField().flatMap(node::get);
      return time.isEmpty()
          ? OptionalDouble.empty()
          : MomentParser.lasting(time.get().shown()).secondsSince(pouredAt);
    } catch (MistypedException none) {
      return OptionalDouble.empty();
    }
  }

  /** The field of the time it has or may have; empty where it has none of its own. */
  Optional<String> timeField() {
    return switch (kind) {
      case WEIGHING, FAULT, MOVE -> Optional.of("at");
      case PLATE -> node.get("off_at").map(there -> "off_at");
      case THICKNESS, PULL, RATING, REMARK, PHOTO -> Optional.empty();
    };
  }

  /**
   * The line at another time.
   *
   * @param time as a file keeps it
   */
  Note at(String time) {
    Located at = Located.text(time);
    return new Note.Edit(
        "corrected: " + words() + " is now at " + LineWords.shown(at),
        text -> TextEdit.set(text, place(text) + "." + timeField().orElseThrow(), at));
  }

  /** The line is taken out; a picture stays beside the file. */
  public Note dropped() {
    return new Note.Edit("removed: " + words(), text -> TextEdit.remove(text, place(text)));
  }

  /** The line's path in the text, if it still stands there. */
  private String place(String text) throws UnreadableFileException {
    if (of(LocatedReader.read(text)).stream()
        .anyMatch(line -> line.name().equals(name()) && line.seen().equals(seen()))) {
      return kind.list() + "." + (number - 1);
    }
    throw new UnreadableFileException(
        name() + " that is not there any more as it was",
        "a line of the file as it is now",
        "look at what is noted now, and choose again");
  }
}
