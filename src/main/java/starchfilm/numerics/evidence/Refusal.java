package starchfilm.numerics.evidence;

/** Refuses a figure in one sentence: what it is, what was given, what is allowed, what to do. */
public final class Refusal {
  private Refusal() {}

  /**
   * Refuses what does not hold.
   *
   * @param quantity what it is, in the trade's words
   * @param given what was given, with its unit
   * @param allowed what is allowed, with its unit; behind a semicolon what to do
   * @throws IllegalArgumentException unless it holds
   */
  public static void unless(boolean holds, String quantity, String given, String allowed) {
    if (!holds) {
      throw new IllegalArgumentException(quantity + ": " + given + " given, allowed " + allowed);
    }
  }

  /** Refuses a figure; its sentence is made only where it is refused. */
  public static void unless(boolean holds, String quantity, double given, String allowed) {
    unless(holds, quantity, given, "", allowed);
  }

  /** Refuses a figure with its unit, such as {@code " %"}. */
  public static void unless(
      boolean holds, String quantity, double given, String unit, String allowed) {
    if (!holds) {
      unless(false, quantity, given + unit, allowed);
    }
  }
}
