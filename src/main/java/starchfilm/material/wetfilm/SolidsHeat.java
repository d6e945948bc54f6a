package starchfilm.material.wetfilm;

import starchfilm.material.recipe.Composition;

/**
 * Specific heat of the dry solids, by mass.
 *
 * <p>Starch 1550 J/(kg K): carbohydrate near 0 C, Choi and Okos 1986, Food Engineering and Process
 * Applications vol. 1 (recalled); glycerol 2430 J/(kg K) at 25 C, CRC Handbook of Chemistry and
 * Physics (recalled); what {@link Composition#starchLike()} counts as starch has starch's
 * (assumed).
 */
public final class SolidsHeat {
  private static final double STARCH_J_PER_KG_K = 1550;
  private static final double GLYCEROL_J_PER_KG_K = 2430;

  private SolidsHeat() {}

  /**
   * The specific heat of a paste's dry solids.
   *
   * @param composition the paste
   * @return J/(kg K)
   */
  public static double jPerKgK(Composition composition) {
    return (composition.starchLike() * STARCH_J_PER_KG_K
            + composition.glycerol() * GLYCEROL_J_PER_KG_K)
        / composition.drySolids();
  }
}
