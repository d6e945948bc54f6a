package starchfilm.casting.trial;

/**
 * Something a trial file does not say, what was taken instead, and what that costs.
 *
 * @param field the field's path, such as {@code cook.water_lost_g}
 * @param what the same in words
 * @param assumed what was taken instead, with its unit
 * @param cost what that costs the forecast, in plain words
 */
public record NotRecorded(String field, String what, String assumed, String cost) {
  /** What is assumed, in words, the same at every door. */
  public String words() {
    return what + " as " + assumed;
  }
}
