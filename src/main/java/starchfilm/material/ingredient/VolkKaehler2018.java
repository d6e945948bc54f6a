package starchfilm.material.ingredient;

import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * Density of aqueous glycerol, with the contraction on mixing.
 *
 * <p>{@code rho = kappa [rho_w + (rho_g - rho_w)/(1 + (rho_g/rho_w)(1/w - 1))]}, {@code kappa = 1 +
 * c (sin(pi w^1.31))^0.81}
 *
 * <p>{@code rho_g = 1273.3 - 0.6121 T}, {@code rho_w = 1000 (1 - |(T - 3.98)/615|^1.71)}, {@code c
 * = 1.78e-6 T^2 - 1.82e-4 T + 1.41e-2}
 *
 * <p>rho, rho_g, rho_w: density of mixture, glycerol and water (kg/m3); w: mass fraction of
 * glycerol; T: temperature (C).
 *
 * <p>Valid for: 15 to 30 C, the whole range of mixtures. Outside that temperature: used unchanged;
 * the caller flags it.
 *
 * <p>Source: Volk and Kaehler 2018, Density model for aqueous glycerol solutions, Exp. Fluids
 * 59:75, doi 10.1007/s00348-018-2527-y (coefficients read in two published code copies).
 *
 * <p>Deviation: none; within 0.54 kg/m3 of the measured table of Bosart and Snoddy 1927 at 20, 25
 * and 30 C. The formula has a fold of 0.001 kg/m3 in the last 1e-4 before pure glycerol, far below
 * its own accuracy; there the inverse returns one of two mixtures that differ by less than 1e-4.
 */
public final class VolkKaehler2018 {

  /** The largest gap to the table of Bosart and Snoddy, 0.54 kg/m3, read as half a rectangle. */
  private static final double SD_KG_PER_M3 = 0.54 / Math.sqrt(3);

  /** Where the formula is published. */
  public static final Source SOURCE =
      new Source("Volk and Kaehler 2018, Exp. Fluids 59:75", Check.READ);

  /**
   * Density of the mixture.
   *
   * @param glycerolFraction glycerol (kg per kg glycerol and water, 0 to 1)
   * @param temperatureK temperature (K)
   * @return density (kg/m3)
   */
  public double kgPerM3(double glycerolFraction, double temperatureK) {
    Mixtures.requireFraction(glycerolFraction);
    double celsius = temperatureK - ZERO_CELSIUS_K;
    double waterKgPerM3 = 1000 * (1 - Math.pow(Math.abs((celsius - 3.98) / 615), 1.71));
    double glycerolKgPerM3 = 1273.3 - 0.6121 * celsius;
    double volumeShareOfGlycerol =
        1 / (1 + (glycerolKgPerM3 / waterKgPerM3) * (1 / glycerolFraction - 1));
    double unmixed = waterKgPerM3 + (glycerolKgPerM3 - waterKgPerM3) * volumeShareOfGlycerol;
    // Rounding can make the sine of pi negative.
    double sine = Math.max(0, Math.sin(Math.PI * Math.pow(glycerolFraction, 1.31)));
    double strength = 1.78e-6 * celsius * celsius - 1.82e-4 * celsius + 1.41e-2;
    return unmixed * (1 + strength * Math.pow(sine, 0.81));
  }

  /**
   * Standard uncertainty of {@link #kgPerM3}.
   *
   * @return density (kg/m3)
   */
  public double kgPerM3Sd() {
    return SD_KG_PER_M3;
  }
}
