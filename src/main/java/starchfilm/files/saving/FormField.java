package starchfilm.files.saving;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TrialField.ValueKind;

/**
 * A field of a trial file on a form.
 *
 * @param path its path; an entry of a list by its place, from 0
 * @param label its name
 * @param group the title of the fields it stands with
 * @param field what may stand in it
 */
public record FormField(String path, String label, String group, TrialField field) {
  /** How the starches are called that a form shows; a file may hold more, which stay. */
  private static final List<String> ROWS = List.of("Starch", "Second starch", "Third starch");

  private static final String ROW = "{}";
  private static final Pattern ENTRY = Pattern.compile("\\[([0-9]{1,9})]");

  /** Every field a form shows, in the order of a file. */
  public static final List<FormField> ALL = all();

  /**
   * The words it may hold.
   *
   * @return empty where any text may stand
   */
  public List<String> choices() {
    return field.choices();
  }

  /**
   * The path of the field on a form that a fault is of.
   *
   * @param field where the fault is: entries of a list counted from 1, an end of a range by itself
   * @return the path, as of a {@link FormField}
   */
  public static String pathOf(String field) {
    return ENTRY
        .matcher(field.replaceFirst("\\.(from|to)$", ""))
        .replaceAll(entry -> "." + (Integer.parseInt(entry.group(1)) - 1));
  }

  private static List<FormField> all() {
    List<FormField> all = new ArrayList<>();
    addAll(TrialField.TRIAL, "", all);
    return List.copyOf(all);
  }

  private static void addAll(TrialField section, String groupAround, List<FormField> all) {
    String group = section.label().isEmpty() ? groupAround : section.label();
    if (section.many()) {
      for (int i = 0; i < ROWS.size(); i++) {
        for (TrialField field : section.fields().values()) {
          if (!field.label().isEmpty()) {
            String path =
                section.path() + "." + i + field.path().substring(section.path().length());
            all.add(new FormField(path, field.label().replace(ROW, ROWS.get(i)), group, field));
          }
        }
      }
      return;
    }
    for (TrialField field : section.fields().values()) {
      if (field.kind() == ValueKind.SECTION) {
        addAll(field, group, all);
      } else if (!field.label().isEmpty()) {
        all.add(new FormField(field.path(), field.label(), group, field));
      }
    }
  }
}
