package starchfilm.advice;

import java.util.List;

/**
 * A cause's own figure and what is harmless of it: one row of the table of causes.
 *
 * @param needs what must have been noted of the trial, by field
 * @param toNote the same as a noun phrase
 * @param harmless where the figure does no harm, in its SI unit
 * @param clear where it is a clear cause; may lie on either side of {@code harmless}
 * @param words the figure and its limit, a clause with the names of figures in braces
 * @param harmlessWords the clause where it does no harm
 */
record CauseLimit(
    List<String> needs,
    String toNote,
    Figure figure,
    double harmless,
    double clear,
    String words,
    String harmlessWords) {
  Reading read(FaultContext scene) {
    if (!needs.stream().allMatch(scene::notes)) {
      return new Reading(0, toNote, false);
    }
    double excess = (figure.of(scene) - harmless) / (clear - harmless);
    return new Reading(excess, Sentence.in(excess > 0 ? words : harmlessWords, scene), true);
  }
}
