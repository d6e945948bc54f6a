package starchfilm.advice;

/**
 * A cause and how well it explains a fault.
 *
 * @param rule the row of the table it comes from
 * @param support how well it explains the fault: 0 not at all to 1 fully
 * @param words the figures, a clause
 */
public record Suspicion(Rule rule, double support, String words) {
  /** Below this a cause is not named (judged). */
  static final double NAMED_FROM = 0.15;

  private static final double WELL_FROM = 0.65;
  private static final double PARTLY_FROM = 0.35;

  /**
   * The cause.
   *
   * @return the cause the row names
   */
  public Cause cause() {
    return rule.cause();
  }

  /**
   * Says how well it explains the fault.
   *
   * @return such as "explains it well"
   */
  public String degree() {
    if (support >= WELL_FROM) {
      return "explains it well";
    }
    return support >= PARTLY_FROM ? "explains part of it" : "may add to it";
  }
}
