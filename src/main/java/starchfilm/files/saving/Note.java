package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import starchfilm.files.json.TextEdit;
import starchfilm.files.json.UnreadableFileException;

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
   * @return such as {@code weighed 690 g, Fri 27 Nov, 09:08}
   */
  String words();

  /**
   * One more line of a list.
   *
   * @param kind which list
   * @param node the line as the file keeps it
   */
  record Added(NotedLine.Kind kind, JsonNode node) implements Note {
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
      return kind == NotedLine.Kind.WEIGHING && !node.has("same_plate");
    }

    /**
     * The same weighing, with the plate named; any other line as it is.
     *
     * @param same whether it was the plate weighed before
     * @return the note
     */
    public Added onSamePlate(boolean same) {
      return kind == NotedLine.Kind.WEIGHING
          ? new Added(kind, ((ObjectNode) node.deepCopy()).put("same_plate", same))
          : this;
    }
  }

  /**
   * Fields of the pour, the cook and the like get their values.
   *
   * @param values by the paths of the fields
   */
  record Put(Map<String, JsonNode> values) implements Note {
    private static final String POURED_AT = "poured_at";
    private static final Map<String, String> WORDS =
        Map.of(
            POURED_AT,
            "%s",
            "pour.poured_g",
            "%s g on one plate",
            "pour.plate.tare_g",
            "plate %s g",
            "cook.minutes",
            "%s min",
            "cook.top_C",
            "up to %s \u00B0C",
            "cook.water_lost_g",
            "lost %s g");

    /** Copies the map. */
    public Put {
      values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    @Override
    public String in(String text) throws UnreadableFileException {
      String changed = text;
      if (values.containsKey(POURED_AT) && TextEdit.remove(text, POURED_AT).equals(text)) {
        // A recipe that somebody pours is not invented any more.
        changed = TextEdit.remove(text, "invented");
      }
      for (Map.Entry<String, JsonNode> one : values.entrySet()) {
        changed = TextEdit.set(changed, one.getKey(), one.getValue());
      }
      return changed;
    }

    @Override
    public String words() {
      String first = values.isEmpty() ? "" : values.keySet().iterator().next();
      String what = first.startsWith("cook.") ? "cook: " : "pour: ";
      return values.entrySet().stream()
          .map(
              one ->
                  WORDS
                      .getOrDefault(one.getKey(), one.getKey() + " %s")
                      .replace("%s", NotedLine.shown(one.getValue())))
          .collect(Collectors.joining(", ", WORDS.containsKey(first) ? what : "", ""));
    }
  }

  /**
   * What was really weighed out of something that goes into the pot.
   *
   * @param line what it is
   * @param massG its mass (g)
   */
  record WeighedOut(PotLine line, BigDecimal massG) implements Note {
    @Override
    public String in(String text) throws UnreadableFileException {
      String volume = line.field().replace("mass_g", "volume_ml");
      String weighed = volume.equals(line.field()) ? text : TextEdit.remove(text, volume);
      return TextEdit.set(weighed, line.field(), DecimalNode.valueOf(massG));
    }

    @Override
    public String words() {
      return "weighed out: " + massG + " g " + line.what();
    }
  }

  /**
   * A weighing noted before is right, however odd it looks.
   *
   * @param at when it was weighed, as {@code at} keeps it
   */
  record Confirmed(String at) implements Note {
    @Override
    public String in(String text) throws UnreadableFileException {
      return ConfirmedWeighing.in(text, at);
    }

    @Override
    public String words() {
      return "weighing of " + at + " confirmed";
    }
  }

  /**
   * A line noted before is taken out; pictures stay beside the file.
   *
   * @param line the line as it was looked at
   */
  record Dropped(NotedLine line) implements Note {
    @Override
    public String in(String text) throws UnreadableFileException {
      return TextEdit.remove(text, line.place(text));
    }

    @Override
    public String words() {
      return "removed: " + line.words();
    }
  }

  /**
   * A line noted before gets another value.
   *
   * @param line the line as it was looked at
   * @param value its new value, in the unit of its field
   */
  record Corrected(NotedLine line, JsonNode value) implements Note {
    @Override
    public String in(String text) throws UnreadableFileException {
      return line.with(text, value);
    }

    @Override
    public String words() {
      return "corrected: " + line.words() + " is now " + value.asText();
    }
  }

  /**
   * The trial is put away, so that no list, comparison or lesson has it, or fetched back.
   *
   * @param away true to put it away
   */
  record PutAway(boolean away) implements Note {
    @Override
    public String in(String text) throws UnreadableFileException {
      return away
          ? TextEdit.set(text, "put_away", BooleanNode.TRUE)
          : TextEdit.remove(text, "put_away");
    }

    @Override
    public String words() {
      return away ? "put away" : "fetched back";
    }
  }

  /**
   * Another account of the room, in place of all others.
   *
   * @param account which, {@code log_csv} or {@code swing}
   * @param value what it holds
   */
  record Room(String account, JsonNode value) implements Note {
    private static final List<String> ACCOUNTS = List.of("log_csv", "swing", "air_C", "rh_pct");

    @Override
    public String in(String text) throws UnreadableFileException {
      String changed = text;
      for (String other : ACCOUNTS) {
        if (!other.equals(account)) {
          changed = TextEdit.remove(changed, "room." + other);
        }
      }
      return TextEdit.set(changed, "room." + account, value);
    }

    @Override
    public String words() {
      return account.equals("swing") ? "a day and a night" : "room log " + value.asText();
    }
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
      String with = TextEdit.append(text, "photos", TextNode.valueOf(name));
      ObjectNode said = JsonNodeFactory.instance.objectNode().put("file", name);
      at.ifPresent(time -> said.put("at", time));
      caption.ifPresent(shows -> said.put("caption", shows));
      plate.ifPresent(number -> said.put("plate", number));
      return said.size() > 1 ? TextEdit.append(with, "photo_notes", said) : with;
    }

    @Override
    public String words() {
      return (plate.isPresent() ? "plate " + plate.getAsInt() + " " : "")
          + NotedLine.Kind.PHOTO.words(TextNode.valueOf(name))
          + caption.map(shows -> ", " + shows).orElse("")
          + at.map(time -> ", " + NotedLine.shown(TextNode.valueOf(time))).orElse("");
    }
  }

  /**
   * Several notes at once, written together or not at all.
   *
   * @param notes the notes, in order
   */
  record Several(List<Note> notes) implements Note {
    /** Copies the list. */
    public Several {
      notes = List.copyOf(notes);
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
