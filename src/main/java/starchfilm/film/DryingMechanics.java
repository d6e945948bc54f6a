package starchfilm.film;

import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Stiffness and toughness of a paste on its way from gel to glass, at the moisture and temperature
 * it has at a moment: the rules of the dry film, diluted by the water.
 *
 * <p>{@code E = k E_film(x), Gamma = k [200 + 800/(1 + exp(-(x + 20 K)/15 K))] J/m2, k = min(1,
 * phi/0.55)^3}
 *
 * <p>x = T - Tg (K) by {@link CouchmanKaraszTransition}, E_film by {@link StiffnessRule}; phi: the
 * starch's share of the volume. Both run from gel to glass without a step.
 *
 * <p>Limits: the toughness is judged, times or divided by 3; the power of the dilution is judged
 * after gels. Cheap to evaluate and safe to share between threads.
 */
public final class DryingMechanics {
  /** The source of stiffness and toughness. */
  public static final Source SOURCE =
      new Source(
          "stiffness of a drying film by the rule of the dry film, times the cube of its starch's"
              + " share of the volume over 0.55; toughness 200 J/m2 of glass to 1000 J/m2 of"
              + " rubber, times or divided by 3: judged",
          Check.JUDGED);

  private static final double UNDILUTED = 0.55;
  private static final double GLASS_J_PER_M2 = 200;
  private static final double RUBBER_GAIN_J_PER_M2 = 800;
  private static final double MIDDLE_K = -20;
  private static final double WIDTH_K = 15;
  private static final StiffnessRule STIFFNESS = new StiffnessRule();

  private final Composition composition;
  private final FilmState dry;
  private final double starchM3PerKgDry;

  private DryingMechanics(Composition composition) {
    this.composition = composition;
    // Air and temperature of this film are not looked at: the skin has its own.
    this.dry = FilmState.of(composition, 0, 0, 0);
    this.starchM3PerKgDry =
        composition.dryStarch() / composition.drySolids() / Composition.DRY_STARCH_KG_PER_M3;
  }

  /**
   * The mechanics of a paste.
   *
   * @param composition the paste
   * @return its rules
   */
  public static DryingMechanics of(Composition composition) {
    return new DryingMechanics(composition);
  }

  /**
   * The state.
   *
   * @param waterKgPerKgDry moisture (kg per kg dry solids, 0 or more)
   * @param temperatureK temperature (K)
   * @return x = T - Tg (K)
   */
  public double aboveGlassK(double waterKgPerKgDry, double temperatureK) {
    return temperatureK
        - CouchmanKaraszTransition.kelvin(
            dry.glycerolFraction(), dry.saltFractionOfDry(), waterKgPerKgDry);
  }

  /**
   * Young's modulus.
   *
   * @param waterKgPerKgDry moisture (kg per kg dry solids, 0 or more)
   * @param temperatureK temperature (K)
   * @return Pa
   */
  public double modulusPa(double waterKgPerKgDry, double temperatureK) {
    return dilution(waterKgPerKgDry)
        * STIFFNESS.at(aboveGlassK(waterKgPerKgDry, temperatureK), dry.amyloseFraction());
  }

  /**
   * Energy that a crack takes up.
   *
   * @param waterKgPerKgDry moisture (kg per kg dry solids, 0 or more)
   * @param temperatureK temperature (K)
   * @return J per m2 of crack
   */
  public double toughnessJPerM2(double waterKgPerKgDry, double temperatureK) {
    double glassy =
        GlassDistanceRule.glassy(aboveGlassK(waterKgPerKgDry, temperatureK), MIDDLE_K, WIDTH_K);
    return dilution(waterKgPerKgDry) * (GLASS_J_PER_M2 + RUBBER_GAIN_J_PER_M2 * (1 - glassy));
  }

  private double dilution(double waterKgPerKgDry) {
    double share =
        Math.min(1, starchM3PerKgDry / composition.volumeM3PerKgDry(waterKgPerKgDry) / UNDILUTED);
    return share * share * share;
  }
}
