package starchfilm.numerics.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * A kind of something that is called by the name of its constant: trial files, forms and sentences
 * spell it alike.
 */
public interface Named {
  /** The name of the constant. */
  String name();

  /**
   * The name that people write.
   *
   * @return lower case, such as "waxy corn" for {@code WAXY_CORN}
   */
  default String tradeName() {
    return spelt(name());
  }

  /** The word for a choice in files, such as "still wet" for {@code STILL_WET}. */
  static String of(Enum<?> choice) {
    return choice instanceof Named named ? named.tradeName() : spelt(choice.name());
  }

  /** The words for choices, in their order. */
  static List<String> all(Enum<?>[] choices) {
    return Arrays.stream(choices).map(Named::of).toList();
  }

  private static String spelt(String constant) {
    return constant.toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
