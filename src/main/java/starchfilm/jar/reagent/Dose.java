package starchfilm.jar.reagent;

import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;

/**
 * Acid or lye that was added.
 *
 * @param reagent which
 * @param chargeMol protons it can give off or take up (mol)
 */
public record Dose(Reagent reagent, Estimate chargeMol) {
  /** Checks the amount. */
  public Dose {
    Refusal.unless(
        chargeMol.value() >= 0,
        reagent.tradeName(),
        chargeMol.value(),
        " mol",
        "0 mol or more; write what was added");
  }

  /**
   * A weighed solid, or a weighed solution of known strength.
   *
   * @param reagent which
   * @param massKg what was weighed (kg)
   * @param strength its share of that (kg per kg, 0 to 1); of a solid, its purity
   * @return the dose
   */
  public static Dose weighed(Reagent reagent, Estimate massKg, Estimate strength) {
    PERCENT.requireSome(
        "strength of the " + reagent.tradeName(),
        strength.value(),
        100,
        "write the per cent of its mass");
    return new Dose(
        reagent, massKg.times(strength).times(reagent.chargesPerMol() / reagent.kgPerMol()));
  }

  /**
   * A measured volume of known concentration.
   *
   * @param reagent which
   * @param solutionM3 the solution (m3)
   * @param molPerM3 its concentration (mol/m3)
   * @return the dose
   */
  public static Dose measured(Reagent reagent, Estimate solutionM3, Estimate molPerM3) {
    return new Dose(reagent, solutionM3.times(molPerM3).times(reagent.chargesPerMol()));
  }
}
