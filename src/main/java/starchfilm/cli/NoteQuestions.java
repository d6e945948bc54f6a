package starchfilm.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWords;
import starchfilm.files.saving.NotedLine.Kind;

/**
 * Asks for notes one by one; an answer that cannot be read is asked for again, an empty one takes
 * what stands in brackets, and the end of the input ends the questions.
 */
final class NoteQuestions {
  private static final List<String> KINDS =
      List.of(
          "weighing",
          "thickness",
          "pull",
          "fault",
          "cook",
          "pour",
          "moved",
          "rating",
          "remark",
          "photo");

  private static final Note NOTHING = new Note.Put(Map.of());

  private final CommandContext surroundings;
  private final NoteWords words;
  private final Path trial;

  NoteQuestions(CommandContext surroundings, NoteWords words, Path trial) {
    this.surroundings = surroundings;
    this.words = words;
    this.trial = trial;
  }

  /** The input ended in the middle of a note. */
  private static final class NoMoreAnswers extends Exception {
    private static final long serialVersionUID = 1L;
  }

  /** The notes that were answered in full. */
  List<Note> ask() {
    List<Note> notes = new ArrayList<>();
    try {
      while (true) {
        Optional<String> kind =
            optional("Note what? " + String.join(", ", KINDS) + " [nothing more]", this::kind);
        if (kind.isEmpty()) {
          return notes;
        }
        Note note = note(kind.get());
        if (!note.equals(NOTHING)) {
          notes.add(note);
        }
      }
    } catch (NoMoreAnswers e) {
      return notes;
    }
  }

  /** Whether a weighing that gained was of the plate before; empty where nobody says. */
  Optional<Boolean> samePlate(String told) {
    try {
      return optional(
          "It is " + told + ". Was it the same plate? yes, no [note nothing]",
          typed -> {
            if (!typed.equals("yes") && !typed.equals("no")) {
              throw new MistypedException(typed, "yes or no", "write one of these");
            }
            return typed.equals("yes");
          });
    } catch (NoMoreAnswers e) {
      return Optional.empty();
    }
  }

  /** The beginning of a word is enough where no other begins so. */
  private String kind(String typed) {
    List<String> fitting = KINDS.stream().filter(kind -> kind.startsWith(typed)).toList();
    if (fitting.size() != 1) {
      throw new MistypedException(typed, String.join(", ", KINDS), "write one of these");
    }
    return fitting.get(0);
  }

  private Note note(String kind) throws NoMoreAnswers {
    return switch (kind) {
      case "weighing" -> weighing();
      case "thickness" ->
          required("How thick is the dry film there, in \u00B5m?", um -> words.thicknesses(um, ""));
      case "pull" -> pull();
      case "fault" -> fault();
      case "cook" -> cook();
      case "pour" -> pour();
      case "moved" -> moved();
      case "rating" ->
          required("How good is it, 1 to 5?", typed -> words.put(Map.of("rating", typed)));
      case "remark" -> required("Your remark?", typed -> words.one(Kind.REMARK, typed));
      default ->
          required(
              "Which picture in the trial's folder?",
              typed -> NoteWords.photo(trial, surroundings.resolve(path(typed))));
    };
  }

  private static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException e) {
      throw new MistypedException(typed, "the name of a file", "check its spelling");
    }
  }

  private Note weighing() throws NoMoreAnswers {
    String at = when();
    return required(
        "What did the scale show, plate included, in g?",
        typed -> words.weighed(typed, at, "", false));
  }

  private Note pull() throws NoMoreAnswers {
    ObjectNode strip =
        required(
            "At what load did it break, such as 12N, or 0.9kg hung on it?",
            typed ->
                (ObjectNode)
                    words.line(Kind.PULL, Map.of(NoteWords.loadField(typed), typed)).node());
    strip.set("width_mm", required("How wide was the strip, in mm?", as("pulls.width_mm")));
    take(strip, "How thick, in \u00B5m? [as the film]", "pulls.thickness_um");
    take(strip, "How far did it stretch, in %? [not measured]", "pulls.stretch_pct");
    return new Note.Added(Kind.PULL, strip);
  }

  private Note fault() throws NoMoreAnswers {
    ObjectNode fault = JsonNodeFactory.instance.objectNode();
    String kinds = String.join(", ", FileWord.all(ObservedFault.Kind.values()));
    fault.set("kind", required("What went wrong? " + kinds, as("faults.kind")));
    fault.put("where", "all");
    take(fault, "Where? edge, middle [all]", "faults.where");
    take(fault, "Seen when? [not noted]", "faults.at");
    take(fault, "In your words? [nothing]", "faults.remark");
    return new Note.Added(Kind.FAULT, fault);
  }

  private Note cook() throws NoMoreAnswers {
    Map<String, JsonNode> values = new LinkedHashMap<>();
    take(values, "Minutes at the top temperature? [not noted]", "cook.minutes");
    take(values, "Top temperature, in \u00B0C? [not noted]", "cook.top_C");
    take(values, "Weight the pot lost, in g? [not noted]", "cook.water_lost_g");
    return new Note.Put(values);
  }

  private Note pour() throws NoMoreAnswers {
    Map<String, JsonNode> values = new LinkedHashMap<>();
    values.put("poured_at", words.value("poured_at", "now"));
    take(values, "Poured when? [now]", "poured_at");
    take(values, "Paste on one plate, in g? [not weighed]", "pour.poured_g");
    take(values, "The empty plate, in g? [not weighed]", "pour.plate.tare_g");
    return new Note.Put(values);
  }

  private Note moved() throws NoMoreAnswers {
    ObjectNode move = JsonNodeFactory.instance.objectNode().put("at", when());
    return new Note.Added(
        Kind.MOVE,
        move.set(
            "faces", required("Which faces are open now? upper, turned, both", as("moved.faces"))));
  }

  /** An answer for a field, read as that is declared. */
  private Function<String, JsonNode> as(String path) {
    return typed -> words.value(path, typed);
  }

  private void take(ObjectNode line, String question, String path) throws NoMoreAnswers {
    optional(question, as(path))
        .ifPresent(value -> line.set(path.substring(path.indexOf('.') + 1), value));
  }

  private void take(Map<String, JsonNode> values, String question, String path)
      throws NoMoreAnswers {
    optional(question, as(path)).ifPresent(value -> values.put(path, value));
  }

  private String when() throws NoMoreAnswers {
    return optional("When? [now]", words::when).orElseGet(() -> words.when("now"));
  }

  private <T> T required(String question, Function<String, T> answer) throws NoMoreAnswers {
    while (true) {
      Optional<T> given = optional(question, answer);
      if (given.isPresent()) {
        return given.get();
      }
    }
  }

  private <T> Optional<T> optional(String question, Function<String, T> answer)
      throws NoMoreAnswers {
    while (true) {
      surroundings.out().println(question);
      surroundings.out().flush();
      String typed = line();
      if (typed.isEmpty()) {
        return Optional.empty();
      }
      try {
        return Optional.of(answer.apply(typed));
      } catch (MistypedException e) {
        surroundings.err().println(e.getMessage());
      }
    }
  }

  private String line() throws NoMoreAnswers {
    try {
      String line = surroundings.in().readLine();
      if (line == null) {
        throw new NoMoreAnswers();
      }
      return line.strip();
    } catch (IOException e) {
      throw new UncheckedIOException("reading the answers failed", e);
    }
  }
}
