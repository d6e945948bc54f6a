package starchfilm.material.wetfilm;

import starchfilm.material.recipe.Composition;
import starchfilm.material.sorption.FilmIsotherm;
import starchfilm.numerics.diffusion.FluxPotential;

/**
 * One paste's tables: what its film holds at what activity, and the potential of the water's flux.
 *
 * @param composition the paste
 * @param isotherm moisture against activity
 * @param potential the integral of D/v2 over moisture, in layers of temperature
 */
public record FilmMaterial(
    Composition composition, FilmIsotherm isotherm, FluxPotential potential) {
  /** The middle of the table: half its nodes lie below this moisture, where D falls steeply. */
  private static final double TABLE_MIDDLE = 0.35;

  private static final int TABLE_INTERVALS = 64;

  /** How far above the fresh paste's moisture the table reaches, for the wetter cases. */
  private static final double HEADROOM = 1.3;

  /**
   * Tabulates one paste.
   *
   * @param composition the paste
   * @param layers the temperatures of the table
   * @return its tables
   */
  public static FilmMaterial of(Composition composition, TemperatureLayers layers) {
    WaterDiffusivity diffusivity = WaterDiffusivity.in(composition);
    FluxPotential potential =
        FluxPotential.tabulate(
            (moisture, coefficients) -> diffusivity.fillSolidsFixed(moisture, layers, coefficients),
            layers,
            HEADROOM * composition.waterKgPerKgDry() + 1,
            TABLE_MIDDLE,
            TABLE_INTERVALS);
    return new FilmMaterial(composition, FilmIsotherm.of(composition), potential);
  }

  /**
   * The same paste with its glycerol multiplied.
   *
   * @param composition the paste
   * @param multiplier of its glycerol; above 0
   * @return the paste with the other parts as they were beside each other
   */
  public static Composition withGlycerol(Composition composition, double multiplier) {
    double glycerol = composition.glycerol() * multiplier;
    double total = 1 + glycerol - composition.glycerol();
    return new Composition(
        composition.starchShares(),
        composition.dryStarch() / total,
        glycerol / total,
        composition.salt() / total,
        composition.aceticAcid() / total,
        composition.water() / total);
  }
}
