package starchfilm.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.notebook.FileWord;
import starchfilm.files.saving.Note;
import starchfilm.files.saving.NoteWords;

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

  private static final Note NOTHING =
      new Note.Cooked(Optional.empty(), Optional.empty(), Optional.empty());

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
          required("How thick is the dry film there, in \u00B5m?", NoteWords::thickness);
      case "pull" -> pull();
      case "fault" -> fault();
      case "cook" -> cook();
      case "pour" -> pour();
      case "moved" -> moved();
      case "rating" -> required("How good is it, 1 to 5?", NoteWords::rated);
      case "remark" -> required("Your remark?", Note.Remarked::new);
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
        "What did the scale show, plate included, in g?", typed -> words.weighed(typed, at, false));
  }

  private Note pull() throws NoMoreAnswers {
    NoteWords.Load load =
        required(
            "At what load did it break, such as 12N, or 0.9kg hung on it?", NoteWords.Load::of);
    BigDecimal width = required("How wide was the strip, in mm?", t -> TypedAmount.number("mm", t));
    Optional<BigDecimal> thickness =
        optional("How thick, in \u00B5m? [as the film]", t -> TypedAmount.number("um", t));
    Optional<BigDecimal> stretch =
        optional("How far did it stretch, in %? [not measured]", t -> TypedAmount.number("%", t));
    return NoteWords.pulled(load, width, thickness, stretch);
  }

  private Note fault() throws NoMoreAnswers {
    String kinds = String.join(", ", FileWord.all(ObservedFault.Kind.values()));
    ObservedFault.Kind kind = required("What went wrong? " + kinds, NoteWords::faultKind);
    Optional<ObservedFault.Place> place = optional("Where? edge, middle [all]", NoteWords::place);
    Optional<String> at = optional("Seen when? [not noted]", words::when);
    Optional<String> remark = optional("In your words? [nothing]", Function.identity());
    return new Note.WentWrong(kind, place.orElse(ObservedFault.Place.ALL), at, remark);
  }

  private Note cook() throws NoMoreAnswers {
    String unknown = " [not noted]";
    Optional<BigDecimal> minutes =
        optional("Minutes at the top temperature?" + unknown, t -> TypedAmount.number("min", t));
    Optional<BigDecimal> top =
        optional("Top temperature, in \u00B0C?" + unknown, t -> TypedAmount.number("C", t));
    Optional<BigDecimal> lost =
        optional("Weight the pot lost, in g?" + unknown, t -> TypedAmount.number("g", t));
    return new Note.Cooked(minutes, top, lost);
  }

  private Note pour() throws NoMoreAnswers {
    String at =
        optional("Poured when? [now]", words::pour).orElseGet(() -> words.pour("now")).toString();
    Optional<BigDecimal> mass =
        optional("Paste on one plate, in g? [not weighed]", t -> TypedAmount.number("g", t));
    Optional<BigDecimal> tare =
        optional("The empty plate, in g? [not weighed]", t -> TypedAmount.number("g", t));
    return new Note.Poured(Optional.of(at), mass, tare);
  }

  private Note moved() throws NoMoreAnswers {
    String at = when();
    return required("Which faces are open now? upper, turned, both", t -> words.moved(t, at));
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
