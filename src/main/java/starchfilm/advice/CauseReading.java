package starchfilm.advice;

/**
 * A cause's own figure in one trial, held against what is harmless.
 *
 * @param excess 0 or less where the figure is harmless, 1 where the trade calls it a clear cause,
 *     linear between and beyond
 * @param words the figure and its limit, a clause
 * @param told false where the notebook does not hold the figure; then the words say what to note
 */
record CauseReading(double excess, String words, boolean told) {
  /** The worse of two figures; one that is missing, where the other does no harm. */
  CauseReading orWorse(CauseReading other) {
    if (told && other.told) {
      return other.excess > excess ? other : this;
    }
    CauseReading known = told ? this : other;
    CauseReading missing = told ? other : this;
    return known.told && known.excess > 0 ? known : missing;
  }
}
