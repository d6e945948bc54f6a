package starchfilm.material.air;

/**
 * The properties of air in the boundary layer over a plate, at standard pressure, as functions of
 * the film temperature.
 *
 * <p>With nu the kinematic viscosity and D the vapour diffusivity, both in inverse proportion to
 * pressure. Dry air stands in for humid air in nu and in the conductivity; up to 40 C that moves a
 * transfer coefficient by less than 0.5 %, because it goes with a sixth power of nu.
 */
final class FilmLayer {
  private static final MarreroMason1972 DIFFUSIVITY = new MarreroMason1972();
  private static final StandardAtmosphere1976 AIR = new StandardAtmosphere1976();

  /** D (m2/s). */
  static final SmoothFit DIFFUSIVITY_M2_PER_S = SmoothFit.of(FilmLayer::diffusivity);

  /** nu (m2/s). */
  static final SmoothFit KINEMATIC_VISCOSITY_M2_PER_S = SmoothFit.of(FilmLayer::kinematicViscosity);

  /** {@code D^(2/3) nu^(-1/6)}, what of a laminar boundary layer depends on temperature. */
  static final SmoothFit LAMINAR_GROUP =
      SmoothFit.of(
          t -> Math.pow(diffusivity(t), 2 / 3.0) * Math.pow(kinematicViscosity(t), -1 / 6.0));

  /** {@code nu D} (m4/s2), the denominator of the Rayleigh number for mass. */
  static final SmoothFit RAYLEIGH_GROUP = SmoothFit.of(t -> kinematicViscosity(t) * diffusivity(t));

  /** {@code Le^(2/3)}, with Le the thermal diffusivity over D. */
  static final SmoothFit LEWIS_TWO_THIRDS =
      SmoothFit.of(t -> Math.pow(thermalDiffusivity(t) / diffusivity(t), 2 / 3.0));

  private FilmLayer() {}

  static double diffusivity(double temperatureK) {
    return DIFFUSIVITY.m2PerS(temperatureK, HumidAir.STANDARD_PRESSURE_PA);
  }

  static double kinematicViscosity(double temperatureK) {
    return AIR.viscosityPaS(temperatureK)
        / HumidAir.densityKgPerM3(temperatureK, 0, HumidAir.STANDARD_PRESSURE_PA);
  }

  static double thermalDiffusivity(double temperatureK) {
    return AIR.conductivityWPerMK(temperatureK)
        / HumidAir.heatCapacityJPerM3K(temperatureK, 0, HumidAir.STANDARD_PRESSURE_PA);
  }
}
