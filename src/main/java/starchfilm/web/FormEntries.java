package starchfilm.web;

import java.util.List;
import java.util.Set;
import starchfilm.request.Entries;
import starchfilm.request.Field;
import starchfilm.request.Field.FormInput;
import starchfilm.web.http.Fields;

/**
 * What was written into a form.
 *
 * @param choice the input that says which kind of form it is; what stands in the inputs of other
 *     kinds is not read
 * @param told inputs that always say something, and something else says it
 */
record FormEntries(Fields form, String choice, Set<String> told) implements Entries {
  /** A number, a fraction or a range, in the unit of its field. */
  private static final String NUMBERS_ALONE =
      "[~0-9\u00BC-\u00BE][0-9.,/ \u00B1\u2013\u00BC-\u00BE+-]*";

  FormEntries(Fields form) {
    this(form, "kind", Set.of());
  }

  /** A choice always says something; whether it is meant, the amounts beside it tell. */
  @Override
  public List<String> words(Field field) {
    List<FormInput> parts =
        field.parts().stream()
            .filter(part -> part.forms().isEmpty() || part.forms().contains(form.text(choice)))
            .toList();
    boolean written =
        parts.stream()
            .filter(part -> parts.size() == 1 || !part.unit().isEmpty())
            .anyMatch(part -> !text(part).isEmpty());
    return written && parts.stream().noneMatch(part -> told.contains(part.key()))
        ? parts.stream().map(part -> withUnit(text(part), part.unit())).toList()
        : List.of();
  }

  /** What stands in an input; of a choice that is an input itself, its kind. */
  private String text(FormInput part) {
    return form.text(part.key().isEmpty() ? choice : part.key());
  }

  @Override
  public String name(Field field) {
    return field.label();
  }

  @Override
  public String quoted(Field field) {
    return field.label().isEmpty() ? "" : "\u201C" + field.label() + "\u201D";
  }

  /** A bare number with its unit; anything else as it was typed. */
  static String withUnit(String typed, String unit) {
    return typed.matches(NUMBERS_ALONE) && !unit.isEmpty() ? typed + " " + unit : typed;
  }
}
