package starchfilm.jar.reagent;

import starchfilm.numerics.evidence.Refusal;

/**
 * From one pH to another with a dilute acid or lye.
 *
 * <p>Charges balance before and after: {@code v = [V (D_1 - D_2) + B (a_2 - a_1)]/(D_2 + c q_2)},
 * {@code D = [H] - [OH]}.
 *
 * <p>V: volume to adjust; v: volume added; c: concentration of what is added (mol/m3); q_2: charge
 * that a mole of it brings at the new pH, -1 for hydrochloric acid, +1 for lye; B: weak acid or
 * soap in the volume (mol); a: share of it that stands as soap, {@code 1/(1 + 10^(pKa - pH))}.
 *
 * <p>Valid for: dilute solutions in water at 25 C. Outside: in syrupy glycerol a pH strip or meter
 * shows no true pH; dilute a sample with the same volume of water or more and read that. Without a
 * buffer stated, none is assumed, and then the figure is a lower bound: soap, fatty acid, carbonate
 * and phosphate all take up some of what is added.
 *
 * <p>Source: any text on acid-base equilibria; ion product of water 1.0e-14 (mol/L)^2 at 25 C.
 *
 * @param millilitres what to add (mL)
 * @param phOneDropOver the pH after one drop of 0.05 mL too many
 * @param phOneDropOverTenthStrength the same with what is added ten times weaker: the drop carries
 *     a tenth of the charge, which is why a weaker solution does not overshoot
 */
public record PhAdjustment(
    double millilitres, double phOneDropOver, double phOneDropOverTenthStrength) {
  /** pKa taken for the fatty acid of soap; recalled, measured values in water run from 4.8 to 9. */
  public static final double SOAP_PKA = 4.9;

  static final double MOL_PER_M3_PER_MOL_PER_L = 1000;
  private static final double ML_PER_M3 = 1e6;
  private static final double DROP_M3 = 0.05e-6;

  /**
   * A volume to adjust.
   *
   * @param volumeM3 its volume (m3)
   * @param ph its pH, 0 to 14
   * @param soapMol soap and fatty acid in it (mol); 0 for no buffer
   */
  public record Bath(double volumeM3, double ph, double soapMol) {
    /** Checks the figures. */
    public Bath {
      Refusal.unless(
          volumeM3 > 0 && soapMol >= 0,
          "volume to adjust",
          volumeM3 * ML_PER_M3,
          " ml",
          "more than 0 ml, with 0 mol soap or more");
      requirePh("pH now", ph);
    }
  }

  /**
   * To a pH with a solution.
   *
   * @param bath what to adjust
   * @param targetPh the pH to reach: below the bath's with an acid, above it with lye
   * @param reagent what is added
   * @param molPerM3 its concentration (mol/m3)
   * @return how much, and what one drop more does
   * @throws IllegalArgumentException for the wrong direction, or a pH that this solution does not
   *     reach
   */
  public static PhAdjustment to(Bath bath, double targetPh, Reagent reagent, double molPerM3) {
    requirePh("pH wanted", targetPh);
    Refusal.unless(
        molPerM3 > 0,
        "strength of the " + reagent.tradeName(),
        molPerM3 / MOL_PER_M3_PER_MOL_PER_L,
        " mol/L",
        "more than 0 mol/L");
    boolean down = reagent.isAcid();
    Refusal.unless(
        down ? targetPh < bath.ph() : targetPh > bath.ph(),
        "pH wanted",
        targetPh,
        (down
                ? "below %s, the pH now, with %s; to raise it use lye"
                : "above %s, the pH now, with %s; to lower it use an acid")
            .formatted(bath.ph(), reagent.tradeName()));
    Titration titration = new Titration(bath, reagent);
    double needed = titration.volumeM3To(targetPh, molPerM3);
    double neededTenth = titration.volumeM3To(targetPh, molPerM3 / 10);
    return new PhAdjustment(
        needed * ML_PER_M3,
        titration.phAfter(needed + DROP_M3, molPerM3),
        titration.phAfter(neededTenth + DROP_M3, molPerM3 / 10));
  }

  private static void requirePh(String what, double ph) {
    Refusal.unless(ph >= 0 && ph <= 14, what, ph, "0 to 14");
  }
}
