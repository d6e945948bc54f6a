package starchfilm.files.notebook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import starchfilm.files.findings.Allowed;

/** The JSON Schema (2020-12) of a trial file, made from its {@link TrialField}s. */
public final class TrialSchema {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final String NOT_BLANK = "\\S";
  private static final String DATE_TIME =
      "\\d{4}-\\d{1,2}-\\d{1,2}[T ]\\s*\\d{1,2}:\\d{2}(:\\d{2}(\\.\\d{1,9})?)?(Z|[+-]\\d{2}:?\\d{2})?";
  private static final String SPAN = "\\+(\\s*\\d+([.,]\\d+)?\\s*(min|minutes?|h|hours?|d|days?))+";

  private TrialSchema() {}

  /**
   * The schema.
   *
   * @return JSON text
   */
  public static String text() {
    ObjectNode schema = JSON.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("$id", "urn:starchfilm:trial-schema:2");
    schema.setAll(of(TrialField.TRIAL));
    return schema.toPrettyString() + "\n";
  }

  private static ObjectNode of(TrialField field) {
    ObjectNode schema = JSON.objectNode();
    schema.put("description", field.sentence());
    if (field.many()) {
      ObjectNode list = JSON.objectNode().put("type", "array");
      if (field.required()) {
        list.put("minItems", 1);
      }
      list.set("items", one(field));
      return schema.setAll(anyOf(list, one(field)));
    }
    return schema.setAll(one(field));
  }

  private static ObjectNode one(TrialField field) {
    ObjectNode schema = JSON.objectNode();
    return switch (field.kind()) {
      case WORDS -> words(field, NOT_BLANK);
      case CLOCK -> words(field, "^\\s*(\\d{4}-\\d{2}-\\d{2}|" + DATE_TIME + ")\\s*$");
      case MOMENT -> words(field, "^\\s*(" + SPAN + "|" + DATE_TIME + ")\\s*$");
      case DAYTIME -> words(field, "^\\s*([01]\\d|2[0-3]):[0-5]\\d(:[0-5]\\d)?\\s*$");
      case FLAG -> schema.put("type", "boolean");
      case CHOICE -> {
        field.choices().forEach(schema.putArray("enum")::add);
        yield schema;
      }
      case NUMBER -> anyOf(number(field, "number"), typed());
      case COUNT -> number(field, "integer");
      case AMOUNT ->
          anyOf(
              number(field, "number"),
              JSON.objectNode().put("const", TrialFieldTable.UNKNOWN),
              section(field.range()),
              typed());
      case SECTION -> section(field);
    };
  }

  private static ObjectNode anyOf(ObjectNode... either) {
    return JSON.objectNode().set("anyOf", JSON.arrayNode().addAll(List.of(either)));
  }

  /** An amount with its unit, as people type it. */
  private static ObjectNode typed() {
    return JSON.objectNode().put("type", "string").put("pattern", "\\d.*[^\\d\\s.,]");
  }

  private static ObjectNode words(TrialField field, String pattern) {
    return JSON.objectNode()
        .put("type", "string")
        .put("pattern", pattern)
        .put("maxLength", field.longest());
  }

  private static ObjectNode number(TrialField field, String type) {
    Allowed allowed = field.allowed().orElseThrow();
    ObjectNode number = JSON.objectNode().put("type", type);
    if (!allowed.percentOnly()) {
      number.set(allowed.minExcluded() ? "exclusiveMinimum" : "minimum", plain(allowed.min()));
      return number.set("maximum", plain(allowed.max()));
    }
    // None, or more than a fraction typed for per cent could be.
    ArrayNode either = number.putArray("anyOf");
    either.addObject().put("const", 0);
    either.addObject().put("exclusiveMinimum", 1).set("maximum", plain(allowed.max()));
    return number;
  }

  private static JsonNode plain(double value) {
    return JSON.numberNode(new java.math.BigDecimal(Allowed.plain(value)));
  }

  private static ObjectNode section(TrialField field) {
    ObjectNode section = JSON.objectNode().put("type", "object");
    ObjectNode properties = section.putObject("properties");
    ArrayNode required = JSON.arrayNode();
    for (TrialField each : field.fields().values()) {
      properties.set(each.key(), of(each));
      if (each.required()) {
        required.add(each.key());
      }
    }
    if (!required.isEmpty()) {
      section.set("required", required);
    }
    return section;
  }
}
