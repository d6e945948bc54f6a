package starchfilm.files.saving;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.TypedNumber;

/** What a field of a trial file may hold, and how a person types it. */
public enum FieldKind {
  /** Words. */
  WORDS {
    @Override
    JsonNode read(String typed, String unit) {
      return TextNode.valueOf(typed);
    }
  },
  /** One number. */
  NUMBER {
    @Override
    JsonNode read(String typed, String unit) {
      return DecimalNode.valueOf(number(typed, unit));
    }
  },
  /**
   * A number, a range such as {@code 5 to 7}, or {@code unknown}, which an empty field means too.
   */
  AMOUNT {
    @Override
    JsonNode read(String typed, String unit) {
      if (typed.isEmpty() || typed.equalsIgnoreCase(UNKNOWN) || typed.equals("?")) {
        return TextNode.valueOf(UNKNOWN);
      }
      Matcher range = RANGE.matcher(typed);
      if (!range.matches()) {
        return DecimalNode.valueOf(number(typed, unit));
      }
      ObjectNode ends = JsonNodeFactory.instance.objectNode();
      ends.set("from", DecimalNode.valueOf(number(range.group(1), unit)));
      ends.set("to", DecimalNode.valueOf(number(range.group(2), unit)));
      return ends;
    }
  };

  private static final String UNKNOWN = "unknown";
  private static final Pattern RANGE =
      Pattern.compile("(-?[0-9][0-9.,]*[^0-9]*?)\\s*(?:to|\u2013|(?<=[0-9])-)\\s*(-?[0-9].*)");
  private static final Pattern PLAIN = Pattern.compile("-?[0-9]+([.,][0-9]+)?");

  abstract JsonNode read(String typed, String unit);

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
    if (TypedNumber.isUnit(unit)) {
      // A sign is read here: typed amounts have none, temperatures may.
      return typed.startsWith("-")
          ? TypedNumber.in(unit, typed.substring(1)).negate()
          : TypedNumber.in(unit, typed);
    }
    if (!PLAIN.matcher(typed).matches()) {
      throw new MistypedException(
          typed, "a number" + (unit.isEmpty() ? "" : " in " + unit), "write it without a unit");
    }
    return new BigDecimal(typed.replace(',', '.'));
  }
}
