package starchfilm.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import starchfilm.request.Entries;
import starchfilm.request.Field;
import starchfilm.request.Field.FormInput;
import starchfilm.request.Mistake;
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

  private static final String COOKED = "cooked";

  /** A form with a line for what was cooked has no inputs for the air: line or room say it. */
  FormEntries(Fields form) {
    this(form, "kind", form.has(COOKED) ? Set.of("air", "rh", "speed") : Set.of());
  }

  /**
   * The sentences of a refusal by the input that each is about: of the inputs of a field, the one
   * with what the sentence quotes, else the first empty one. A field without an input is written in
   * the line of what was cooked.
   *
   * @return the inputs in the order of the form; sentences about none of them by an empty name
   */
  static Map<String, String> atInputs(List<Mistake> mistakes, Fields form) {
    Map<String, String> said = new LinkedHashMap<>();
    form.names().forEach(name -> said.put(name, ""));
    mistakes.forEach(
        one -> said.merge(input(one, form), one.sentence(), (a, b) -> (a + " " + b).strip()));
    said.values().removeIf(String::isEmpty);
    return said;
  }

  private static String input(Mistake mistake, Fields form) {
    List<String> inputs =
        mistake.field().stream()
            .flatMap(field -> field.parts().stream())
            .map(FormInput::key)
            .filter(form::has)
            .toList();
    return inputs.stream()
        .filter(key -> mistake.sentence().contains('"' + form.text(key) + '"'))
        .findFirst()
        .or(() -> inputs.stream().filter(key -> form.text(key).isEmpty()).findFirst())
        .or(() -> inputs.stream().findFirst())
        .orElse(mistake.field().isPresent() && form.has(COOKED) ? COOKED : "");
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
    return written && !isTold(field)
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
    return field.label().isEmpty() || isTold(field) ? "" : "\u201C" + field.label() + "\u201D";
  }

  private boolean isTold(Field field) {
    return field.parts().stream().anyMatch(part -> told.contains(part.key()));
  }

  /** A bare number with its unit; anything else as it was typed. */
  static String withUnit(String typed, String unit) {
    return typed.matches(NUMBERS_ALONE) && !unit.isEmpty() ? typed + " " + unit : typed;
  }
}
