package starchfilm.film;

/**
 * The plasticiser levels between which a film is pleasant in the hand, by the air it is used in.
 *
 * <p>Source: recalled and judged limits, see {@link FilmCaution#TACKY} and {@link
 * FilmCaution#MAY_CRACK_OFF}; straight lines between them.
 */
public final class PlasticiserWindow {
  private static final double TACKY_AT_50_PERCENT = 0.425;
  private static final double TACKY_AT_75_PERCENT = 0.35;
  private static final double CRACKS_AT_50_PERCENT = 0.20;
  private static final double CRACKS_AT_35_PERCENT = 0.25;

  private PlasticiserWindow() {}

  /**
   * Above which a film is tacky, on the line through both printed limits; drier than 50 % the limit
   * of 50 %.
   *
   * @param relativeHumidity of the air (ratio)
   * @return kg glycerol per kg dry starch, 0 or more
   */
  public static double tackyAbove(double relativeHumidity) {
    double slope = (TACKY_AT_75_PERCENT - TACKY_AT_50_PERCENT) / (0.75 - 0.50);
    return TACKY_AT_50_PERCENT + slope * Math.max(relativeHumidity - 0.50, 0);
  }

  /**
   * Below which a film may crack off the plate; level outside 35 to 50 % relative humidity.
   *
   * @param relativeHumidity of the air (ratio)
   * @return kg glycerol per kg dry starch
   */
  public static double cracksBelow(double relativeHumidity) {
    double dry = Math.min(Math.max((0.50 - relativeHumidity) / (0.50 - 0.35), 0), 1);
    return CRACKS_AT_50_PERCENT + dry * (CRACKS_AT_35_PERCENT - CRACKS_AT_50_PERCENT);
  }
}
