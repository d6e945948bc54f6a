package starchfilm.report.advice;

import java.util.List;
import starchfilm.advice.Contrast;
import starchfilm.advice.Difference;
import starchfilm.advice.Effect;
import starchfilm.advice.Outcome;
import starchfilm.report.words.Anchor;
import starchfilm.report.words.PlainWords;

/**
 * A trial held against another.
 *
 * @param number the other trial's number on this page
 * @param anchor the other trial's place on this page
 * @param verdict which was better, a sentence
 * @param rows what was changed, and what the model says each change does alone
 * @param notNoted what may have been changed too, a sentence; may be empty
 * @param outcomes what came of it, and whether the model agrees
 */
record ContrastView(
    int number,
    String anchor,
    String verdict,
    List<Row> rows,
    String notNoted,
    List<Came> outcomes) {
  /**
   * A change.
   *
   * @param what the thing
   * @param change as it was and as it is
   * @param effects what the model says it does alone, one clause an entry; may be empty
   */
  record Row(String what, String change, List<String> effects) {}

  /**
   * Something that came out differently.
   *
   * @param seen what was seen
   * @param mark whether the model agrees, as a sign
   * @param agrees the same in words
   * @param model what the model says
   */
  record Came(String seen, String mark, String agrees, String model) {}

  static ContrastView of(Advised.Against against) {
    Contrast contrast = against.contrast();
    return new ContrastView(
        against.index() + 1,
        Anchor.ofTrial(against.index() + 1),
        contrast.verdict(),
        contrast.differences().stream().map(ContrastView::row).toList(),
        contrast.notNoted().isEmpty()
            ? ""
            : "Not noted in both, so it may have changed too: "
                + PlainWords.list(contrast.notNoted())
                + ".",
        contrast.outcomes().stream().map(ContrastView::came).toList());
  }

  private static Row row(Difference difference) {
    return new Row(
        difference.what(),
        difference.from() + " → " + difference.to(),
        difference.effects().stream().map(Effect::clause).toList());
  }

  private static Came came(Outcome outcome) {
    String seen = outcome.seen();
    return switch (outcome.agreement()) {
      case AGREES -> new Came(seen, "✓", "the model agrees", outcome.model());
      case DISAGREES -> new Came(seen, "✗", "the model does not agree", outcome.model());
      case CANNOT_TELL -> new Came(seen, "?", "your notes don't show", outcome.model());
    };
  }
}
