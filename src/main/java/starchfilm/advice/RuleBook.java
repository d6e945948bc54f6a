package starchfilm.advice;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import starchfilm.advice.SingleChanges.Compared;
import starchfilm.casting.Setting;
import starchfilm.casting.trial.ObservedFault.Kind;
import starchfilm.casting.trial.ObservedFault.Place;
import starchfilm.change.Change;
import starchfilm.files.json.PackedTable;
import starchfilm.files.json.PackedTable.Row;
import starchfilm.files.json.PackedText;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * The table of rules: which causes a fault may have, from which figure on they are one, what
 * answers a cause, and how all of it is worded.
 *
 * <p>It is the file {@code rules.json} beside this class, one rule a line. To add a rule, add a
 * line; a cause, measure, figure or adjustment nobody has heard of is refused with its row.
 *
 * @param measures what a cause may be held against
 * @param rules fault and place to cause, in the order of the file
 * @param cures cause to adjustment, in the order of the file
 * @param changes how each change is worded, with the names of {@link Figure}s in braces
 * @param compared what is compared of two trials, in the order of the work
 */
public record RuleBook(
    List<Measure> measures,
    List<Rule> rules,
    List<Cure> cures,
    Map<Change, String> changes,
    List<Compared> compared) {
  private static final RuleBook PACKED = read(PackedText.of(RuleBook.class, "rules.json"));

  public RuleBook {
    changes = Map.copyOf(changes);
  }

  /** The rules that come with the program. */
  public static RuleBook packed() {
    return PACKED;
  }

  /**
   * Reads a table.
   *
   * @throws IllegalArgumentException where it is not JSON, a field is missing or a name is not
   *     known
   */
  static RuleBook read(String json) {
    PackedTable table = new PackedTable(json);
    Map<Cause, List<CauseLimit>> limits = new EnumMap<>(Cause.class);
    for (Row row : table.rows("causes")) {
      limits
          .computeIfAbsent(row.constant("cause", Cause.values()), cause -> new ArrayList<>())
          .add(
              new CauseLimit(
                  List.of(row.text("needs", "").split(", ", -1)),
                  row.text("to_note", ""),
                  row.constant("figure", Figure.values()),
                  row.number("harmless"),
                  row.number("clear"),
                  row.text("words"),
                  row.text("harmless_words", row.text("words"))));
    }
    List<Measure> measures =
        table.rows("measures").stream()
            .map(
                row ->
                    new Measure(
                        row.text("measure"),
                        row.constant("figure", Figure.values()),
                        row.number("harmless"),
                        row.number("clear"),
                        row.text("words"),
                        row.text("moved", ""),
                        row.text("needs", "").equals("seen"),
                        row.text("side_effect", "").equals("yes")))
            .toList();
    List<Rule> rules =
        table.rows("rules").stream()
            .map(
                row -> {
                  Cause cause = row.constant("cause", Cause.values());
                  return new Rule(
                      row.constant("fault", Kind.values()),
                      Set.copyOf(row.constants("where", Place.values())),
                      measure(measures, row),
                      cause,
                      limits.getOrDefault(cause, List.of()),
                      source(row));
                })
            .toList();
    List<Cure> cures =
        table.rows("cures").stream()
            .map(
                row ->
                    new Cure(
                        row.constant("cause", Cause.values()),
                        row.constant("adjust", Change.values()),
                        source(row)))
            .toList();
    Map<Change, String> changes = new EnumMap<>(Change.class);
    table
        .rows("changes")
        .forEach(row -> changes.put(row.constant("adjust", Change.values()), row.text("words")));
    List<Compared> compared =
        table.rows("compared").stream()
            .map(
                row ->
                    new Compared(
                        row.text("field"),
                        row.text("not_noted"),
                        row.text("what"),
                        row.constant("setting", Setting.values()),
                        row.constant("figure", Figure.values()),
                        row.number("same")))
            .toList();
    return new RuleBook(measures, rules, cures, changes, compared);
  }

  /** The rows for a fault. */
  List<Rule> rulesFor(Kind fault, Place where) {
    return rules.stream().filter(rule -> rule.holdsFor(fault, where)).toList();
  }

  /** What answers a cause, in the order of the table. */
  List<Change> answersTo(Cause cause) {
    return cures.stream().filter(cure -> cure.cause() == cause).map(Cure::adjustment).toList();
  }

  /** A change from one plate to another in a clause, with its figures. */
  String words(Change change, FaultContext before, FaultContext after) {
    return Sentence.in(changes.getOrDefault(change, change.tableName()), before, after);
  }

  private static Measure measure(List<Measure> known, Row row) {
    String name = row.text("held_against");
    return Stream.concat(known.stream(), Stream.of(Measure.OWN_FIGURE))
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(
            () -> new IllegalArgumentException("\"" + name + "\" is no measure of the table"));
  }

  private static Source source(Row row) {
    return new Source(row.text("source"), row.constant("check", Check.values()));
  }
}
