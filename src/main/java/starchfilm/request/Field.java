package starchfilm.request;

import java.util.List;

/**
 * One thing somebody may write, by the names it has at each door; declared in {@code fields.txt}.
 *
 * @param key its group and name, such as {@code assay.mass}
 * @param option its option on a command line, such as {@code --mass}, with a comma between its
 *     names where it has several; empty for a file, and where no command has it
 * @param param what stands for its words in the help; empty for an option without words
 * @param help what the help says of it; a per cent sign is doubled
 * @param least how many words it takes at least
 * @param most how many words it takes at most
 * @param isRepeatable whether it may be written more than once
 * @param label what a page calls it; empty where no page has it
 * @param parts the inputs of a form that make it up, one a word
 * @param path the field of a trial file it is written into; empty where there is none
 */
public record Field(
    String key,
    String option,
    String param,
    String help,
    int least,
    int most,
    boolean isRepeatable,
    String label,
    List<FormInput> parts,
    String path) {
  /**
   * An input of a form.
   *
   * @param forms the kinds of a form that have it, by what its field {@code kind} says; none for
   *     any
   * @param key its name in the form; empty where the kind itself is what is said
   * @param unit what a bare number in it is counted in; empty for words
   */
  public record FormInput(List<String> forms, String key, String unit) {}

  /**
   * Options of a command under one heading.
   *
   * @param heading what the help says over them; empty for the first ones
   * @param isRepeatable whether all of them may be written again, for one thing more
   * @param fields the options
   */
  public record FieldSection(String heading, boolean isRepeatable, List<Field> fields) {
    public FieldSection {
      fields = List.copyOf(fields);
    }
  }

  public Field {
    parts = List.copyOf(parts);
  }

  /** The help on it; what can be named there is looked up when it is asked for. */
  @Override
  public String help() {
    if (help.contains("{places}")) {
      return help.replace("{places}", UsualPlace.names());
    }
    return help.contains("{changes}")
        ? help.replace("{changes}", String.join(", ", OneChange.words()))
        : help;
  }

  /**
   * The option by the name it is called by.
   *
   * @return the first of its names, such as {@code --mass}
   */
  public String name() {
    return option.split(",", 2)[0];
  }

  /**
   * The field of this group and name.
   *
   * @param key such as {@code assay.mass}
   */
  public static Field of(String key) {
    return FieldTable.find(FieldTable.SECTIONS, key);
  }

  /**
   * The fields of these groups, each under its heading.
   *
   * @param groups their names
   */
  public static List<FieldSection> sections(String... groups) {
    return List.of(groups).stream().map(FieldTable.SECTIONS::get).toList();
  }

  /** The fields of a group. */
  static List<Field> group(String name) {
    return sections(name).get(0).fields();
  }
}
