package starchfilm.request;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.request.Field.FieldSection;

/** What a test writes. */
public final class Written {
  static final List<FieldSection> NEW = Field.sections("but", "trial", "place", "new");
  static final List<FieldSection> PLAN =
      Field.sections("supplies", "kitchen", "wish", "place", "when", "pieces", "series");
  static final List<FieldSection> DRY = Field.sections("so far", "trial", "place", "wanted");
  static final List<FieldSection> THICKNESS = Field.sections("thickness", "trial", "place");
  static final List<FieldSection> ASSAY = Field.sections("assay", "reading", "record");
  static final List<FieldSection> PH = Field.sections("ph");

  private Written() {}

  /**
   * Options of one word each.
   *
   * @param words the word of each option
   * @return as a command hands them over
   */
  public static Entries options(Map<String, String> words) {
    return new Entries() {
      @Override
      public List<String> words(Field field) {
        return Optional.ofNullable(words.get(field.option())).stream().toList();
      }

      @Override
      public String name(Field field) {
        return field.option();
      }
    };
  }

  /** A line that says what was cooked, and what is written beside it. */
  static Entries cooked(String line, Entries beside) {
    return new Entries() {
      @Override
      public List<String> words(Field field) {
        return field.key().equals("line.cooked") ? List.of(line) : beside.words(field);
      }

      @Override
      public String name(Field field) {
        return beside.name(field);
      }
    };
  }
}
