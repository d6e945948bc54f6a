package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import starchfilm.casting.FaceChange;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.files.notebook.FileWord;

/**
 * One line that was noted into a trial file, to be looked at, corrected or taken out.
 *
 * @param kind what it tells
 * @param number which of its kind, from 1 in the order of the file
 * @param node what stands in the file
 */
public record NotedLine(Kind kind, int number, JsonNode node) {
  /** What a line tells, and where its value stands. */
  public enum Kind {
    /** A weighing. */
    WEIGHING("weighings", "mass_g", "g"),
    /** A dry thickness. */
    THICKNESS("dry_thickness_um", "", "um"),
    /** A pulled strip. */
    PULL("pulls", "load_N", "N"),
    /** A fault; its remark can be corrected. */
    FAULT("faults", "remark", ""),
    /** Peeled or turned; cannot be corrected, only taken out. */
    MOVE("moved", "", ""),
    /** A single plate: its tare or its end. */
    PLATE("plates", "given_up", ""),
    /** The rating. */
    RATING("rating", "", ""),
    /** A remark. */
    REMARK("remarks", "", ""),
    /** A photo; its caption can be corrected. */
    PHOTO("photos", "caption", "");

    private final String list;
    private final String field;
    private final String unit;

    Kind(String list, String field, String unit) {
      this.list = list;
      this.field = field;
      this.unit = unit;
    }
  }

  /** What it is called, such as {@code weighing 2}. */
  public String name() {
    String word = kind.name().toLowerCase(Locale.ROOT);
    return kind == Kind.RATING ? word : word + " " + number;
  }

  /** Whether it has a value that can be corrected. */
  public boolean isCorrectable() {
    return kind != Kind.MOVE && !(kind == Kind.PLATE && !node.has("given_up"));
  }

  /** Its value as it stands, in the unit of its field; may be empty. */
  public String value() {
    return kind == Kind.PHOTO ? "" : (node.isObject() ? node.path(field()) : node).asText("");
  }

  /** The unit of its value; empty for words. */
  public String unit() {
    return kind == Kind.PULL && node.has("load_kg") ? "kg" : kind.unit;
  }

  private String field() {
    return kind == Kind.PULL && node.has("load_kg") ? "load_kg" : kind.field;
  }

  /**
   * Everything that was noted.
   *
   * @param text the text of a trial file
   * @return its lines, kind by kind, in the order of the file
   * @throws NotWrittenException where the text is no JSON object
   */
  public static List<NotedLine> of(String text) throws NotWrittenException {
    JsonNode trial = TrialTree.of(text);
    List<NotedLine> lines = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      JsonNode there = trial.path(kind.list);
      if (there.isArray()) {
        for (int i = 0; i < there.size(); i++) {
          lines.add(new NotedLine(kind, i + 1, there.get(i)));
        }
      } else if (!there.isMissingNode()) {
        lines.add(new NotedLine(kind, 1, there));
      }
    }
    return lines;
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

  /** What stands in the file, to be known again. */
  public String seen() {
    return node.toString();
  }

  /** The line as the note it was; empty where it cannot be read. */
  public Optional<Note> note() {
    try {
      return Optional.of(
          switch (kind) {
            case WEIGHING ->
                new Note.Weighed(
                    node.path("at").asText(),
                    number("mass_g"),
                    flag("with_plate"),
                    flag("same_plate"),
                    plate());
            case THICKNESS -> new Note.Thickness(node.decimalValue());
            case PULL ->
                new Note.Pulled(
                    number(field()),
                    node.has("load_kg"),
                    number("width_mm"),
                    optional("thickness_um"),
                    optional("stretch_pct"));
            case FAULT ->
                new Note.WentWrong(
                    FileWord.find(ObservedFault.Kind.values(), node.path("kind").asText())
                        .orElseThrow(),
                    FileWord.find(ObservedFault.Place.values(), node.path("where").asText("all"))
                        .orElseThrow(),
                    words("at"),
                    words("remark"));
            case MOVE ->
                new Note.Moved(
                    node.path("at").asText(),
                    FileWord.find(FaceChange.OpenFaces.values(), node.path("faces").asText())
                        .orElseThrow());
            case PLATE ->
                node.has("off_at") || node.has("given_up")
                    ? new Note.Ended(plate(), node.path("off_at").asText(), words("given_up"))
                    : new Note.Tared(plate().orElse(1), number("tare_g"));
            case RATING -> new Note.Rated(node.intValue());
            case REMARK -> new Note.Remarked(node.asText());
            case PHOTO -> new Note.Photographed(node.asText());
          });
    } catch (java.util.NoSuchElementException | NumberFormatException unreadable) {
      return Optional.empty();
    }
  }

  private BigDecimal number(String name) {
    return optional(name).orElseThrow();
  }

  private Optional<BigDecimal> optional(String name) {
    return node.path(name).isNumber()
        ? Optional.of(node.path(name).decimalValue())
        : Optional.empty();
  }

  private Optional<Boolean> flag(String name) {
    return node.path(name).isBoolean()
        ? Optional.of(node.path(name).booleanValue())
        : Optional.empty();
  }

  private Optional<String> words(String name) {
    return node.path(name).isTextual() ? Optional.of(node.path(name).asText()) : Optional.empty();
  }

  private OptionalInt plate() {
    return node.path("plate").isInt()
        ? OptionalInt.of(node.path("plate").intValue())
        : OptionalInt.empty();
  }

  String removedFrom(String text) throws UnreadableFileException {
    return TextEdit.remove(text, place(text));
  }

  String correctedIn(String text, String typed) throws UnreadableFileException {
    List<String> path = new ArrayList<>(place(text));
    if (kind == Kind.PHOTO) {
      // The picture stays; what is said of it goes over what was said before.
      return TextEdit.append(
          text,
          "photo_notes",
          JsonNodeFactory.instance
              .objectNode()
              .put("file", node.asText())
              .put("caption", typed.strip()));
    }
    if (node.isObject()) {
      path.add(field());
    }
    return TextEdit.set(text, path, parsed(typed));
  }

  /** The new value as the file keeps it. */
  private JsonNode parsed(String typed) {
    if (kind == Kind.RATING) {
      return IntNode.valueOf(((Note.Rated) NoteWords.rated(typed)).stars());
    }
    return unit().isEmpty()
        ? TextNode.valueOf(typed.strip())
        : DecimalNode.valueOf(TypedAmount.number(unit(), typed));
  }

  /**
   * The line with another value; checks that it can be read, before anything is written.
   *
   * @param typed the value as typed
   * @return the note
   */
  public Note.Corrected with(String typed) {
    if (!isCorrectable()) {
      throw new MistypedException(
          typed, "no other value of " + name(), "delete it and note it again");
    }
    return new Note.Corrected(this, parsed(typed).asText());
  }

  private List<String> place(String text) throws UnreadableFileException {
    try {
      if (of(text).contains(this)) {
        return TrialTree.of(text).path(kind.list).isArray()
            ? List.of(kind.list, String.valueOf(number - 1))
            : List.of(kind.list);
      }
    } catch (NotWrittenException impossible) {
      throw new IllegalStateException("notes go only into files without a fault", impossible);
    }
    throw new UnreadableFileException(
        name() + " that is not there any more as it was",
        "a line of the file as it is now",
        "look at what is noted now, and choose again");
  }
}
