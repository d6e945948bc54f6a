package starchfilm.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import starchfilm.files.saving.NotWrittenException;
import starchfilm.files.saving.Note;
import starchfilm.request.Entries;
import starchfilm.request.Field;
import starchfilm.request.NoteQuestion;
import starchfilm.request.NoteRequest;
import starchfilm.request.RefusedRequestException;

/**
 * Asks for notes one by one; an answer that cannot be read is asked for again, an empty one takes
 * what stands in brackets, and the end of the input ends the questions.
 */
final class NoteQuestions {
  private static final List<String> KINDS =
      NoteQuestion.ALL.stream().map(NoteQuestion::kind).distinct().toList();

  private final Asked asked;
  private final Iterator<String> typedLines;
  private final NoteRequest.Subject subject;

  NoteQuestions(Asked asked, NoteRequest.Subject subject) {
    this.asked = asked;
    this.typedLines = asked.in().lines().iterator();
    this.subject = subject;
  }

  /** The input ended in the middle of a note. */
  private static final class NoMoreAnswers extends Exception {
    private static final long serialVersionUID = 1L;
  }

  /** The answers of one note over the options of the command, each known by its field. */
  private record NoteAnswers(Map<Field, List<String>> given, Entries options) implements Entries {
    @Override
    public List<String> words(Field field) {
      return given.containsKey(field) ? given.get(field) : options.words(field);
    }

    @Override
    public String name(Field field) {
      return field.key();
    }
  }

  /** The notes that were answered in full. */
  List<Note> ask() throws NotWrittenException {
    List<Note> notes = new ArrayList<>();
    try {
      while (true) {
        Optional<String> kind =
            answer(
                "Note what? " + String.join(", ", KINDS) + " [nothing more]", NoteQuestions::kind);
        if (kind.isEmpty()) {
          return notes;
        }
        notes.addAll(of(kind.get()));
      }
    } catch (NoMoreAnswers e) {
      return notes;
    }
  }

  /** Whether a weighing that gained was of the plate before; empty where nobody says. */
  Optional<Boolean> samePlate(String told) {
    try {
      return answer(
              "It is " + told + ". Was it the same plate? yes, no [note nothing]",
              typed ->
                  typed.matches("yes|no")
                      ? Optional.empty()
                      : Optional.of("\"" + typed + "\" given, allowed yes or no"))
          .map(typed -> typed.equals("yes"));
    } catch (NoMoreAnswers e) {
      return Optional.empty();
    }
  }

  /** The beginning of a word is enough where no other begins so. */
  private static Optional<String> kind(String typed) {
    return KINDS.stream().filter(kind -> kind.startsWith(typed)).count() == 1
        ? Optional.empty()
        : Optional.of("\"" + typed + "\" given, allowed " + String.join(", ", KINDS));
  }

  private List<Note> of(String typed) throws NoMoreAnswers, NotWrittenException {
    String kind = KINDS.stream().filter(one -> one.startsWith(typed)).findFirst().orElseThrow();
    NoteAnswers answers =
        new NoteAnswers(new HashMap<>(NoteQuestion.unasked(kind)), asked.entries());
    for (NoteQuestion question : NoteQuestion.ALL) {
      if (question.kind().equals(kind)) {
        boolean again = true;
        while (again) {
          Optional<String> answer =
              answer(question.words(), words -> wrong(answers, question.field(), words));
          again = answer.isEmpty() && !question.isOptional();
        }
      }
    }
    return NoteRequest.read(answers, subject).notes();
  }

  /** Keeps an answer unless something is wrong with it. */
  private Optional<String> wrong(NoteAnswers answers, Field field, String words) {
    answers.given().put(field, List.of(words));
    Optional<String> mistake = Optional.empty();
    try {
      NoteRequest.read(answers, subject);
    } catch (RefusedRequestException e) {
      String name = field.key() + ": ";
      mistake =
          e.sentences().stream()
              .filter(sentence -> sentence.startsWith(name))
              .map(sentence -> sentence.substring(name.length()))
              .findFirst();
    } catch (NotWrittenException e) {
      return Optional.of(String.valueOf(e.getMessage()));
    }
    mistake.ifPresent(said -> answers.given().remove(field));
    return mistake;
  }

  /** Asks until nothing is wrong with the answer; empty where it is. */
  private Optional<String> answer(String question, Function<String, Optional<String>> wrong)
      throws NoMoreAnswers {
    while (true) {
      asked.out().println(question);
      if (!typedLines.hasNext()) {
        throw new NoMoreAnswers();
      }
      String typed = typedLines.next().strip();
      Optional<String> mistake = typed.isEmpty() ? Optional.empty() : wrong.apply(typed);
      if (mistake.isEmpty()) {
        return Optional.of(typed).filter(given -> !given.isEmpty());
      }
      asked.err().println(mistake.get());
    }
  }
}
