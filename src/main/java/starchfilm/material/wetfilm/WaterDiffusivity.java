package starchfilm.material.wetfilm;

import static starchfilm.numerics.units.Nature.GAS_CONSTANT_J_PER_MOL_K;

import java.util.List;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.evidence.ValidRange;

/**
 * Mutual diffusivity of water in starch, glycerol and water, in the volume-fixed frame.
 *
 * <p>{@code D = D_w exp[-(3.96 phi_s + 2.72 phi_g)/(phi_w + 0.37 phi_s + 0.57 phi_g)]
 * exp[-(E/R)(1/T - 1/T_0)]}, {@code E = 18 + 22 (1 - phi_w)^2} kJ/mol, phi the volume fractions of
 * water, starch and glycerol, D_w = 2.299e-9 m2/s, T_0 = 298.15 K. Salt is counted as starch
 * (assumed, no source).
 *
 * <p><em>Valid for</em> 5 to 90 C and every composition. <em>Uncertainty</em>: a factor 1.3 above X
 * = 2, 2 for 0.1 &lt; X &lt; 2, 3 to 5 below; no datum lies between X = 0.3 and 4.
 *
 * <p><em>Source</em>: our own fit of the free-volume shape to water self-diffusion (Holz, Heil and
 * Sacco 2000, Phys. Chem. Chem. Phys. 2:4740), obstruction (Mackie and Meares 1955, Proc. R. Soc. A
 * 232:498), starch gels (Fish 1957, as tabulated by Zogzas et al. 1996, Drying Technol. 14:2225)
 * and glycerol-water (D'Errico et al. 2004, J. Chem. Eng. Data 49:1665); all recalled. The film
 * shrinks as it dries; because the coordinate is fixed to the solids, no further factor of the
 * volume fraction belongs to D (Crank 1975, The Mathematics of Diffusion, 2nd ed., section 10.6.2,
 * recalled).
 */
public final class WaterDiffusivity {
  /** Where the correlation comes from. */
  public static final List<Source> SOURCES =
      List.of(
          new Source(
              "diffusivity of water: our fit to Holz, Heil and Sacco 2000, Phys. Chem. Chem. Phys."
                  + " 2:4740; Mackie and Meares 1955, Proc. R. Soc. A 232:498; Fish 1957 as tabulated"
                  + " by Zogzas et al. 1996, Drying Technol. 14:2225; D'Errico et al. 2004, J. Chem."
                  + " Eng. Data 49:1665",
              Check.RECALLED));

  /** Temperatures it may be used at. */
  public static final ValidRange TEMPERATURE = new ValidRange("film temperature", 5, 90, "°C");

  private static final double WATER_AT_REFERENCE_M2_PER_S = 2.299e-9;
  private static final double REFERENCE_K = 298.15;
  private static final double STARCH_HINDRANCE = 3.96;
  private static final double GLYCEROL_HINDRANCE = 2.72;
  private static final double STARCH_FREE_VOLUME = 0.37;
  private static final double GLYCEROL_FREE_VOLUME = 0.57;
  private static final double WATER_ENERGY_J_PER_MOL = 18_000;
  private static final double DRY_ENERGY_RISE_J_PER_MOL = 22_000;

  private final double starchVolume;
  private final double glycerolVolume;
  private final double dryVolume;
  private final double waterVolumePerMoisture;

  private WaterDiffusivity(Composition composition) {
    double solids = composition.drySolids();
    this.starchVolume = composition.starchLike() / (solids * Composition.DRY_STARCH_KG_PER_M3);
    this.glycerolVolume = composition.glycerol() / (solids * Composition.GLYCEROL_KG_PER_M3);
    this.dryVolume = starchVolume + glycerolVolume;
    this.waterVolumePerMoisture = 1 / Composition.WATER_KG_PER_M3;
  }

  /**
   * The diffusivity in one paste as it dries.
   *
   * @param composition the paste; only its dry solids matter
   * @return the correlation for it
   */
  public static WaterDiffusivity in(Composition composition) {
    return new WaterDiffusivity(composition);
  }

  /**
   * The diffusivity at a moisture content and temperature.
   *
   * @param moisture X (kg water per kg dry solids, 0 or more)
   * @param temperatureK temperature (K)
   * @return D (m2/s)
   */
  public double m2PerS(double moisture, double temperatureK) {
    return atReferenceM2PerS(moisture)
        * Math.exp(
            -activationEnergyJPerMol(moisture)
                / GAS_CONSTANT_J_PER_MOL_K
                * (1 / temperatureK - 1 / REFERENCE_K));
  }

  /** D at 298.15 K (m2/s). */
  double atReferenceM2PerS(double moisture) {
    double water = moisture * waterVolumePerMoisture;
    double hindrance = STARCH_HINDRANCE * starchVolume + GLYCEROL_HINDRANCE * glycerolVolume;
    double free = water + STARCH_FREE_VOLUME * starchVolume + GLYCEROL_FREE_VOLUME * glycerolVolume;
    return WATER_AT_REFERENCE_M2_PER_S * Math.exp(-hindrance / free);
  }

  /** E (J/mol). */
  double activationEnergyJPerMol(double moisture) {
    double dryFraction = dryVolume / volumeM3PerKgDry(moisture);
    return WATER_ENERGY_J_PER_MOL + DRY_ENERGY_RISE_J_PER_MOL * dryFraction * dryFraction;
  }

  /** Volume of the mixture (m3 per kg dry solids), the volumes of the parts simply added. */
  double volumeM3PerKgDry(double moisture) {
    return dryVolume + moisture * waterVolumePerMoisture;
  }

  /** The flux coefficient D/v2 in the solids-fixed coordinate, for every layer of temperature. */
  void fillSolidsFixed(double moisture, TemperatureLayers layers, double[] coefficients) {
    double volume = volumeM3PerKgDry(moisture);
    double energyOverGas = activationEnergyJPerMol(moisture) / GAS_CONSTANT_J_PER_MOL_K;
    double atFirst =
        atReferenceM2PerS(moisture)
            / (volume * volume)
            * Math.exp(-energyOverGas * (layers.inverseK(0) - 1 / REFERENCE_K));
    // The layers are equally spaced in 1/T, so each is the one before times the same factor.
    double ratio = Math.exp(-energyOverGas * layers.inverseSpacing());
    for (int i = 0; i < coefficients.length; i++) {
      coefficients[i] = atFirst;
      atFirst *= ratio;
    }
  }
}
