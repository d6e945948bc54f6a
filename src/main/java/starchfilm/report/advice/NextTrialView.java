package starchfilm.report.advice;

import java.util.List;
import java.util.stream.Stream;
import starchfilm.advice.Effect;
import starchfilm.advice.NextTrial;
import starchfilm.change.Change;
import starchfilm.report.caution.Caution;
import starchfilm.report.words.PlainWords;

/**
 * One or two changes to try, and what they are expected to do.
 *
 * @param changes what to change, with figures; one or two
 * @param against what that is against; may be empty
 * @param aims what it does to the trouble itself, whole sentences; may be empty
 * @param effects what else moves, figure by figure
 * @param cautions what the film rules warn of with the changes and did not before
 */
record NextTrialView(
    List<String> changes,
    String against,
    List<String> aims,
    List<Effect> effects,
    List<String> cautions) {
  static NextTrialView of(NextTrial next) {
    return new NextTrialView(
        next.changes().stream().map(NextTrialView::sentence).toList(),
        next.against().isEmpty() ? "" : "Against: " + PlainWords.list(next.against()) + ".",
        next.aims().stream().map(NextTrialView::sentence).toList(),
        next.effects(),
        Stream.concat(
                next.newCautions().stream().map(PlainWords::word),
                next.adjustments().contains(Change.FAN)
                        || next.adjustments().contains(Change.WARMER_ROOM)
                    ? Stream.of(Caution.FANS_AND_HEATERS.sentence())
                    : Stream.empty())
            .toList());
  }

  /** A clause as a sentence. */
  static String sentence(String clause) {
    return PlainWords.capital(clause) + ".";
  }
}
