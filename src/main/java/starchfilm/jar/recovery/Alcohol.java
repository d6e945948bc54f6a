package starchfilm.jar.recovery;

import starchfilm.material.ingredient.MolarMass;

/**
 * The alcohol that takes the fatty acids over.
 *
 * <p>Densities at 20 C: CRC Handbook of Chemistry and Physics (recalled).
 */
public enum Alcohol {
  /** Methanol: poisonous, flammable. */
  METHANOL("methanol", MolarMass.METHANOL, 791),
  /** Ethanol: flammable. */
  ETHANOL("ethanol", MolarMass.ETHANOL, 789);

  private final String tradeName;
  private final double kgPerMol;
  private final double kgPerM3;

  Alcohol(String tradeName, double kgPerMol, double kgPerM3) {
    this.tradeName = tradeName;
    this.kgPerMol = kgPerMol;
    this.kgPerM3 = kgPerM3;
  }

  /**
   * Returns its trade name.
   *
   * @return lower case
   */
  public String tradeName() {
    return tradeName;
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

  @Override
  public String toString() {
    return tradeName;
  }
}
