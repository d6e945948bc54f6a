package starchfilm.jar.reagent;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import java.util.Arrays;
import java.util.List;
import starchfilm.material.ingredient.AceticAcid;
import starchfilm.material.ingredient.MolarMass;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.units.Named;

/**
 * The acids, the mild base and the lyes that people bring a pH down or up with; what a home has
 * stands first.
 *
 * <p>Each is a base's metal, if any, with the rest of an acid: its charge at a pH is that of the
 * metal less what the acid's protons have left behind. Acidity constants at 25 C: CRC Handbook of
 * Chemistry and Physics, dissociation constants (recalled); of an acid, those below pH 7, where the
 * work is done. Usual purity of lye pellets, which hold water and carbonate: common practice, no
 * source.
 */
public enum Reagent implements Named {
  /** Acetic acid, as in vinegar. */
  ACETIC_ACID("vinegar", MolarMass.ACETIC_ACID, 0, List.of(AceticAcid.PKA), 0.0014),
  /** Citric acid. */
  CITRIC_ACID("citric", MolarMass.CITRIC_ACID, 0, List.of(3.13, 4.76, 6.40), 0.0040),
  /** Phosphoric acid, H3PO4; its second proton goes above pH 7 and is not counted. */
  PHOSPHORIC_ACID("H3PO4", MolarMass.PHOSPHORIC_ACID, 0, List.of(2.16), 0.0058),
  /** Hydrochloric acid, HCl. */
  HYDROCHLORIC_ACID("HCl", MolarMass.HYDROGEN_CHLORIDE, 0, List.of(-6.0), 0.0049),
  /** Sulfuric acid, H2SO4. */
  SULFURIC_ACID("H2SO4", MolarMass.SULFURIC_ACID, 0, List.of(-3.0, 1.99), 0.0072),
  /** Baking soda, NaHCO3; counted as if its carbon dioxide stayed dissolved. */
  BAKING_SODA(
      "NaHCO3", MolarMass.SODIUM_BICARBONATE, MolarMass.SODIUM, List.of(6.35, 10.33), 0.0071),
  /** Sodium hydroxide, NaOH. */
  SODIUM_HYDROXIDE("NaOH", MolarMass.SODIUM_HYDROXIDE, MolarMass.SODIUM, List.of(), 0.011),
  /** Potassium hydroxide, KOH. */
  POTASSIUM_HYDROXIDE("KOH", MolarMass.POTASSIUM_HYDROXIDE, MolarMass.POTASSIUM, List.of(), 0.0092);

  private final String formula;
  private final double kgPerMol;
  private final double metalKgPerMol;
  private final List<Double> pkas;
  private final double riseOfDensityPerPercent;

  Reagent(
      String formula,
      double kgPerMol,
      double metalKgPerMol,
      List<Double> pkas,
      double riseOfDensityPerPercent) {
    this.formula = formula;
    this.kgPerMol = kgPerMol;
    this.metalKgPerMol = metalKgPerMol;
    this.pkas = pkas;
    this.riseOfDensityPerPercent = riseOfDensityPerPercent;
  }

  /** All acids. */
  public static List<Reagent> acids() {
    return Arrays.stream(values()).filter(Reagent::isAcid).toList();
  }

  /** All strong bases, which serve as catalyst too. */
  public static List<Reagent> lyes() {
    return Arrays.stream(values()).filter(Reagent::isLye).toList();
  }

  /** Its short name, such as "HCl", "vinegar" or "NaOH". */
  public String formula() {
    return formula;
  }

  /** Molar mass (kg/mol). */
  public double kgPerMol() {
    return kgPerMol;
  }

  /** Tells whether it brings a pH down. */
  public boolean isAcid() {
    return metalKgPerMol == 0;
  }

  /** Tells whether it is a strong base. */
  public boolean isLye() {
    return pkas.isEmpty();
  }

  /** Charge that one mole takes up or gives off on the way to neutral (mol). */
  public int chargesPerMol() {
    return isAcid() ? pkas.size() : 1;
  }

  /**
   * Returns the mass that a lye's metal or an acid's rest adds to a salt or soap (kg per mol of
   * charge).
   */
  public double ionKgPerMolOfCharge() {
    return isAcid() ? kgPerMol / chargesPerMol() - MolarMass.HYDROGEN : metalKgPerMol;
  }

  /** Purity of a lye's pellets out of the bag (kg per kg). */
  public Estimate solidPurity() {
    return this == POTASSIUM_HYDROXIDE
        ? Estimate.between(0.85, 0.92)
        : Estimate.between(0.95, 0.99);
  }

  /**
   * Density of its solution in water.
   *
   * <p>{@code rho = 998 (1 + k p)}, p in per cent. Valid for: up to 40 % of an acid, 30 % of a lye,
   * 8 % of baking soda, 20 C, within 2 %. Source: CRC Handbook of Chemistry and Physics,
   * concentrative properties of aqueous solutions (recalled, straightened).
   *
   * @param strength share in the solution (kg per kg)
   * @return kg/m3
   */
  public double solutionKgPerM3(double strength) {
    return Composition.WATER_AT_20C_KG_PER_M3
        * (1 + riseOfDensityPerPercent * PERCENT_PER_UNIT * strength);
  }

  /**
   * Share in a solution of a concentration.
   *
   * @param molPerM3 concentration (mol/m3)
   * @return kg per kg solution
   */
  public double massShare(double molPerM3) {
    double kgPerM3 = molPerM3 * kgPerMol;
    // c M = s rho(s), and rho is straight in s, so this is a quadratic in s.
    double slope = riseOfDensityPerPercent * PERCENT_PER_UNIT;
    double x = kgPerM3 / Composition.WATER_AT_20C_KG_PER_M3;
    return (Math.sqrt(1 + 4 * slope * x) - 1) / (2 * slope);
  }

  /**
   * Charge that a mole of it brings into a solution of a pH.
   *
   * <p>{@code q = m - sum_i i b_i / sum_i b_i, b_i = product of 10^(pH - pKa_j), j = 1..i}; m: 1
   * with a metal, else 0. Source: any text on acid-base equilibria.
   *
   * @param ph pH of the solution
   * @return mol of charge per mol: 1 for lye, -1 for hydrochloric acid
   */
  public double chargeBroughtAt(double ph) {
    double term = 1;
    double sum = 1;
    double weighted = 0;
    for (int i = 0; i < pkas.size(); i++) {
      term *= Math.pow(10, ph - pkas.get(i));
      sum += term;
      weighted += (i + 1) * term;
    }
    return (isAcid() ? 0 : 1) - weighted / sum;
  }
}
