package starchfilm.files.notebook;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.files.amount.NearMiss;
import starchfilm.files.amount.TypedAmount;
import starchfilm.files.amount.Unit;
import starchfilm.files.findings.Allowed;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.Member;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.Located.WordValue;
import starchfilm.numerics.evidence.Estimate;

/**
 * An object of a trial file, asked field by field.
 *
 * <p>Each question names a declared field; {@link #finish} then looks at those that are not. They
 * are welcome and named once, unless they look like a slip of the pen for one that bears on the
 * forecast.
 */
final class ObjectReader {
  private static final String UNKNOWN = "unknown";
  private static final String SCALE = "scale_g";
  private static final Pattern WITH_UNIT = Pattern.compile("(?s).*\\d.*[^\\d\\s.,].*");
  private static final Pattern LISTED = Pattern.compile("\\[(\\d+)]");
  private static final Pattern TYPED_NUMBER = Pattern.compile("\\s*(-?\\d+(?:[.,]\\d+)?)\\s*");

  /** Unknown fields that are named, with at most so many characters each. */
  private static final int NAMED = 10;

  private static final int LONGEST_NAMED = 40;

  /** Unknown fields of a file that are held against the known ones. */
  private static final int LOOKED_AT = 1_000;

  /** Fields whose loss costs no forecast anything. */
  private static final Set<String> WORDS_ONLY =
      Set.of("name", "remarks", "remark", "photos", "rating", "invented");

  private final ObjectValue object;
  private final TrialField declared;
  private final Findings findings;
  private final Scale scale;
  private final List<ObjectReader> children = new ArrayList<>();

  /** The whole of a file, whose masses are as fine as its own {@code scale_g} says. */
  ObjectReader(ObjectValue object, TrialField declared, Findings findings) {
    this.object = object;
    this.declared = declared;
    this.findings = findings;
    lookForRepeated();
    this.scale =
        new Scale(declared.fields().containsKey(SCALE) ? number(SCALE) : OptionalDouble.empty());
  }

  private ObjectReader(ObjectValue object, TrialField declared, ObjectReader around) {
    this.object = object;
    this.declared = declared;
    this.findings = around.findings;
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
    Place here = object.place();
    Place there = new Place(path(key), here.line(), here.column());
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
    Member member = object.members().get(key);
    return member == null ? object.place() : member.value().place();
  }

  /** The same of a field of an object in this one; its path names the field even if missing. */
  Place placeOf(String outer, String inner) {
    Member member = object.members().get(outer);
    if (member == null || !(member.value() instanceof ObjectValue section)) {
      return placeOf(outer);
    }
    Member field = section.members().get(inner);
    Place around = section.place();
    return field == null
        ? new Place(path(outer) + "." + inner, around.line(), around.column())
        : field.value().place();
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

  /** Tells that a field is odd. */
  void notice(String key, String text) {
    findings.notice(placeOf(key), text);
  }

  /** The path of a field, whether it is there or not. */
  String path(String key) {
    return object.place().path().isEmpty() ? key : object.place().path() + "." + key;
  }

  boolean has(String key) {
    return value(key).isPresent();
  }

  Optional<Located> value(String key) {
    return Optional.ofNullable(object.members().get(declared.field(key).key())).map(Member::value);
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
    Optional<Located> value = value(key);
    List<ObjectReader> sections = new ArrayList<>();
    if (value.isPresent() && value.get() instanceof ListValue list) {
      list.entries().forEach(entry -> child(entry, key).ifPresent(sections::add));
    } else {
      value.flatMap(single -> child(single, key)).ifPresent(sections::add);
    }
    return sections;
  }

  private Optional<ObjectReader> child(Located value, String key) {
    if (value instanceof ObjectValue child) {
      ObjectReader section = new ObjectReader(child, declared.field(key), this);
      children.add(section);
      section.lookForRequired();
      return Optional.of(section);
    }
    findings.fault(value, "an object in { }", declared.field(key).mend());
    return Optional.empty();
  }

  /** Sections are asked for where they are read, with the words for a recipe without them. */
  private void lookForRequired() {
    for (TrialField field : declared.fields().values()) {
      boolean isSection = field.kind() == TrialField.Kind.SECTION;
      if (field.required() && !isSection && !object.members().containsKey(field.key())) {
        fault("no " + field.key(), field.rangeWords(), "add " + field.written());
      }
    }
  }

  /** A number or a range, in SI; empty where neither is known. */
  Optional<Estimate> amount(String key) {
    return value(key).flatMap(given -> amount(key, understood(given, allowed(key).unit())));
  }

  /** What was measured by volume in the field of a mass, as the field of the volume has it. */
  Optional<Estimate> volumeIn(String mass, String volume) {
    return value(mass)
        .filter(given -> given instanceof TextValue)
        .map(given -> understood(given, allowed(volume).unit()))
        .filter(read -> !(read instanceof TextValue))
        .flatMap(read -> amount(volume, read));
  }

  /** An amount, or what its declaration says is assumed, which is stated. */
  Estimate taken(String key) {
    return amount(key).orElseGet(() -> assumed(key));
  }

  /** The same of a number. */
  double takenNumber(String key) {
    OptionalDouble given = number(key);
    return given.isPresent() ? given.getAsDouble() : assumed(key).value();
  }

  /** What is assumed for a field that was not noted. */
  Estimate assumed(String key) {
    notRecorded(key);
    return si(declared.field(key), declared.field(key).assumedNumber());
  }

  /** What is taken for a field that was not noted, told in the words of its declaration. */
  <T> T assumed(String key, T taken) {
    return assumed(key, taken, declared.field(key).assumed());
  }

  /** The same in other words. */
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

  /** The same at another cost than is declared. */
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

  private static Estimate si(TrialField field, Estimate inUnit) {
    Optional<Unit> unit = Unit.known(field.unit());
    return unit.map(known -> known.si(inUnit)).orElse(inUnit);
  }

  private Optional<Estimate> amount(String key, Located value) {
    TrialField field = declared.field(key);
    Allowed allowed = allowed(key);
    if (value instanceof NumberValue number) {
      boolean isMass = field.unit().equals("g");
      return checked(number, allowed)
          ? Optional.of(si(field, new Estimate(number.value(), isMass ? scale.sdG(number) : 0)))
          : Optional.empty();
    }
    if (value instanceof TextValue text && text.text().equals(UNKNOWN)) {
      return Optional.empty();
    }
    if (value instanceof ObjectValue range) {
      ObjectReader ends = new ObjectReader(range, field.range(), this);
      children.add(ends);
      ends.lookForRequired();
      OptionalDouble from = ends.number("from");
      OptionalDouble to = ends.number("to");
      return from.isPresent() && to.isPresent()
          ? Optional.of(Estimate.between(from.getAsDouble(), to.getAsDouble()))
          : Optional.empty();
    }
    findings.fault(
        value,
        "a number from " + allowed.words() + ", a range {\"from\": .., \"to\": ..} or \"unknown\"",
        mendOfText(value, allowed));
    return Optional.empty();
  }

  /** A number and nothing else, in SI. */
  OptionalDouble number(String key) {
    return value(key)
        .map(value -> number(value, declared.field(key)))
        .orElse(OptionalDouble.empty());
  }

  /** An amount in quotes with its unit, as people type it, is read as what it says. */
  private Located understood(Located given, String unit) {
    if (!(given instanceof TextValue text) || !hasUnit(text, unit)) {
      return given;
    }
    try {
      TypedAmount amount = TypedAmount.inUnit(unit, text.text());
      Located read = TypedValue.of(amount, unit, given.place());
      findings.notice(given.place(), text.quoted() + " read as " + TypedValue.words(amount, unit));
      return read;
    } catch (MistypedException e) {
      return given;
    }
  }

  private static boolean hasUnit(TextValue text, String unit) {
    return TypedAmount.isUnit(unit) && WITH_UNIT.matcher(text.text()).matches();
  }

  private OptionalDouble number(Located given, TrialField field) {
    Allowed allowed = field.allowed().orElseThrow();
    Located value = understood(given, allowed.unit());
    if (value instanceof NumberValue number) {
      return checked(number, allowed)
          ? OptionalDouble.of(si(field, Estimate.exact(number.value())).value())
          : OptionalDouble.empty();
    }
    findings.fault(value, "a number from " + allowed.words(), mendOfText(value, allowed));
    return OptionalDouble.empty();
  }

  /** A list of numbers, in SI; a single number stands for a list of one. */
  List<Double> numbers(String key) {
    List<Double> numbers = new ArrayList<>();
    for (Located entry : entries(key)) {
      number(entry, declared.field(key)).ifPresent(numbers::add);
    }
    return numbers;
  }

  /** A whole number and nothing else. */
  OptionalInt count(String key) {
    Allowed allowed = allowed(key);
    Optional<Located> value = value(key);
    if (value.isPresent()
        && value.get() instanceof NumberValue number
        && number.value() != Math.rint(number.value())) {
      findings.fault(number, "a whole number, " + allowed.words(), allowed.mend());
      return OptionalInt.empty();
    }
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
    List<String> texts = new ArrayList<>();
    for (Located entry : entries(key)) {
      text(entry, declared.field(key)).ifPresent(texts::add);
    }
    return texts;
  }

  /** The entries of a list; anything else stands for a list of one. */
  List<Located> entries(String key) {
    return value(key)
        .map(value -> value instanceof ListValue list ? list.entries() : List.of(value))
        .orElse(List.of());
  }

  Optional<Boolean> flag(String key) {
    Optional<Located> value = value(key);
    if (value.isPresent()
        && value.get() instanceof WordValue word
        && word.word() != WordValue.Word.NULL) {
      return Optional.of(word.word() == WordValue.Word.TRUE);
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

  private boolean checked(NumberValue number, Allowed allowed) {
    double value = number.value();
    if (allowed.isFractionByMistake(value)) {
      String percent =
          new BigDecimal(number.literal()).movePointRight(2).stripTrailingZeros().toPlainString();
      findings.fault(
          number,
          allowed.words(),
          "this looks like a fraction; write " + percent + " for " + percent + " %");
      return false;
    }
    if (!allowed.contains(value)) {
      findings.fault(number, allowed.words(), allowed.mend());
      return false;
    }
    return true;
  }

  private static String mendOfText(Located value, Allowed allowed) {
    if (value instanceof TextValue text) {
      Matcher typed = TYPED_NUMBER.matcher(text.text());
      if (typed.matches()) {
        return "write the number alone, without quotes: " + typed.group(1).replace(',', '.');
      }
      if (hasUnit(text, allowed.unit())) {
        try {
          return "write " + TypedAmount.inUnit(allowed.unit(), text.text()).in(allowed.unit());
        } catch (MistypedException e) {
          return e.mend();
        }
      }
      if (text.text().strip().toLowerCase(Locale.ROOT).equals(UNKNOWN)) {
        return "write \"unknown\" in small letters";
      }
    }
    if (value instanceof WordValue word && word.word() == WordValue.Word.NULL) {
      return "leave the field out, or write \"unknown\"";
    }
    return allowed.mend();
  }

  /** Looks at the fields that are not declared, here and in every object below. */
  void finish() {
    List<String> notUsed = new ArrayList<>();
    finish(notUsed);
    if (!notUsed.isEmpty()) {
      int more = Math.max(0, notUsed.size() - NAMED);
      findings.notice(
          OptionalInt.empty(),
          "not used: "
              + notUsed.stream().limit(NAMED).collect(Collectors.joining(", "))
              + (more > 0 ? " and " + more + " more" : "")
              + "; begin the names of fields of your own with _"
              + (notUsed.size() > LOOKED_AT
                  ? ". Only the first " + LOOKED_AT + " were checked for typing mistakes"
                  : ""));
    }
  }

  private void finish(List<String> notUsed) {
    object.members().forEach((key, member) -> lookAt(key, member, notUsed));
    children.forEach(child -> child.finish(notUsed));
  }

  private void lookAt(String key, Member member, List<String> notUsed) {
    if (declared.fields().containsKey(key) || key.startsWith("_") || key.startsWith("$")) {
      return;
    }
    Optional<String> meant =
        notUsed.size() < LOOKED_AT
            ? NearMiss.of(key, declared.fields().keySet())
            : Optional.empty();
    if (meant.isEmpty()) {
      notUsed.add(PlainLine.of(path(key), LONGEST_NAMED));
      return;
    }
    String word = meant.get();
    if (object.members().containsKey(word) || WORDS_ONLY.contains(word)) {
      findings.notice(member.key(), "an unknown field, not used; did you mean " + word + "?");
    } else {
      findings.fault(
          member.key(),
          "the field " + key,
          word + " here",
          "did you mean " + word + "? (Begin fields of your own with _.)");
    }
  }
}
