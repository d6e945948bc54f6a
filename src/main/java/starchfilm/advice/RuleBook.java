package starchfilm.advice;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import starchfilm.advice.SingleChanges.Compared;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.change.Change;
import starchfilm.files.json.PackedTable;
import starchfilm.files.json.PackedText;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.units.Named;

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
 * @param changes how each change is worded, with the names of {@link AdviceFigure}s in braces
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
    measures = List.copyOf(measures);
    rules = List.copyOf(rules);
    cures = List.copyOf(cures);
    changes = Map.copyOf(changes);
    compared = List.copyOf(compared);
  }

  /** The table as it is written. */
  private record Table(
      List<CauseLimit> causes,
      List<Measure> measures,
      List<WrittenRule> rules,
      List<Cure> cures,
      Map<Change, String> changes,
      List<Compared> compared) {
    RuleBook book() {
      return new RuleBook(
          measures, rules.stream().map(row -> row.rule(this)).toList(), cures, changes, compared);
    }
  }

  /** A rule as it is written, which calls its measure by name. */
  private record WrittenRule(
      FaultKind fault, Set<FaultPlace> where, String heldAgainst, Cause cause, Source source) {
    Rule rule(Table table) {
      Measure measure =
          Stream.concat(table.measures.stream(), Stream.of(Measure.OWN_FIGURE))
              .filter(each -> each.name().equals(heldAgainst))
              .findFirst()
              .orElseThrow(
                  () -> new IllegalArgumentException("no measure is called " + heldAgainst));
      List<CauseLimit> limits =
          table.causes.stream().filter(limit -> limit.cause() == cause).toList();
      return new Rule(fault, where, measure, cause, limits, source);
    }
  }

  /** The rules that come with the program. */
  public static RuleBook packed() {
    return PACKED;
  }

  /**
   * Reads a table.
   *
   * @param json its text, in UTF-8
   * @throws IllegalArgumentException where it is not JSON, a field is missing or a name is not
   *     known
   */
  static RuleBook read(String json) {
    return PackedTable.read(json, Table.class).book();
  }

  /** The rows for a fault. */
  List<Rule> rulesFor(FaultKind fault, FaultPlace where) {
    return rules.stream().filter(rule -> rule.holdsFor(fault, where)).toList();
  }

  /** What answers a cause, in the order of the table. */
  List<Change> answersTo(Cause cause) {
    return cures.stream().filter(cure -> cure.cause() == cause).map(Cure::adjustment).toList();
  }

  /** A change from one plate to another in a clause, with its figures. */
  String words(Change change, FaultContext before, FaultContext after) {
    return Sentence.in(changes.getOrDefault(change, Named.of(change)), before, after);
  }
}
