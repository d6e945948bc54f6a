package starchfilm.files.notebook;

import static starchfilm.files.json.Located.object;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import starchfilm.files.findings.Allowed;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.LocatedWriter;

/** The JSON Schema (2020-12) of a trial file, made from its {@link TrialField}s. */
public final class TrialSchema {
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
    return LocatedWriter.lines(
        of(
            object()
                .with("$schema", "https://json-schema.org/draft/2020-12/schema")
                .with("$id", "urn:starchfilm:trial-schema:2"),
            TrialField.TRIAL));
  }

  private static ObjectValue of(ObjectValue schema, TrialField field) {
    ObjectValue described = schema.with("description", field.sentence());
    if (!field.many()) {
      return one(described, field);
    }
    ObjectValue list =
        object()
            .with("type", "array")
            .with("minItems", field.required() ? Optional.of(number(1)) : Optional.empty())
            .with("items", one(object(), field));
    return anyOf(described, list, one(object(), field));
  }

  private static ObjectValue one(ObjectValue schema, TrialField field) {
    return switch (field.kind()) {
      case WORDS -> words(schema, field, NOT_BLANK);
      case CLOCK -> words(schema, field, "^\\s*(\\d{4}-\\d{2}-\\d{2}|" + DATE_TIME + ")\\s*$");
      case MOMENT -> words(schema, field, "^\\s*(" + SPAN + "|" + DATE_TIME + ")\\s*$");
      case DAYTIME -> words(schema, field, "^\\s*([01]\\d|2[0-3]):[0-5]\\d(:[0-5]\\d)?\\s*$");
      case FLAG -> schema.with("type", "boolean");
      case CHOICE -> schema.with("enum", texts(field.choices()));
      case NUMBER -> anyOf(schema, number(object(), field, "number"), typed());
      case COUNT -> number(schema, field, "integer");
      case AMOUNT ->
          anyOf(
              schema,
              number(object(), field, "number"),
              object().with("const", TrialField.UNKNOWN),
              section(object(), field.range()),
              typed());
      case SECTION -> section(schema, field);
    };
  }

  private static ObjectValue anyOf(ObjectValue schema, ObjectValue... either) {
    return schema.with("anyOf", Located.list(List.of(either)));
  }

  private static ListValue texts(List<String> texts) {
    return Located.list(texts.stream().map(Located::text).toList());
  }

  /** An amount with its unit, as people type it. */
  private static ObjectValue typed() {
    return object().with("type", "string").with("pattern", "\\d.*[^\\d\\s.,]");
  }

  private static ObjectValue words(ObjectValue schema, TrialField field, String pattern) {
    return schema
        .with("type", "string")
        .with("pattern", pattern)
        .with("maxLength", number(field.longest()));
  }

  private static ObjectValue number(ObjectValue schema, TrialField field, String type) {
    Allowed allowed = field.allowed().orElseThrow();
    ObjectValue number = schema.with("type", type);
    Located most = number(allowed.max());
    return allowed.percentOnly()
        // None, or more than a fraction typed for per cent could be.
        ? anyOf(
            number,
            object().with("const", number(0)),
            object().with("exclusiveMinimum", number(1)).with("maximum", most))
        : number
            .with(allowed.minExcluded() ? "exclusiveMinimum" : "minimum", number(allowed.min()))
            .with("maximum", most);
  }

  private static Located number(double value) {
    return Located.number(new BigDecimal(Allowed.plain(value)));
  }

  private static ObjectValue section(ObjectValue schema, TrialField field) {
    ObjectValue properties = object();
    for (TrialField each : field.fields().values()) {
      properties = properties.with(each.key(), of(object(), each));
    }
    List<String> required =
        field.fields().values().stream().filter(TrialField::required).map(TrialField::key).toList();
    return schema
        .with("type", "object")
        .with("properties", properties)
        .with("required", required.isEmpty() ? Optional.empty() : Optional.of(texts(required)));
  }
}
