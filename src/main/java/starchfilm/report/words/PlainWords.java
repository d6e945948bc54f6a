package starchfilm.report.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.drying.Milestone;
import starchfilm.film.FeelChances;
import starchfilm.numerics.evidence.Extrapolation;
import starchfilm.numerics.evidence.ValidRange;
import starchfilm.numerics.figures.Figures;

/** Kinds, chances and faults in plain words. */
public final class PlainWords {
  private static final Map<String, String> KINDS =
      Glossary.read("kinds.txt").stream()
          .collect(
              Collectors.toMap(
                  entry -> entry.group() + "." + entry.term(), Glossary.Entry::meaning));

  private PlainWords() {}

  /**
   * The words for a kind.
   *
   * @param kind a constant of a kind that {@code kinds.txt} tells of
   * @return a noun, a clause or a sentence
   */
  public static String word(Enum<?> kind) {
    return word(kind, "");
  }

  /**
   * The words on one aspect of a kind.
   *
   * @param kind a constant of a kind that {@code kinds.txt} tells of
   * @param about the words behind the kind in a heading there, such as {@code in the hand}
   * @return a noun, a clause or a sentence
   */
  public static String word(Enum<?> kind, String about) {
    String heading = heading(kind.getDeclaringClass(), about);
    String found = KINDS.get(heading + "." + kind.name());
    if (found == null) {
      throw new IllegalStateException("kinds.txt has no " + kind.name() + " below " + heading);
    }
    return found;
  }

  private static String heading(Class<?> kind, String about) {
    String name = kind.getSimpleName();
    return about.isEmpty() ? name : name + ", " + about;
  }

  /**
   * The chances of each feel.
   *
   * @param chances of the film
   * @return such as {@code Of 100 such films about 48 are flexible and 30 stiff.}
   */
  public static String sentence(FeelChances chances) {
    List<String> parts =
        chances.ofHundred().entrySet().stream()
            .map(each -> each.getValue() + " " + word(each.getKey()))
            .toList();
    return parts.size() == 1
        ? ""
        : "Of 100 such films, from the stiffest to the softest, about "
            + list(parts).replaceFirst(" ", " are ")
            + ".";
  }

  /**
   * A fault somebody saw.
   *
   * @param fault the fault
   * @param calendar of its plate
   * @return such as {@code cracked at the edge, Thu 16 Apr}; without the remark
   */
  public static String seen(ObservedFault fault, PourCalendar calendar) {
    String when =
        fault.seenAtS().isPresent() ? ", " + calendar.moment(fault.seenAtS().getAsDouble()) : "";
    return word(fault.kind()) + " " + word(fault.where()) + when;
  }

  /**
   * The meaning of a milestone, its looks and its feel (common practice, no source).
   *
   * @param milestone the milestone
   * @return a clause
   */
  public static String meaning(Milestone milestone) {
    return Glossary.clause(word(milestone));
  }

  /**
   * A clause as it begins a sentence.
   *
   * @param clause not empty
   * @return with a capital
   */
  public static String capital(String clause) {
    return clause.substring(0, 1).toUpperCase(Locale.ROOT) + clause.substring(1);
  }

  /**
   * A sentence as it goes on after a colon.
   *
   * @param sentence not empty
   * @return with a small first letter
   */
  public static String afterColon(String sentence) {
    return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  /**
   * A clause as a sentence.
   *
   * @param clause not empty
   * @return with a capital and a full stop
   */
  public static String sentence(String clause) {
    return capital(clause) + ".";
  }

  /**
   * Things one after another.
   *
   * @param things at least one
   * @return such as {@code a, b and c}
   */
  public static String list(List<String> things) {
    int last = things.size() - 1;
    return last == 0
        ? things.get(0)
        : String.join(", ", things.subList(0, last)) + " and " + things.get(last);
  }

  /**
   * Rules used outside their ranges; rules with the same range and value share a sentence.
   *
   * @param extrapolations rules, ranges and values
   * @return whole sentences, in the order of the rules
   */
  public static List<String> extrapolations(List<Extrapolation> extrapolations) {
    Map<String, Set<String>> rulesByReason = new LinkedHashMap<>();
    for (Extrapolation each : extrapolations) {
      rulesByReason.computeIfAbsent(reason(each), none -> new LinkedHashSet<>()).add(each.rule());
    }
    List<String> sentences = new ArrayList<>();
    rulesByReason.forEach(
        (reason, rules) -> {
          sentences.add(capital(list(List.copyOf(rules))) + ": " + reason);
        });
    return sentences;
  }

  private static String reason(Extrapolation extrapolation) {
    ValidRange range = extrapolation.range();
    String unit = range.unit().isEmpty() ? "" : " " + range.unit();
    return "%s is %s%s, known to hold from %s to %s%s."
        .formatted(
            range.quantity(),
            Figures.noted(extrapolation.given()),
            unit,
            Figures.noted(range.min()),
            Figures.noted(range.max()),
            unit);
  }
}
