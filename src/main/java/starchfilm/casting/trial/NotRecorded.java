package starchfilm.casting.trial;

/**
 * Something a trial file does not say, what was taken instead, and what that costs.
 *
 * @param field the field's path, such as {@code cook.water_lost_g}
 * @param assumed what was taken instead, with its unit
 * @param cost what that costs the forecast, in plain words
 */
public record NotRecorded(String field, String assumed, String cost) {}
