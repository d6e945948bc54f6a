package starchfilm.request;

import java.util.List;
import java.util.Map;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.files.json.PackedText;
import starchfilm.numerics.units.Named;

/**
 * A question that is asked of a note at a terminal.
 *
 * @param kind the kind of note it belongs to, such as {@code weighing}
 * @param field what is answered
 * @param words the question, with what an empty answer means in brackets
 */
public record NoteQuestion(String kind, Field field, String words) {
  /** Every question, kind by kind, in the order in which they are asked. */
  public static final List<NoteQuestion> ALL =
      PackedText.rows(NoteQuestion.class, "note-questions.txt", 3).stream()
          .map(row -> new NoteQuestion(row.get(0), Field.of(row.get(1)), words(row.get(2))))
          .toList();

  private static String words(String question) {
    String faults = String.join(", ", Named.all(FaultKind.values()));
    return question.replace("{faults}", faults);
  }

  /** Tells whether an empty answer is one. */
  public boolean isOptional() {
    return words.endsWith("]");
  }

  /**
   * Lists what is known of a kind before anything is asked.
   *
   * @param kind the kind of note
   * @return the words of each field; whoever notes a pour poured
   */
  public static Map<Field, List<String>> unasked(String kind) {
    return kind.equals("pour") ? Map.of(Field.of("pot.pouring"), List.of("yes")) : Map.of();
  }
}
