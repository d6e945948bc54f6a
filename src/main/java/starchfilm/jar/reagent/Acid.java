package starchfilm.jar.reagent;

import java.util.List;
import starchfilm.material.ingredient.AceticAcid;
import starchfilm.material.ingredient.MolarMass;

/**
 * The acids people split soap with.
 *
 * <p>Acidity constants at 25 C: CRC Handbook of Chemistry and Physics, dissociation constants
 * (recalled). Protons counted are those given off below pH 7, where the work is done.
 */
public enum Acid implements Reagent {
  /** Hydrochloric acid, HCl. */
  HYDROCHLORIC("hydrochloric acid", "HCl", MolarMass.HYDROGEN_CHLORIDE, List.of(-6.0), 0.0049),
  /** Sulfuric acid, H2SO4. */
  SULFURIC("sulfuric acid", "H2SO4", MolarMass.SULFURIC_ACID, List.of(-3.0, 1.99), 0.0072),
  /** Phosphoric acid, H3PO4; its second proton goes above pH 7 and is not counted. */
  PHOSPHORIC("phosphoric acid", "H3PO4", MolarMass.PHOSPHORIC_ACID, List.of(2.16), 0.0058),
  /** Acetic acid, as in vinegar. */
  ACETIC("acetic acid", "vinegar", MolarMass.ACETIC_ACID, List.of(AceticAcid.PKA), 0.0014),
  /** Citric acid. */
  CITRIC("citric acid", "citric", MolarMass.CITRIC_ACID, List.of(3.13, 4.76, 6.40), 0.0040);

  private final String tradeName;
  private final String formula;
  private final double kgPerMol;
  private final List<Double> pkas;
  private final double riseOfDensityPerPercent;

  Acid(
      String tradeName,
      String formula,
      double kgPerMol,
      List<Double> pkas,
      double riseOfDensityPerPercent) {
    this.tradeName = tradeName;
    this.formula = formula;
    this.kgPerMol = kgPerMol;
    this.pkas = pkas;
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
   * Protons that one mole gives off on the way to neutral.
   *
   * @return mol of charge per mol
   */
  public int protons() {
    return pkas.size();
  }

  /**
   * Charge of the acid's rest at a pH, mean over the molecules.
   *
   * <p>{@code z = sum_i i b_i / sum_i b_i, b_i = product of 10^(pH - pKa_j), j = 1..i}. Source: any
   * text on acid-base equilibria.
   *
   * @param ph pH of the solution
   * @return mol of negative charge per mol, 0 to {@link #protons()}
   */
  public double chargeAt(double ph) {
    double term = 1;
    double sum = 1;
    double weighted = 0;
    for (int i = 0; i < pkas.size(); i++) {
      term *= Math.pow(10, ph - pkas.get(i));
      sum += term;
      weighted += (i + 1) * term;
    }
    return weighted / sum;
  }

  /**
   * What the acid's rest adds to a salt.
   *
   * @return kg per mol of charge
   */
  public double restKgPerMolOfCharge() {
    return kgPerMol / protons() - MolarMass.HYDROGEN;
  }

  /**
   * Density of its solution in water.
   *
   * <p>{@code rho = 998 (1 + k p)}, p in per cent. Valid for: up to 40 %, 20 C, within 2 %. Source:
   * CRC Handbook of Chemistry and Physics, concentrative properties of aqueous solutions (recalled,
   * straightened).
   *
   * @param strength acid (kg per kg solution, 0 to 0.4)
   * @return kg/m3
   */
  @Override
  public double solutionKgPerM3(double strength) {
    return Solutions.kgPerM3(riseOfDensityPerPercent, strength);
  }

  @Override
  public double chargeBroughtAt(double ph) {
    return -chargeAt(ph);
  }

  @Override
  public String toString() {
    return tradeName;
  }
}
