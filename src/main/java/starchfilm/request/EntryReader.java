package starchfilm.request;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.files.amount.KnownName;
import starchfilm.files.amount.MistypedException;
import starchfilm.numerics.units.Named;

/**
 * Reads entries one by one; mistakes are kept, so that all are reported together, and so is what
 * was assumed.
 *
 * <p>After a mistake reading goes on with what stands for a field that was left out, or NaN;
 * nothing is made of it, for {@link #finished} refuses.
 */
final class EntryReader {
  private final Entries entries;
  private final List<Mistake> mistakes;
  private final List<String> remarks = new ArrayList<>();
  private final List<String> usual = new ArrayList<>();

  EntryReader(Entries entries) {
    this(entries, new ArrayList<>());
  }

  private EntryReader(Entries entries, List<Mistake> mistakes) {
    this.entries = entries;
    this.mistakes = mistakes;
  }

  /** One for each time that a section was written; mistakes count for the whole. */
  List<EntryReader> times(String group) {
    return entries.times(Field.sections(group).get(0)).stream()
        .map(once -> new EntryReader(once, mistakes))
        .toList();
  }

  boolean has(String key) {
    return isWritten(Field.of(key));
  }

  private boolean isWritten(Field field) {
    return !entries.words(field).isEmpty();
  }

  boolean hasAny(String... keys) {
    return Stream.of(keys).anyMatch(this::has);
  }

  boolean hasAnyOf(String group) {
    return Field.group(group).stream().anyMatch(this::isWritten);
  }

  /** Names of fields in a row, as a sentence lists them. */
  String quoted(String... keys) {
    return Stream.of(keys).map(Field::of).map(entries::quoted).collect(Collectors.joining(", "));
  }

  /** What several words mean. */
  <T> Optional<T> all(String key, Function<List<String>, T> meaning) {
    Field field = Field.of(key);
    List<String> words = entries.words(field);
    if (words.isEmpty()) {
      return Optional.empty();
    }
    int before = mistakes.size();
    try {
      if (words.stream().anyMatch(String::isBlank)) {
        refuse(key, "one of its fields is empty; fill in all of them");
      } else if (words.size() > field.most() && !field.isRepeatable()) {
        refuse(key, "given more than once, allowed once; leave all but one out");
      } else {
        return Optional.of(meaning.apply(words));
      }
    } catch (MistypedException e) {
      refuse(key, String.valueOf(e.getMessage()));
    } catch (IllegalArgumentException e) {
      refuseAfter(before, new Mistake(Optional.of(field), String.valueOf(e.getMessage())));
    }
    return Optional.empty();
  }

  /** What one word means. */
  <T> Optional<T> one(String key, Function<String, T> meaning) {
    return all(key, words -> meaning.apply(words.get(0)));
  }

  /** What each of several words means; nothing where one of them is mistyped. */
  <T> List<T> each(String key, Function<String, T> meaning) {
    return all(key, words -> words.stream().map(meaning).toList()).orElse(List.of());
  }

  <T> T one(String key, Function<String, T> meaning, T otherwise) {
    return one(key, meaning).orElse(otherwise);
  }

  /** The word itself, for a sentence; empty where nothing is written. */
  String word(String key) {
    return one(key, String::strip, "");
  }

  /** One of these choices, by its word in a file. */
  <E extends Enum<E>> Optional<E> choice(String key, List<E> known) {
    return one(key, typed -> chosen(typed, known));
  }

  /** The choice a word means. */
  static <E extends Enum<E>> E chosen(String typed, List<E> known) {
    return KnownName.find(typed, known, choice -> List.of(Named.of(choice)));
  }

  /** A number; NaN where it was mistyped. */
  OptionalDouble number(String key, ToDoubleFunction<String> meaning) {
    return has(key)
        ? OptionalDouble.of(one(key, meaning::applyAsDouble, Double.NaN))
        : OptionalDouble.empty();
  }

  /** A number that is usually this, and was taken so where nothing is written. */
  double usually(String key, ToDoubleFunction<String> meaning, double value, String words) {
    OptionalDouble given = number(key, meaning);
    if (given.isEmpty()) {
      usual.add(words);
    }
    return given.orElse(value);
  }

  /** Notes that a field must be written. */
  void require(String key, String ask) {
    if (!has(key)) {
      refuse(key, "not given; write " + ask);
    }
  }

  /** Notes that a field says nothing without another. */
  void requireWhole(String key, String other) {
    if (has(key) && !has(other)) {
      refuse(key, "given without " + quoted(other) + "; add one, or leave it out");
    }
  }

  boolean hasMistakes() {
    return !mistakes.isEmpty();
  }

  void refuse(String key, String why) {
    refuseAs(key, entries.name(Field.of(key)) + ": " + why);
  }

  /**
   * Notes that a field may not be written beside another.
   *
   * @param why a clause that goes on from the other's name; empty where that goes without saying
   */
  void refuseBeside(String key, String other, String why) {
    if (has(key)) {
      refuse(key, "given beside " + quoted(other) + why);
    }
  }

  /** The same of a sentence that names the field by itself. */
  void refuseAs(String key, String sentence) {
    mistakes.add(new Mistake(Optional.of(Field.of(key)), sentence));
  }

  void refuse(String sentence) {
    mistakes.add(new Mistake(Optional.empty(), sentence));
  }

  void remark(String sentence) {
    remarks.add(sentence);
  }

  /** Notes what is taken where nobody says, as a phrase. */
  void assume(String phrase) {
    usual.add(phrase);
  }

  /** A part of a request, unless what is read for it holds a mistake. */
  <T> Optional<T> made(Supplier<T> part) {
    return made(List.of(), part);
  }

  /** The same, whose refusals of a figure are told by the name of its field in the group. */
  <T> Optional<T> made(String group, Supplier<T> part) {
    return made(Field.group(group), part);
  }

  private <T> Optional<T> made(List<Field> fields, Supplier<T> part) {
    int before = mistakes.size();
    try {
      T made = part.get();
      return mistakes.size() == before ? Optional.of(made) : Optional.empty();
    } catch (IllegalArgumentException e) {
      refuseAfter(before, named(fields, String.valueOf(e.getMessage())));
    } catch (NoSuchElementException e) {
      // A field above that was mistyped, or not given where it must be.
      if (mistakes.isEmpty()) {
        throw e;
      }
    }
    return Optional.empty();
  }

  /** A mistake above is reason enough for whatever came of it. */
  private void refuseAfter(int before, Mistake why) {
    if (mistakes.size() == before) {
      mistakes.add(why);
    }
  }

  /** A refusal by the name of the field that said the figure, where one of these did. */
  private Mistake named(List<Field> fields, String why) {
    String quantity = why.split(":", 2)[0];
    return fields.stream()
        .filter(this::isWritten)
        .filter(
            field ->
                quantity.equalsIgnoreCase(field.label())
                    || quantity.startsWith(field.key().substring(field.key().indexOf('.') + 1)))
        .map(
            field ->
                new Mistake(
                    Optional.of(field), entries.name(field) + why.substring(quantity.length())))
        .findFirst()
        .orElse(new Mistake(Optional.empty(), why));
  }

  /** The whole request, or every mistake. */
  <T> T finished(Supplier<T> whole) {
    Optional<T> made = mistakes.isEmpty() ? made(whole) : Optional.empty();
    return made.orElseThrow(
        () -> new RefusedRequestException(mistakes.stream().distinct().toList()));
  }

  /** What was taken for granted, in sentences. */
  List<String> assumptions() {
    List<String> all = new ArrayList<>(remarks);
    if (!usual.isEmpty()) {
      all.add("Not given, so assumed: " + String.join("; ", usual) + ".");
    }
    return List.copyOf(all);
  }
}
