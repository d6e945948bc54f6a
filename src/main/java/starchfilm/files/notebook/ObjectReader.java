package starchfilm.files.notebook;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import starchfilm.files.amount.KnownName;
import starchfilm.files.findings.Allowed;
import starchfilm.files.findings.Findings;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.Located.WordValue;
import starchfilm.files.notebook.TrialField.ValueKind;
import starchfilm.numerics.evidence.Estimate;

/**
 * An object of a trial file, asked field by field.
 *
 * <p>Each question names a declared field; {@link UnknownFields} looks at those that are not.
 */
final class ObjectReader {
  private static final String SCALE = "scale_g";
  private static final Pattern LISTED = Pattern.compile("\\[(\\d+)]");

  private final ObjectValue object;
  private final TrialField declared;
  private final Findings findings;
  private final NumberReader numbers;
  private final KitchenScale scale;

  /** The whole of a file, whose masses are as fine as its own {@code scale_g} says. */
  ObjectReader(ObjectValue object, TrialField declared, Findings findings) {
    this.object = object;
    this.declared = declared;
    this.findings = findings;
    this.numbers = new NumberReader(findings);
    lookForRepeated();
    this.scale =
        new KitchenScale(
            declared.fields().containsKey(SCALE) ? number(SCALE) : OptionalDouble.empty());
  }

  private ObjectReader(ObjectValue object, TrialField declared, ObjectReader around) {
    this.object = object;
    this.declared = declared;
    this.findings = around.findings;
    this.numbers = around.numbers;
    this.scale = around.scale;
    lookForRepeated();
  }

  private void lookForRepeated() {
    for (Place twice : object.repeated()) {
      findings.fault(twice, "the same field twice", "every field once", "delete one of the two");
    }
  }

  /** A section; where the file does not have it, an empty one, to be asked all the same. */
  ObjectReader sectionOrEmpty(String key) {
    Place there = object.place().at(key);
    return section(key)
        .orElseGet(
            () ->
                new ObjectReader(
                    new ObjectValue(there, Map.of(), List.of()), declared.field(key), this));
  }

  /** Whether the file has it. */
  boolean isThere() {
    return !object.members().isEmpty() || object.place().end() > 0;
  }

  Place place() {
    return object.place();
  }

  /** Where a field's value stands, or the object itself if the field is missing. */
  Place placeOf(String key) {
    return object.get(key).map(Located::place).orElse(object.place());
  }

  /** Tells that a field, or the object without it, is wrong. */
  void fault(String key, String given, String allowed, String mend) {
    findings.fault(placeOf(key), given, allowed, mend);
  }

  /** Tells that the object as a whole is wrong. */
  void fault(String given, String allowed, String mend) {
    findings.fault(object.place(), given, allowed, mend);
  }

  /** The file beside this one that a field names, whether it exists or not. */
  Optional<Path> beside(String key, Path file) {
    return text(key).flatMap(name -> BesideFile.find(file, name, placeOf(key), findings));
  }

  /** What takes the findings of files that this one names. */
  Findings findings() {
    return findings;
  }

  /** Tells that a field is not used, where it is there. */
  void leftAside(String key, String why) {
    if (has(key)) {
      notice(key, "not used, " + why);
    }
  }

  /** Tells that a field is odd. */
  void notice(String key, String text) {
    findings.notice(placeOf(key), text);
  }

  /** The path of a field, whether it is there or not. */
  String path(String key) {
    return object.place().pathOf(key);
  }

  boolean has(String key) {
    return value(key).isPresent();
  }

  Optional<Located> value(String key) {
    return object.get(declared.field(key).key());
  }

  /** The range of a number. */
  Allowed allowed(String key) {
    return declared.field(key).allowed().orElseThrow();
  }

  Optional<ObjectReader> section(String key) {
    return value(key).flatMap(value -> child(value, key));
  }

  /** Objects of a list; a single object stands for a list of one. */
  List<ObjectReader> sections(String key) {
    return entries(key).stream().flatMap(entry -> child(entry, key).stream()).toList();
  }

  private Optional<ObjectReader> child(Located value, String key) {
    if (value instanceof ObjectValue child) {
      ObjectReader section = new ObjectReader(child, declared.field(key), this);
      section.lookForRequired();
      return Optional.of(section);
    }
    findings.fault(value, "an object in { }", declared.field(key).mend());
    return Optional.empty();
  }

  /** Sections are asked for where they are read, with the words for a recipe without them. */
  private void lookForRequired() {
    for (TrialField field : declared.fields().values()) {
      boolean isSection = field.kind() == ValueKind.SECTION;
      if (field.required() && !isSection && !object.members().containsKey(field.key())) {
        fault("no " + field.key(), field.rangeWords(), "add " + field.written());
      }
    }
  }

  /** A number or a range, in SI; empty where neither is known. */
  Optional<Estimate> amount(String key) {
    return value(key).flatMap(given -> number(given, declared.field(key)));
  }

  /** What was measured by volume in the field of a mass, as the field of the volume has it. */
  Optional<Estimate> volumeIn(String mass, String volume) {
    return value(mass)
        .filter(given -> given instanceof TextValue)
        .map(given -> numbers.understood(given, declared.field(volume)))
        .filter(read -> !(read instanceof TextValue))
        .flatMap(read -> number(read, declared.field(volume)));
  }

  /** An amount, or what its declaration says is assumed, which is stated. */
  Estimate taken(String key) {
    return amount(key).orElseGet(() -> assumed(key));
  }

  /** A number, or what is assumed for it. */
  double takenNumber(String key) {
    return number(key).orElseGet(() -> assumed(key).value());
  }

  /** What is assumed for a field that was not noted. */
  Estimate assumed(String key) {
    notRecorded(key);
    return NumberReader.si(declared.field(key), declared.field(key).assumedNumber());
  }

  /** What is taken for a field that was not noted, told in the words of its declaration. */
  <T> T assumed(String key, T taken) {
    return assumed(key, taken, declared.field(key).assumed());
  }

  /** What is taken for a field that was not noted, told in words of its own. */
  <T> T assumed(String key, T taken, String words) {
    notRecorded(key, words);
    return taken;
  }

  /** Tells that what is declared is assumed for a field. */
  void notRecorded(String key) {
    notRecorded(key, declared.field(key).assumed());
  }

  /** Tells what is assumed for a field, unless that costs nothing. */
  void notRecorded(String key, String assumed) {
    notRecorded(key, assumed, declared.field(key).cost());
  }

  /** Tells what is assumed for a field, at another cost than is declared. */
  void notRecorded(String key, String assumed, String cost) {
    if (!cost.isEmpty()) {
      findings.notRecorded(path(key), called(key), assumed, cost);
    }
  }

  /** What a field is called; of a second one of its kind with its number. */
  private String called(String key) {
    String name = declared.field(key).called();
    Matcher number = LISTED.matcher(path(key));
    if (!number.find()) {
      return name;
    }
    String which = number.group(1);
    return name.contains("{}")
        ? name.replace("{}", which)
        : which.equals("1") ? name : name + " " + which;
  }

  /** A number, of an amount also a range, in SI; empty where it is unknown or refused. */
  private Optional<Estimate> number(Located given, TrialField field) {
    Located value = numbers.understood(given, field);
    boolean isAmount = field.kind() == ValueKind.AMOUNT;
    if (value instanceof NumberValue number) {
      if (!numbers.checked(number, field)) {
        return Optional.empty();
      }
      double sd = isAmount && field.unit().equals("g") ? scale.sdG(number) : 0;
      return Optional.of(NumberReader.si(field, new Estimate(number.value(), sd)));
    }
    if (isAmount && value instanceof TextValue text && text.text().equals(TrialField.UNKNOWN)) {
      return Optional.empty();
    }
    if (isAmount && value instanceof ObjectValue range) {
      ObjectReader ends = new ObjectReader(range, field.range(), this);
      ends.lookForRequired();
      OptionalDouble from = ends.number("from");
      OptionalDouble to = ends.number("to");
      if (from.isEmpty() || to.isEmpty()) {
        return Optional.empty();
      }
      if (from.getAsDouble() > to.getAsDouble()) {
        findings.fault(
            range.place(), range.shown(), "a range, the lower end first", "turn its ends round");
        return Optional.empty();
      }
      return Optional.of(Estimate.between(from.getAsDouble(), to.getAsDouble()));
    }
    numbers.refuse(value, field);
    return Optional.empty();
  }

  /** A number and nothing else, in SI. */
  OptionalDouble number(String key) {
    return numbers(key, value(key).stream()).findFirst();
  }

  /** A list of numbers, in SI; a single number stands for a list of one. */
  List<Double> numbers(String key) {
    return numbers(key, entries(key).stream()).boxed().toList();
  }

  private DoubleStream numbers(String key, Stream<Located> values) {
    return values
        .flatMap(value -> number(value, declared.field(key)).stream())
        .mapToDouble(Estimate::value);
  }

  /** A whole number and nothing else. */
  OptionalInt count(String key) {
    OptionalDouble number = number(key);
    return number.isPresent() ? OptionalInt.of((int) number.getAsDouble()) : OptionalInt.empty();
  }

  Optional<String> text(String key) {
    return value(key).flatMap(value -> text(value, declared.field(key)));
  }

  private Optional<String> text(Located value, TrialField field) {
    if (value instanceof TextValue text && !text.text().isBlank()) {
      if (text.text().length() <= field.longest()) {
        return Optional.of(text.text().strip());
      }
      findings.fault(
          text.place(),
          text.text().length() + " characters",
          "a text of at most " + field.longest() + " characters",
          "shorten it");
      return Optional.empty();
    }
    findings.fault(value, "a text in double quotes, not empty", field.mend());
    return Optional.empty();
  }

  /** A list of texts; a single text stands for a list of one. */
  List<String> texts(String key) {
    TrialField field = declared.field(key);
    return entries(key).stream().flatMap(entry -> text(entry, field).stream()).toList();
  }

  /** The entries of a list; anything else stands for a list of one. */
  List<Located> entries(String key) {
    return value(key).map(Located::entries).orElse(List.of());
  }

  Optional<Boolean> flag(String key) {
    Optional<Located> value = value(key);
    if (value.isPresent() && value.get() instanceof WordValue word && word.flag().isPresent()) {
      return word.flag();
    }
    value.ifPresent(
        other -> findings.fault(other, "true or false", "write true or false without quotes"));
    return Optional.empty();
  }

  /** The constant that one word out of a few means; none for a word beside the constants'. */
  <E> Optional<E> choice(String key, E[] all) {
    return oneOf(key)
        .map(declared.field(key).choices()::indexOf)
        .filter(place -> place < all.length)
        .map(place -> all[place]);
  }

  /** One word out of a few. */
  Optional<String> oneOf(String key) {
    List<String> words = declared.field(key).choices();
    Optional<Located> value = value(key);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    String allowed = words.stream().collect(Collectors.joining("\", \"", "\"", "\""));
    if (value.get() instanceof TextValue text) {
      if (words.contains(text.text())) {
        return Optional.of(text.text());
      }
      Optional<String> meant = KnownName.among(text.text(), words);
      if (meant.isPresent()) {
        findings.notice(text.place(), text.quoted() + " read as " + meant.get());
        return meant;
      }
      findings.fault(
          text,
          allowed,
          KnownName.whatThen(text.text(), words)
              .map(mend -> mend.replaceFirst("^did you mean (.*)\\?$", "did you mean \"$1\"?"))
              .orElse("write one of these"));
    } else {
      findings.fault(value.get(), allowed, "write one of these in double quotes");
    }
    return Optional.empty();
  }
}
