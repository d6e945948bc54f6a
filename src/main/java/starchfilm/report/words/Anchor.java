package starchfilm.report.words;

/** Anchors of things on a page, for links to them. */
public final class Anchor {
  private Anchor() {}

  /**
   * The place of a trial on the page; never made from what the user wrote.
   *
   * @param number its number
   * @return such as {@code trial-3}
   */
  public static String ofTrial(int number) {
    return "trial-" + number;
  }
}
