package starchfilm.material.recipe;

import starchfilm.material.ingredient.VolkKaehler2018;
import starchfilm.numerics.evidence.Estimate;

/**
 * The content of a jar of glycerol: glycerol, salt, and water for the rest.
 *
 * @param glycerolFraction glycerol (kg per kg of the jar's content, 0 to 1)
 * @param saltFraction salt and soap that stay in the film (kg per kg of the jar's content, 0 to 1);
 *     the two fractions add up to at most 1
 * @param origin where it comes from
 * @param jar the name it is kept under; empty for a jar that nobody keeps count of
 */
public record GlycerolStock(
    Estimate glycerolFraction, Estimate saltFraction, GlycerolOrigin origin, String jar) {
  /** Glycerol in a jar that nobody assayed (kg per kg); judged, no source. */
  public static final Estimate UNKNOWN_PURITY = Estimate.between(0.8, 1);

  private static final double ROOM_K = 293.15;

  /** Checks that the parts do not exceed the whole. */
  public GlycerolStock {
    if (glycerolFraction.value() < 0
        || saltFraction.value() < 0
        || glycerolFraction.value() + saltFraction.value() > 1 + 1e-12) {
      throw new IllegalArgumentException(
          "glycerol and salt in a jar must each be 0 or more and at most 1 together");
    }
  }

  /**
   * A jar that nobody keeps count of.
   *
   * @param glycerolFraction glycerol (kg per kg)
   * @param saltFraction salt and soap (kg per kg)
   * @param origin where it comes from
   */
  public GlycerolStock(Estimate glycerolFraction, Estimate saltFraction, GlycerolOrigin origin) {
    this(glycerolFraction, saltFraction, origin, "");
  }

  /**
   * A jar of unknown origin.
   *
   * @param glycerolFraction glycerol (kg per kg)
   * @param saltFraction salt and soap (kg per kg)
   */
  public GlycerolStock(Estimate glycerolFraction, Estimate saltFraction) {
    this(glycerolFraction, saltFraction, GlycerolOrigin.UNKNOWN);
  }

  /**
   * The same out of a jar that is kept.
   *
   * @param name the name it is kept under
   * @return glycerol, salt and origin as they are
   */
  public GlycerolStock keptAs(String name) {
    return new GlycerolStock(glycerolFraction, saltFraction, origin, name);
  }

  /**
   * Density of the liquid in the jar, at room temperature.
   *
   * @return kg/m3
   */
  public double kgPerM3() {
    double liquid = 1 - saltFraction.value();
    return kgPerM3(liquid > 0 ? glycerolFraction.value() / liquid : 1);
  }

  /**
   * Density of glycerol with water, at room temperature.
   *
   * @param glycerol glycerol (kg per kg); what is outside 0 to 1 counts as the nearer end
   * @return kg/m3
   */
  public static double kgPerM3(double glycerol) {
    return new VolkKaehler2018().kgPerM3(Math.max(0, Math.min(1, glycerol)), ROOM_K);
  }
}
