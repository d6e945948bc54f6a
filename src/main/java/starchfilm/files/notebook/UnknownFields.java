package starchfilm.files.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import starchfilm.files.amount.NearMiss;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.PlainLine;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.Member;
import starchfilm.files.json.Located.ObjectValue;

/**
 * The fields of a file that are not declared. They are welcome and named once, unless they look
 * like a slip of the pen for one that bears on the forecast.
 */
final class UnknownFields {
  /** Unknown fields that are named, with at most so many characters each. */
  private static final int NAMED = 10;

  private static final int LONGEST_NAMED = 40;

  /** Unknown fields of a file that are held against the known ones. */
  private static final int LOOKED_AT = 1_000;

  /** Fields whose loss costs no forecast anything. */
  private static final Set<String> WORDS_ONLY =
      Set.of("name", "remarks", "remark", "photos", "rating", "invented");

  private final Findings findings;
  private final List<String> notUsed = new ArrayList<>();

  private UnknownFields(Findings findings) {
    this.findings = findings;
  }

  /** Looks at every object of a file, and names what means nothing there. */
  static void tell(ObjectValue file, TrialField declared, Findings findings) {
    UnknownFields unknown = new UnknownFields(findings);
    unknown.lookAt(file, declared);
    unknown.tell();
  }

  private void lookAt(Located value, TrialField declared) {
    for (Located entry : value.entries()) {
      if (entry instanceof ObjectValue object) {
        object.members().forEach((key, member) -> lookAt(key, member, object, declared));
      }
    }
  }

  private void lookAt(String key, Member member, ObjectValue object, TrialField declared) {
    TrialField field = declared.fields().get(key);
    if (field != null) {
      switch (field.kind()) {
        case SECTION -> lookAt(member.value(), field);
        case AMOUNT -> lookAt(member.value(), field.range());
        default -> {}
      }
      return;
    }
    if (key.startsWith("_") || key.startsWith("$")) {
      return;
    }
    Optional<String> meant =
        notUsed.size() < LOOKED_AT
            ? NearMiss.of(key, declared.fields().keySet())
            : Optional.empty();
    if (meant.isEmpty()) {
      notUsed.add(PlainLine.of(object.place().pathOf(key), LONGEST_NAMED));
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

  private void tell() {
    if (!notUsed.isEmpty()) {
      int more = Math.max(0, notUsed.size() - NAMED);
      findings.notice(
          "not used: "
              + notUsed.stream().limit(NAMED).collect(Collectors.joining(", "))
              + (more > 0 ? " and " + more + " more" : "")
              + "; begin the names of fields of your own with _"
              + (notUsed.size() > LOOKED_AT
                  ? ". Only the first " + LOOKED_AT + " were checked for typing mistakes"
                  : ""));
    }
  }
}
