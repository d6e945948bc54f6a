package starchfilm.material.ingredient;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Refractive index of aqueous glycerol by interpolation in a measured table.
 *
 * <p>{@code n(w, T) = n20(w) - (1.0e-4 + 1.3e-4 w)(T - 20)}
 *
 * <p>n20: Akima's interpolation of the table at 20 C in steps of 10 %; w: mass fraction of
 * glycerol; T: temperature (C).
 *
 * <p>Valid for: 15 to 30 C, the whole range of mixtures. Outside that temperature: used unchanged;
 * the caller flags it.
 *
 * <p>Source: table of Hoyt 1934, New table of the refractive index of pure glycerol at 20 C, Ind.
 * Eng. Chem. 26:329 (read in a published script that cites it). Change with temperature: water
 * -1.0e-4/K and glycerol -2.3e-4/K (recalled), the mixture in proportion to its mass (judged).
 *
 * <p>Deviation: the table's steps are 10 %; another interpolation between them moves the index by
 * at most 7e-5. At 25 C it stands within 3.2e-4 (0.25 % glycerol) of the readings of Gerke et al.
 * 2023 up to 75 %. Near pure glycerol laboratories disagree: handbooks give 1.4740 to 1.4746 at 20
 * C, and a reading at 99.5 % and 25 C lies 1.1e-3 above this rule; the uncertainty grows from 80 %
 * on.
 */
public final class Hoyt1934 {
  private static final double TABLE_CELSIUS = 20;
  private static final double WATER_PER_K = -1.0e-4;
  private static final double GLYCEROL_MORE_PER_K = -1.3e-4;
  private static final double TABLE_SD = 1e-4;
  private static final double NEARLY_PURE = 0.8;
  private static final double PURE_SD = 6e-4;
  private static final double PER_K_SD = 0.5e-4;

  private static final double[] FRACTION = {0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1};
  private static final double[] INDEX_AT_20C = {
    1.33303, 1.34481, 1.35749, 1.37070, 1.38413, 1.39809, 1.41299, 1.42789, 1.44290, 1.45839,
    1.47399
  };

  /** Where the formula is published. */
  public static final Source SOURCE = new Source("Hoyt 1934, Ind. Eng. Chem. 26:329", Check.READ);

  private final PolynomialSplineFunction table =
      new AkimaSplineInterpolator().interpolate(FRACTION, INDEX_AT_20C);

  /**
   * Refractive index of the mixture at 589 nm.
   *
   * @param glycerolFraction glycerol (kg per kg glycerol and water, 0 to 1)
   * @param temperatureK temperature (K)
   * @return refractive index (ratio)
   */
  public double index(double glycerolFraction, double temperatureK) {
    Mixtures.requireFraction(glycerolFraction);
    double perK = WATER_PER_K + GLYCEROL_MORE_PER_K * glycerolFraction;
    return table.value(glycerolFraction) + perK * warmerThanTable(temperatureK);
  }

  /**
   * Standard uncertainty of {@link #index}.
   *
   * @param glycerolFraction glycerol (kg per kg glycerol and water, 0 to 1)
   * @param temperatureK temperature (K)
   * @return refractive index (ratio)
   */
  public double indexSd(double glycerolFraction, double temperatureK) {
    double towardsPure = Math.max(0, (glycerolFraction - NEARLY_PURE) / (1 - NEARLY_PURE));
    double table = TABLE_SD + (PURE_SD - TABLE_SD) * towardsPure;
    return Math.hypot(table, PER_K_SD * warmerThanTable(temperatureK));
  }

  private static double warmerThanTable(double temperatureK) {
    return temperatureK - ZERO_CELSIUS_K - TABLE_CELSIUS;
  }
}
