package starchfilm.jar.reagent;

import starchfilm.numerics.evidence.Estimate;

/**
 * Lye that was added, as catalyst or to bring the pH back.
 *
 * @param lye which
 * @param mol hydroxide (mol)
 */
public record LyeDose(Lye lye, Estimate mol) {
  /** Checks the amount. */
  public LyeDose {
    Doses.requireNotNegative(lye.tradeName(), mol);
  }

  /**
   * Weighed solid, or a weighed solution of known strength.
   *
   * @param lye which
   * @param massKg what was weighed (kg)
   * @param strength lye (kg per kg weighed, 0 to 1); of the solid, its purity
   * @return the dose
   */
  public static LyeDose weighed(Lye lye, Estimate massKg, Estimate strength) {
    Doses.requireStrength(lye.tradeName(), strength);
    return new LyeDose(lye, massKg.times(strength).times(1 / lye.kgPerMol()));
  }

  /**
   * A measured volume of known concentration.
   *
   * @param lye which
   * @param solutionM3 the solution (m3)
   * @param molPerM3 lye (mol/m3)
   * @return the dose
   */
  public static LyeDose measured(Lye lye, Estimate solutionM3, Estimate molPerM3) {
    return new LyeDose(lye, solutionM3.times(molPerM3));
  }
}
