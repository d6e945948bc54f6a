package starchfilm.advice;

/**
 * The expected effect of a change on one figure.
 *
 * @param what the figure, such as "dry through"
 * @param before as it is, with unit and range
 * @param after as it would be
 */
public record ExpectedEffect(String what, String before, String after) {
  /**
   * The effect as a clause.
   *
   * @return such as {@code dry through 9 days (7–12) → 5.5 days (4.1–7.6)}
   */
  public String clause() {
    return what + " " + before + " → " + after;
  }
}
