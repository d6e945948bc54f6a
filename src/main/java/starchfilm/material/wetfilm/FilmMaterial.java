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
 * @param wettest moisture the potential reaches to (kg water per kg dry solids)
 */
public record FilmMaterial(
    Composition composition, FilmIsotherm isotherm, FluxPotential potential, double wettest) {
  /** The middle of the table: half its nodes lie below this moisture, where D falls steeply. */
  private static final double TABLE_MIDDLE = 0.35;

  private static final int TABLE_INTERVALS = 64;

  /** How far above the fresh paste's moisture the table reaches, for the wetter cases. */
  private static final double HEADROOM = 1.3;

  private static final TemperatureLayers LAYERS = new TemperatureLayers();

  /**
   * Tabulates one paste.
   *
   * @param composition the paste
   * @param startMoisture the wettest it is ever poured (kg water per kg dry solids)
   * @return its tables
   */
  public static FilmMaterial of(Composition composition, double startMoisture) {
    double wettest = HEADROOM * startMoisture + 1;
    WaterDiffusivity diffusivity = WaterDiffusivity.in(composition);
    FluxPotential potential =
        FluxPotential.tabulate(
            (moisture, coefficients) -> diffusivity.fillSolidsFixed(moisture, LAYERS, coefficients),
            LAYERS,
            wettest,
            TABLE_MIDDLE,
            TABLE_INTERVALS);
    return new FilmMaterial(composition, FilmIsotherm.of(composition), potential, wettest);
  }
}
