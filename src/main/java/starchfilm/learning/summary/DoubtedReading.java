package starchfilm.learning.summary;

/**
 * A reading so far from all others that it hardly counts.
 *
 * @param file the trial's file, from the folder of the workshop file
 * @param reading which reading, such as {@code weighing at +24h}
 * @param noted what was noted, with its unit
 * @param fitting what would fit the others, with its unit
 * @param countsFor what it counts for, 1 for a sound reading
 */
public record DoubtedReading(
    String file, String reading, String noted, String fitting, double countsFor) {
  private static final String WEIGHING = "weighing at +";

  /**
   * The name of a weighing.
   *
   * @param hours hours since the pour, such as {@code 24h}
   * @return such as {@code weighing at +24h}
   */
  public static String weighing(String hours) {
    return WEIGHING + hours;
  }

  /** Returns whether it is of the strip of this number. */
  public boolean isOfStrip(int number) {
    return reading.endsWith(" of strip " + number);
  }

  /**
   * The doubt in one sentence.
   *
   * @return such as {@code shed/4.json, weighing at +24h: 131 g noted, 117 g would fit the others;
   *     counted at 3 %}
   */
  public String sentence() {
    return sentence(file, reading);
  }

  /**
   * The doubt in one sentence, in the reader's words.
   *
   * @param trial the trial, as the reader calls it
   * @param which the reading, as the reader knows it
   * @return as {@link #sentence()}
   */
  public String sentence(String trial, String which) {
    return "%s, %s: %s noted, %s would fit the others; counted at %s %%"
        .formatted(trial, which, noted, fitting, Math.round(100 * countsFor));
  }
}
