package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.regex.Pattern;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.notebook.TrialField;

/** What a person types into a field of a form, and how what stands there is shown. */
final class FieldInput {
  private static final String UNKNOWN = "unknown";
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
      case NUMBER, COUNT -> DecimalNode.valueOf(number(typed, unit));
      default -> TextNode.valueOf(typed);
    };
  }

  private static JsonNode amount(String typed, String unit) {
    if (typed.isEmpty() || typed.equalsIgnoreCase(UNKNOWN) || typed.equals("?")) {
      return TextNode.valueOf(UNKNOWN);
    }
    if (!TypedAmount.isUnit(unit)) {
      return DecimalNode.valueOf(number(typed, unit));
    }
    TypedAmount amount = TypedAmount.inUnit(unit, typed);
    if (!amount.isRange()) {
      return DecimalNode.valueOf(amount.in(unit));
    }
    ObjectNode ends = JsonNodeFactory.instance.objectNode();
    ends.set("from", DecimalNode.valueOf(amount.endsIn(unit).get(0)));
    ends.set("to", DecimalNode.valueOf(amount.endsIn(unit).get(1)));
    return ends;
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
