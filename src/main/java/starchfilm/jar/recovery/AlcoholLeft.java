package starchfilm.jar.recovery;

/**
 * Alcohol that may still be in the jar: somewhere between none and a most that the amounts allow.
 *
 * <p>Nothing narrower is claimed. How long a jar was boiled does not tell: glycerol holds alcohol
 * back, and what is left can only be measured.
 *
 * @param alcohol which
 * @param mostKg the most there can be (kg)
 */
public record AlcoholLeft(Alcohol alcohol, double mostKg) {
  /**
   * The same with another bound.
   *
   * @param kg there cannot be more than this either (kg)
   * @return the lower of both
   */
  public AlcoholLeft atMost(double kg) {
    return new AlcoholLeft(alcohol, Math.min(mostKg, kg));
  }
}
