package starchfilm.request;

import java.util.List;
import starchfilm.request.Field.FieldSection;

/** The words that somebody wrote at one door: a command line or a form. */
public interface Entries {
  /**
   * The words written for a field; numbers of a form have their unit.
   *
   * @param field the field
   * @return empty where nothing was written
   */
  List<String> words(Field field);

  /**
   * What the door calls a field, at the head of a sentence.
   *
   * @param field the field
   * @return such as {@code --mass} or {@code What the jar holds}
   */
  String name(Field field);

  /**
   * What the door calls a field within a sentence.
   *
   * @param field the field
   * @return the same, with marks where it needs them to be distinguished from the rest
   */
  default String quoted(Field field) {
    return name(field);
  }

  /**
   * What was written in a section that may be repeated.
   *
   * @param section the section
   * @return once, or as often as it was begun
   */
  default List<Entries> times(FieldSection section) {
    return List.of(this);
  }
}
