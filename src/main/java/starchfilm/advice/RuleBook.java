package starchfilm.advice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import starchfilm.casting.trial.ObservedFault.Kind;
import starchfilm.casting.trial.ObservedFault.Place;
import starchfilm.change.Change;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.LocatedReader;
import starchfilm.files.json.PackedText;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * The table of rules: which causes a fault may have, and what answers a cause.
 *
 * <p>It is the file {@code rules.json} beside this class, one rule a line. To add a rule, add a
 * line; a cause, measure or adjustment nobody has heard of is refused with its place.
 *
 * @param rules fault and place to cause, in the order of the file
 * @param cures cause to adjustment, in the order of the file
 */
public record RuleBook(List<Rule> rules, List<Cure> cures) {
  private static final String FILE = "rules.json";

  public RuleBook {
    rules = List.copyOf(rules);
    cures = List.copyOf(cures);
  }

  /**
   * The rules that come with the program.
   *
   * @return the table
   */
  public static RuleBook packed() {
    try {
      return read(PackedText.of(RuleBook.class, FILE));
    } catch (UnreadableFileException e) {
      throw new IllegalStateException(
          FILE + ", line " + e.line().orElse(0) + ": " + e.getMessage(), e);
    }
  }

  /**
   * Reads a table.
   *
   * @param json its text
   * @return the table
   * @throws UnreadableFileException where it is not JSON, a field is missing, or a word is not
   *     known
   */
  public static RuleBook read(String json) throws UnreadableFileException {
    Located root = new LocatedReader().read(json);
    List<Rule> rules = new ArrayList<>();
    for (ObjectValue row : rows(root, "rules")) {
      rules.add(
          new Rule(
              word(row, "fault", Kind.values(), RuleBook::plain),
              places(row),
              word(row, "held_against", Measure.values(), Measure::tableName),
              word(row, "cause", Cause.values(), Cause::tableName),
              source(row)));
    }
    List<Cure> cures = new ArrayList<>();
    for (ObjectValue row : rows(root, "cures")) {
      cures.add(
          new Cure(
              word(row, "cause", Cause.values(), Cause::tableName),
              word(row, "adjust", Change.values(), Change::tableName),
              source(row)));
    }
    return new RuleBook(rules, cures);
  }

  /** The rows for a fault. */
  List<Rule> rulesFor(Kind fault, Place where) {
    return rules.stream().filter(rule -> rule.holdsFor(fault, where)).toList();
  }

  /** What answers a cause, in the order of the table. */
  List<Change> answersTo(Cause cause) {
    return cures.stream().filter(cure -> cure.cause() == cause).map(Cure::adjustment).toList();
  }

  private static Set<Place> places(ObjectValue row) throws UnreadableFileException {
    Set<Place> places = EnumSet.noneOf(Place.class);
    for (String name : text(row, "where").split(", ", -1)) {
      places.add(known(row, "where", name, Place.values(), RuleBook::plain));
    }
    return places;
  }

  private static Source source(ObjectValue row) throws UnreadableFileException {
    return new Source(text(row, "source"), word(row, "check", Check.values(), RuleBook::plain));
  }

  private static String plain(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static List<ObjectValue> rows(Located root, String name) throws UnreadableFileException {
    if (root instanceof ObjectValue object
        && object.members().containsKey(name)
        && member(object, name) instanceof ListValue list) {
      List<ObjectValue> rows = new ArrayList<>();
      for (Located entry : list.entries()) {
        if (!(entry instanceof ObjectValue row)) {
          throw fault(entry, entry.quoted(), "a rule in { }", "write one rule a line");
        }
        rows.add(row);
      }
      return rows;
    }
    throw fault(root, "no list \"" + name + "\"", "a list of rules", "write \"" + name + "\": []");
  }

  private static <E> E word(ObjectValue row, String field, E[] known, Function<E, String> name)
      throws UnreadableFileException {
    return known(row, field, text(row, field), known, name);
  }

  private static <E> E known(
      ObjectValue row, String field, String given, E[] known, Function<E, String> name)
      throws UnreadableFileException {
    for (E each : known) {
      if (name.apply(each).equals(given)) {
        return each;
      }
    }
    throw fault(
        row,
        field + " \"" + given + '"',
        String.join(", ", Arrays.stream(known).map(name).toList()),
        "write one of these");
  }

  private static String text(ObjectValue row, String field) throws UnreadableFileException {
    if (row.members().containsKey(field)
        && member(row, field) instanceof TextValue text
        && !text.text().isBlank()) {
      return text.text();
    }
    throw fault(row, "no " + field, "a text", "write \"" + field + "\": \"...\"");
  }

  private static Located member(ObjectValue object, String name) {
    Located.Member member = object.members().get(name);
    if (member == null) {
      throw new IllegalStateException("no member " + name);
    }
    return member.value();
  }

  private static UnreadableFileException fault(
      Located at, String given, String allowed, String mend) {
    return new UnreadableFileException(
        at.place().line(), at.place().column(), given, allowed, mend);
  }
}
