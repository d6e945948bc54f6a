package starchfilm.files.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import starchfilm.files.findings.Allowed;
import starchfilm.files.json.TextEdit;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.units.Named;

/**
 * A field of a trial file, declared once: reader, form, schema and list of keys follow from it. A
 * new field is a line in {@code trial-fields.txt} and the place that reads it.
 *
 * @param path its name behind those of the objects around it, with dots; empty for the whole trial
 * @param kind what stands in it
 * @param required whether the object around it makes no sense without it
 * @param perPour whether it tells of one pour and does not hold for the next
 * @param many whether a list of it may stand there, too
 * @param allowed of a number: its range
 * @param longest of words: the most characters
 * @param choices of a choice: the words
 * @param sentence what it says
 * @param example how it is written in JSON
 * @param mend what to write instead of something else
 * @param label its name on a form; of a section the title of its fields; empty where no form has it
 * @param assumed what is taken where it is not noted, begun with a number or a range in its unit;
 *     empty where that is no constant
 * @param cost what it costs not to know it; empty where nothing is stated
 * @param called its name where what is assumed of it is stated
 * @param fields of a section: its fields by their names
 */
public record TrialField(
    String path,
    ValueKind kind,
    boolean required,
    boolean perPour,
    boolean many,
    Optional<Allowed> allowed,
    int longest,
    List<String> choices,
    String sentence,
    String example,
    String mend,
    String label,
    String assumed,
    String cost,
    String called,
    Map<String, TrialField> fields) {
  /** The word for what nobody knows. */
  public static final String UNKNOWN = "unknown";

  private static final Pattern ASSUMED = Pattern.compile("([0-9.]+)(?: to ([0-9.]+))?");

  /** The whole trial. */
  public static final TrialField TRIAL = TrialFieldTable.read("trial-fields.txt");

  /** The whole of a jar's file. */
  public static final TrialField JAR = TrialFieldTable.read("jar-fields.txt");

  /** The kind of content a field may have. */
  public enum ValueKind {
    /** Words. */
    WORDS,
    /** True or false. */
    FLAG,
    /** One word of a few. */
    CHOICE,
    /** A number. */
    NUMBER,
    /** A whole number. */
    COUNT,
    /** A number, a range or the word unknown. */
    AMOUNT,
    /** A date, perhaps with its time. */
    CLOCK,
    /** A time by the clock or counted from the pour. */
    MOMENT,
    /** A time on any day. */
    DAYTIME,
    /** An object with fields. */
    SECTION;

    /** The word for the kind, in sentences and in the table. */
    String words() {
      return Named.of(this);
    }
  }

  /** Copies the collections. */
  public TrialField {
    choices = List.copyOf(choices);
    fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
  }

  /**
   * The name of the field itself.
   *
   * @return the last part of the path
   */
  public String key() {
    return TextEdit.last(path);
  }

  /**
   * The unit of its numbers.
   *
   * @return empty for whatever has none
   */
  public String unit() {
    return allowed.map(Allowed::unit).orElse("");
  }

  /**
   * The words for what may stand in the field.
   *
   * @return such as {@code amount, 0 to 100000 g} or {@code list of section}
   */
  public String allowedWords() {
    String range = allowed.map(numbers -> ", " + numbers.words()).orElse("");
    String words = choices.isEmpty() ? "" : " of " + String.join(", ", choices);
    return (required ? "required " : "") + (many ? "list of " : "") + kind.words() + range + words;
  }

  /** The numbers or words that may stand in it. */
  String rangeWords() {
    return allowed
        .map(Allowed::words)
        .orElse(
            kind == ValueKind.MOMENT
                ? "a time"
                : choices.isEmpty() ? "words" : String.join(", ", choices));
  }

  /** What is assumed, in its unit. */
  Estimate assumedNumber() {
    Matcher ends = ASSUMED.matcher(assumed);
    if (!ends.lookingAt()) {
      throw new IllegalStateException(path + ": nothing is assumed");
    }
    double from = Double.parseDouble(ends.group(1));
    return ends.group(2) == null
        ? Estimate.exact(from)
        : Estimate.between(from, Double.parseDouble(ends.group(2)));
  }

  /**
   * Returns how it is written.
   *
   * @return its name and the example, as they stand in a file
   */
  public String written() {
    return "\"" + key() + "\": " + (many ? "[" + example + "]" : example);
  }

  /**
   * A field of this section.
   *
   * @param key its name
   * @return the field
   */
  public TrialField field(String key) {
    TrialField field = fields.get(key);
    if (field == null) {
      throw new IllegalArgumentException("no field " + key + " in " + path);
    }
    return field;
  }

  /** The range that may stand for this amount: two numbers. */
  TrialField range() {
    Map<String, TrialField> ends = new LinkedHashMap<>();
    for (String end : List.of("from", "to")) {
      ends.put(end, with(path + "." + end, ValueKind.NUMBER, Map.of()));
    }
    return with(path, ValueKind.SECTION, ends);
  }

  private TrialField with(String newPath, ValueKind newKind, Map<String, TrialField> newFields) {
    return new TrialField(
        newPath, newKind, true, false, false, allowed, longest, choices, sentence, example, mend,
        label, "", "", "", newFields);
  }

  /**
   * Every field below this one, sections before what is in them.
   *
   * @return in the order of the table
   */
  public List<TrialField> all() {
    List<TrialField> all = new ArrayList<>();
    for (TrialField field : fields.values()) {
      all.add(field);
      all.addAll(field.all());
    }
    return all;
  }
}
