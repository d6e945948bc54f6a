package starchfilm.numerics.units;

/** Counts in a sentence. */
public final class Plural {
  private Plural() {}

  /**
   * So many of something.
   *
   * @param count how many
   * @param one the word for one
   * @return such as {@code 1 trial} or {@code 3 trials}
   */
  public static String of(long count, String one) {
    return count + " " + one + (count == 1 ? "" : "s");
  }
}
