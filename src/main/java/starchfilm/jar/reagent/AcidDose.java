package starchfilm.jar.reagent;

import starchfilm.numerics.evidence.Estimate;

/**
 * Acid that was added.
 *
 * @param acid which
 * @param chargeMol protons it can give off (mol)
 */
public record AcidDose(Acid acid, Estimate chargeMol) {
  /** Checks the amount. */
  public AcidDose {
    Doses.requireNotNegative(acid.tradeName(), chargeMol);
  }

  /**
   * A weighed solution of known strength.
   *
   * @param acid which
   * @param solutionKg the solution (kg)
   * @param strength acid (kg per kg solution, 0 to 1)
   * @return the dose
   */
  public static AcidDose weighed(Acid acid, Estimate solutionKg, Estimate strength) {
    Doses.requireStrength(acid.tradeName(), strength);
    return new AcidDose(acid, solutionKg.times(strength).times(acid.protons() / acid.kgPerMol()));
  }

  /**
   * A measured volume of known concentration.
   *
   * @param acid which
   * @param solutionM3 the solution (m3)
   * @param molPerM3 acid (mol/m3)
   * @return the dose
   */
  public static AcidDose measured(Acid acid, Estimate solutionM3, Estimate molPerM3) {
    return new AcidDose(acid, solutionM3.times(molPerM3).times(acid.protons()));
  }
}
