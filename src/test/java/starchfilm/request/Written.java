package starchfilm.request;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a test writes. */
public final class Written {
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
}
