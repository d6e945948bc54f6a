package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Pattern;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.NearMiss;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.findings.Allowed;
import starchfilm.files.json.Located.Place;
import starchfilm.files.notebook.TrialField;
import starchfilm.files.notebook.TypedValue;

/** What a person types for a field of a trial file, and how what stands there is shown. */
final class FieldInput {
  private static final String UNKNOWN = "unknown";
  private static final Place NOWHERE = new Place("", 0, 0);
  private static final Pattern PLAIN = Pattern.compile("-?[0-9]+([.,][0-9]+)?");

  private FieldInput() {}

  /**
   * What was typed, as the file keeps it.
   *
   * @param typed what was typed; of an amount a number, a range such as {@code 5 to 7}, or {@code
   *     unknown}, which an empty field means too
   * @throws MistypedException where it cannot be read
   */
  static JsonNode of(TrialField field, String typed) {
    String unit = field.unit().replace("\u00B0", "");
    return switch (field.kind()) {
      case AMOUNT -> amount(typed, unit);
      case NUMBER -> DecimalNode.valueOf(number(typed, unit));
      case COUNT -> DecimalNode.valueOf(count(typed, field.allowed().orElseThrow()));
      case CHOICE -> TextNode.valueOf(choice(typed, field));
      default -> TextNode.valueOf(typed);
    };
  }

  private static BigDecimal count(String typed, Allowed allowed) {
    if (!typed.matches("[0-9]{1,4}") || !allowed.contains(Integer.parseInt(typed))) {
      throw new MistypedException(typed, allowed.words(), allowed.mend());
    }
    return new BigDecimal(typed);
  }

  /** An emptied field of a form is no choice, which its reader tells. */
  private static String choice(String typed, TrialField field) {
    String word = typed.toLowerCase(Locale.ROOT).replace('-', ' ');
    if (typed.isEmpty() || field.choices().contains(typed)) {
      return typed;
    }
    return field.choices().stream()
        .filter(word::equals)
        .findFirst()
        .orElseThrow(
            () ->
                new MistypedException(
                    typed,
                    String.join(", ", field.choices()),
                    NearMiss.of(word, field.choices())
                        .map(near -> "did you mean " + near + "?")
                        .orElse("write one of these")));
  }

  private static JsonNode amount(String typed, String unit) {
    if (typed.isEmpty() || typed.equalsIgnoreCase(UNKNOWN) || typed.equals("?")) {
      return TextNode.valueOf(UNKNOWN);
    }
    if (!TypedAmount.isUnit(unit)) {
      return DecimalNode.valueOf(number(typed, unit));
    }
    return TrialTree.node(TypedValue.of(TypedAmount.inUnit(unit, typed), unit, NOWHERE));
  }

  /**
   * What stands in a field, as a person would type it.
   *
   * @param value the field's value; missing for a field that is not there
   * @return the text; empty where there is none
   */
  static String shown(JsonNode value) {
    if (value.isObject() && value.has("from") && value.has("to")) {
      return value.get("from").asText() + " to " + value.get("to").asText();
    }
    return value.isValueNode() && !value.isNull() ? value.asText() : "";
  }

  private static BigDecimal number(String typed, String unit) {
    if (TypedAmount.isUnit(unit)) {
      return TypedAmount.number(unit, typed);
    }
    if (!PLAIN.matcher(typed).matches()) {
      throw new MistypedException(
          typed, "a number" + (unit.isEmpty() ? "" : " in " + unit), "write it without a unit");
    }
    return new BigDecimal(typed.replace(',', '.'));
  }
}
