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
  /**
   * The doubt in one sentence.
   *
   * @return such as {@code shed/4.json, weighing at +24h: 131 g noted, 117 g would fit the others;
   *     counted at 3 %}
   */
  public String sentence() {
    return "%s, %s: %s noted, %s would fit the others; counted at %s %%"
        .formatted(file, reading, noted, fitting, Math.round(100 * countsFor));
  }
}
