package starchfilm.advice;

import java.util.List;

/**
 * A cause's own figure and what is harmless of it: one row of the table of causes.
 *
 * @param cause whose figure it is
 * @param needs what must have been noted of the trial, by field
 * @param toNote the same as a noun phrase
 * @param harmless where the figure does no harm, in its SI unit
 * @param clear where it is a clear cause; may lie on either side of {@code harmless}
 * @param words the figure and its limit, a clause with the names of figures in braces; a second one
 *     for where it does no harm, if that reads otherwise
 */
record CauseLimit(
    Cause cause,
    List<String> needs,
    String toNote,
    AdviceFigure figure,
    double harmless,
    double clear,
    List<String> words) {
  CauseReading read(FaultContext scene) {
    if (!needs.stream().allMatch(scene::notes)) {
      return new CauseReading(0, toNote, false);
    }
    double excess = (figure.of(scene) - harmless) / (clear - harmless);
    return new CauseReading(
        excess, Sentence.in(words.get(excess > 0 ? 0 : words.size() - 1), scene), true);
  }
}
