package starchfilm.jar.recovery;

import starchfilm.material.ingredient.MolarMass;
import starchfilm.numerics.units.Named;

/**
 * The alcohol that takes the fatty acids over.
 *
 * <p>Densities at 20 C: CRC Handbook of Chemistry and Physics (recalled).
 */
public enum Alcohol implements Named {
  /** Methanol: poisonous, flammable. */
  METHANOL(MolarMass.METHANOL, 791),
  /** Ethanol: flammable. */
  ETHANOL(MolarMass.ETHANOL, 789);

  private final double kgPerMol;
  private final double kgPerM3;

  Alcohol(double kgPerMol, double kgPerM3) {
    this.kgPerMol = kgPerMol;
    this.kgPerM3 = kgPerM3;
  }

  /**
   * Molar mass.
   *
   * @return kg/mol
   */
  public double kgPerMol() {
    return kgPerMol;
  }

  /**
   * Density at 20 C.
   *
   * @return kg/m3
   */
  public double kgPerM3() {
    return kgPerM3;
  }
}
