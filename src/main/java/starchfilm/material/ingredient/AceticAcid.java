package starchfilm.material.ingredient;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.evidence.Source;

/**
 * The acid of vinegar in water: how much of it there is in a litre, and the pH it gives.
 *
 * <p>{@code [H+] = (-Ka + sqrt(Ka^2 + 4 Ka c))/2, pH = -log10 [H+]}
 *
 * <p>c: acetic acid brought in (mol/L); Ka: acidity constant, {@code 10^-4.756} mol/L.
 *
 * <p>Valid for: dilute acetic acid at 25 C, up to 1 mol/L, without other acid, base or salt.
 * Outside: activity coefficients and buffers (starch's own phosphate, tap water's lime) matter; the
 * figure is then a lower bound of the pH in tap water. Below about 1e-6 mol/L the water's own ions
 * are taken into account, so that the pH ends at 7.
 *
 * <p>Source: pKa 4.756 at 25 C, Harned and Ehlers 1933, J. Am. Chem. Soc. 55:652; CRC Handbook of
 * Chemistry and Physics (recalled).
 */
public final class AceticAcid {
  /** pKa at 25 C. */
  public static final double PKA = 4.756;

  /** Where {@link #PKA} comes from. */
  public static final Source SOURCE =
      new Source(
          "Harned and Ehlers 1933, J. Am. Chem. Soc. 55:652; CRC Handbook of Chemistry and Physics,"
              + " acetic acid",
          Check.RECALLED);

  private static final double KA = Math.pow(10, -PKA);
  private static final double ION_PRODUCT_OF_WATER = 1e-14;
  private static final double LITRES_PER_M3 = 1000;

  private AceticAcid() {}

  /**
   * Concentration from what was mixed.
   *
   * @param acidKg acetic acid (kg, 0 or more)
   * @param mixtureM3 volume of the whole mixture (m3, above 0)
   * @return acetic acid (mol/m3)
   */
  public static double molPerM3(double acidKg, double mixtureM3) {
    if (!(acidKg >= 0) || !(mixtureM3 > 0)) {
      throw new IllegalArgumentException(
          "acetic acid: " + acidKg + " kg in " + mixtureM3 + " m3 given, allowed 0 kg or more");
    }
    return acidKg / MolarMass.ACETIC_ACID / mixtureM3;
  }

  /**
   * pH of acetic acid in water.
   *
   * @param molPerM3 acetic acid brought in (mol/m3, 0 or more; 1 mol/L is 1000 mol/m3)
   * @return pH at 25 C; 7 without acid
   */
  public static double ph(double molPerM3) {
    Refusal.unless(molPerM3 >= 0, "acetic acid", molPerM3, " mol/m3", "0 or more");
    double concentration = molPerM3 / LITRES_PER_M3;
    double fromAcid = (-KA + Math.sqrt(KA * KA + 4 * KA * concentration)) / 2;
    // [H+] = fromAcid + Kw/[H+], good to rounding where either term rules.
    double hydrogen = (fromAcid + Math.sqrt(fromAcid * fromAcid + 4 * ION_PRODUCT_OF_WATER)) / 2;
    return -Math.log10(hydrogen);
  }
}
