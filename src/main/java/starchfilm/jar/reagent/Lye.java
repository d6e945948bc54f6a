package starchfilm.jar.reagent;

import starchfilm.material.ingredient.MolarMass;
import starchfilm.numerics.evidence.Estimate;

/**
 * The strong bases of the trade.
 *
 * <p>Usual purity of the solid: pellets hold water and carbonate (common practice, no source).
 */
public enum Lye implements Reagent {
  /** Sodium hydroxide, NaOH. */
  SODIUM_HYDROXIDE(
      "sodium hydroxide",
      "NaOH",
      MolarMass.SODIUM_HYDROXIDE,
      MolarMass.SODIUM,
      Estimate.between(0.95, 0.99),
      0.011),
  /** Potassium hydroxide, KOH. */
  POTASSIUM_HYDROXIDE(
      "potassium hydroxide",
      "KOH",
      MolarMass.POTASSIUM_HYDROXIDE,
      MolarMass.POTASSIUM,
      Estimate.between(0.85, 0.92),
      0.0092);

  private final String tradeName;
  private final String formula;
  private final double kgPerMol;
  private final double metalKgPerMol;
  private final Estimate solidPurity;
  private final double riseOfDensityPerPercent;

  Lye(
      String tradeName,
      String formula,
      double kgPerMol,
      double metalKgPerMol,
      Estimate solidPurity,
      double riseOfDensityPerPercent) {
    this.tradeName = tradeName;
    this.formula = formula;
    this.kgPerMol = kgPerMol;
    this.metalKgPerMol = metalKgPerMol;
    this.solidPurity = solidPurity;
    this.riseOfDensityPerPercent = riseOfDensityPerPercent;
  }

  @Override
  public String tradeName() {
    return tradeName;
  }

  @Override
  public String formula() {
    return formula;
  }

  @Override
  public double kgPerMol() {
    return kgPerMol;
  }

  /**
   * What the metal adds to a salt or soap.
   *
   * @return kg/mol
   */
  public double metalKgPerMol() {
    return metalKgPerMol;
  }

  /**
   * Purity of the solid out of the bag.
   *
   * @return kg per kg
   */
  public Estimate solidPurity() {
    return solidPurity;
  }

  /**
   * Density of its solution in water.
   *
   * <p>{@code rho = 998 (1 + k p)}, p in per cent. Valid for: up to 30 %, 20 C, within 2 %. Source:
   * CRC Handbook of Chemistry and Physics, concentrative properties of aqueous solutions (recalled,
   * straightened).
   *
   * @param strength lye (kg per kg solution, 0 to 0.3)
   * @return kg/m3
   */
  @Override
  public double solutionKgPerM3(double strength) {
    return Solutions.kgPerM3(riseOfDensityPerPercent, strength);
  }

  @Override
  public double chargeBroughtAt(double ph) {
    return 1;
  }

  @Override
  public String toString() {
    return tradeName;
  }
}
