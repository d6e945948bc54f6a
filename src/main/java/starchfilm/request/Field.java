package starchfilm.request;

import java.util.Arrays;
import java.util.List;

/**
 * One thing somebody may write, by the names it has at each door.
 *
 * @param option its option on a command line, such as {@code --mass}, with a comma between its
 *     names where it has several; empty where no command has it
 * @param param what stands for its words in the help; empty for an option without words
 * @param help what the help says of it; a per cent sign is doubled
 * @param least how many words it takes at least
 * @param most how many words it takes at most
 * @param isRepeatable whether it may be written more than once
 * @param label what a page calls it; empty where no page has it
 * @param parts the inputs of a form that make it up, one a word
 */
public record Field(
    String option,
    String param,
    String help,
    int least,
    int most,
    boolean isRepeatable,
    String label,
    List<Part> parts) {
  /**
   * An input of a form.
   *
   * @param key its name in the form
   * @param unit what a bare number in it is counted in; empty for words
   */
  public record Part(String key, String unit) {}

  /**
   * Options of a command under one heading.
   *
   * @param heading what the help says over them; empty for the first ones
   * @param fields the options
   */
  public record Section(String heading, List<Field> fields) {}

  /**
   * The option by the name it is called by.
   *
   * @return the first of its names, such as {@code --mass}
   */
  public String name() {
    return option.replaceFirst(",.*", "");
  }

  public Field {
    parts = List.copyOf(parts);
  }

  static Field option(String option, String param, String help) {
    return new Field(option, param, help, 1, 1, false, "", List.of());
  }

  static Field flag(String option, String help) {
    return new Field(option, "", help, 0, 0, false, "", List.of());
  }

  /** An input that only a form has. */
  static Field input(String label, String... keysAndUnits) {
    return option("", "", "").onPage(label, keysAndUnits);
  }

  /** The same with this many words. */
  Field words(int fewest, int greatest) {
    return new Field(option, param, help, fewest, greatest, isRepeatable, label, parts);
  }

  Field repeatable() {
    return new Field(option, param, help, least, most, true, label, parts);
  }

  /**
   * The same on a page: inputs by key, each followed by its unit after a blank where it has one.
   */
  Field onPage(String name, String... keysAndUnits) {
    List<Part> inputs =
        Arrays.stream(keysAndUnits)
            .map(both -> both.split(" ", -1))
            .map(both -> new Part(both[0], both.length > 1 ? both[1] : ""))
            .toList();
    return new Field(option, param, help, least, most, isRepeatable, name, inputs);
  }
}
