package starchfilm.material.air;

import java.util.List;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;
import starchfilm.numerics.units.Nature;
import starchfilm.numerics.units.Units;

/**
 * Exchange of vapour and heat between one face of a horizontal plate and the air of a room.
 *
 * <p>{@code J = k P M_w/(R T_f) ln[(P - e_air)/(P - a_w p_sat(T_s))]}, with k the mass-transfer
 * coefficient and T_f the film temperature, the mean of air and surface.
 *
 * <ul>
 *   <li>k: forced flow (draught along the plate) and natural flow (air heavier or lighter at the
 *       surface than in the room) joined, {@code k^3 = k_forced^3 + k_natural^3} (common practice,
 *       no source).
 *   <li>Rim: a layer of still air of 0.35 of the rim's height, thinner in a draught, lies in series
 *       (judged, no source): a 10 mm rim takes off some 20 to 25 %, where 10 to 40 % are reported.
 *   <li>Heat: {@code h_c = k rho c_p Le^(2/3)}, Le the Lewis number (Chilton and Colburn 1934);
 *       radiation to surroundings at air temperature with emissivity 0.95.
 * </ul>
 *
 * <p>All is smooth in temperature and activity, so that a solver can differentiate. Limits: a
 * surface that boils (vapour pressure at or above P) gives NaN.
 *
 * <p>An object is a working space: one a thread and a face, changed by its setters, read after
 * {@link #evaluate}. It allocates nothing.
 */
public final class PlateTransfer {
  /** The cube root as a power, for {@link Math#cbrt} took 3 % of all the time of a page. */
  private static final double THIRD = 1.0 / 3;

  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;
  private static final double EMISSIVITY = 0.95;

  private static final double STILL_SHARE_OF_RIM = 0.35;
  private static final double DRAUGHT_HALVING_M_PER_S = 0.3;

  private static final WagnerPruss1993 SATURATION = new WagnerPruss1993();

  private static final Source HEAT_AND_MASS =
      new Source(
          "heat and mass alike: Chilton and Colburn 1934, Ind. Eng. Chem. 26:1183", Check.RECALLED);

  private final ForcedFlow forced;
  private final NaturalFlow natural;
  private final double rimHeightM;
  private final double pressurePa;

  /** Standard pressure over pressure: what a diffusivity at standard pressure is multiplied by. */
  private final double thinness;

  private double airTemperatureK;
  private double airVapourPressurePa;
  private double airVirtual;
  private double stillDepthM;
  private double factor = 1;

  private double vapourFluxKgPerM2S = Double.NaN;
  private double massTransferMPerS = Double.NaN;
  private double convectionWPerM2K = Double.NaN;
  private double radiationWPerM2K = Double.NaN;

  /**
   * A face at standard pressure.
   *
   * @param lengthM longer side (m, above 0)
   * @param widthM shorter side (m, above 0)
   * @param rimHeightM rim above the face (m, 0 for none)
   */
  public PlateTransfer(double lengthM, double widthM, double rimHeightM) {
    this(lengthM, widthM, rimHeightM, HumidAir.STANDARD_PRESSURE_PA);
  }

  /**
   * A face at any pressure.
   *
   * @param lengthM longer side (m, above 0)
   * @param widthM shorter side (m, above 0)
   * @param rimHeightM rim above the face (m, 0 for none)
   * @param pressurePa total pressure of the air (Pa, above 0)
   */
  public PlateTransfer(double lengthM, double widthM, double rimHeightM, double pressurePa) {
    require(lengthM > 0, "length", lengthM, "above 0 m");
    require(widthM > 0, "width", widthM, "above 0 m");
    require(rimHeightM >= 0, "rim height", rimHeightM, "0 m or more");
    require(pressurePa > 0, "air pressure", pressurePa, "above 0 Pa");
    this.rimHeightM = rimHeightM;
    this.pressurePa = pressurePa;
    this.thinness = HumidAir.STANDARD_PRESSURE_PA / pressurePa;
    this.forced = new ForcedFlow(lengthM * widthM, thinness);
    this.natural = new NaturalFlow(lengthM * widthM, 2 * (lengthM + widthM), thinness);
    setAir(Units.ZERO_CELSIUS_K + 20, 0.5, 0);
  }

  /**
   * Sets the air; 20 C, half saturated and still before the first call.
   *
   * @param temperatureK temperature of the air and of what surrounds the plate (K)
   * @param relativeHumidity relative humidity (ratio, 0 to 1)
   * @param speedMPerS speed of the air along the plate (m/s, 0 or more)
   */
  public void setAir(double temperatureK, double relativeHumidity, double speedMPerS) {
    require(temperatureK > 0, "air temperature", temperatureK, "above 0 K");
    require(
        relativeHumidity >= 0 && relativeHumidity <= 1,
        "relative humidity",
        relativeHumidity,
        "0 to 1");
    require(speedMPerS >= 0, "air speed", speedMPerS, "0 m/s or more");
    this.airTemperatureK = temperatureK;
    this.airVapourPressurePa = relativeHumidity * SATURATION.pa(temperatureK);
    this.airVirtual = virtual(temperatureK, airVapourPressurePa);
    forced.setSpeed(speedMPerS);
    this.stillDepthM = STILL_SHARE_OF_RIM * rimHeightM / (1 + speedMPerS / DRAUGHT_HALVING_M_PER_S);
  }

  /**
   * Sets what the transfer coefficients of vapour and of heat by convection are multiplied by.
   *
   * @param airSideFactor the factor (ratio, above 0; 1 by default)
   */
  public void setFactor(double airSideFactor) {
    require(airSideFactor > 0, "air-side factor", airSideFactor, "above 0");
    this.factor = airSideFactor;
  }

  /**
   * Says which way the face looks.
   *
   * @param facingDown true for the lower face of a film on a rack; false by default
   */
  public void setFacingDown(boolean facingDown) {
    natural.setFacingDown(facingDown);
  }

  /**
   * Works out the exchange for a surface; the results are read from the getters.
   *
   * @param surfaceTemperatureK temperature of the surface (K)
   * @param waterActivity water activity of the surface (ratio, 0 to 1)
   */
  public void evaluate(double surfaceTemperatureK, double waterActivity) {
    double filmK = (airTemperatureK + surfaceTemperatureK) / 2;
    double x = SmoothFit.position(filmK);
    double surfacePa = waterActivity * SATURATION.pa(surfaceTemperatureK);
    double diffusivity = FilmLayer.DIFFUSIVITY_M2_PER_S.at(x) * thinness;

    double surfaceVirtual = virtual(surfaceTemperatureK, surfacePa);
    double lighter = 2 * (airVirtual - surfaceVirtual) / (airVirtual + surfaceVirtual);

    double driven = forced.massTransferMPerS(x);
    double open =
        Math.pow(
            driven * driven * driven + natural.massTransferCubed(x, diffusivity, lighter), THIRD);
    double sheltered = factor * open * diffusivity / (diffusivity + open * stillDepthM);

    massTransferMPerS = sheltered;
    vapourFluxKgPerM2S =
        sheltered
            * (pressurePa * HumidAir.WATER_KG_PER_MOL / Nature.GAS_CONSTANT_J_PER_MOL_K)
            / filmK
            * Math.log((pressurePa - airVapourPressurePa) / (pressurePa - surfacePa));
    convectionWPerM2K =
        sheltered
            * HumidAir.heatCapacityJPerM3K(filmK, (airVapourPressurePa + surfacePa) / 2, pressurePa)
            * FilmLayer.LEWIS_TWO_THIRDS.at(x);
    radiationWPerM2K =
        EMISSIVITY
            * STEFAN_BOLTZMANN
            * (airTemperatureK + surfaceTemperatureK)
            * (airTemperatureK * airTemperatureK + surfaceTemperatureK * surfaceTemperatureK);
  }

  /**
   * Vapour leaving the surface.
   *
   * @return kg/(m2 s); negative where it takes up moisture
   */
  public double vapourFluxKgPerM2S() {
    return vapourFluxKgPerM2S;
  }

  /**
   * Mass-transfer coefficient, with rim and factor.
   *
   * @return m/s
   */
  public double massTransferMPerS() {
    return massTransferMPerS;
  }

  /**
   * Heat-transfer coefficient of convection, with rim and factor.
   *
   * @return W/(m2 K)
   */
  public double convectionWPerM2K() {
    return convectionWPerM2K;
  }

  /**
   * Heat-transfer coefficient of radiation: times the temperature difference it is exactly the
   * difference of the fourth powers.
   *
   * @return W/(m2 K)
   */
  public double radiationWPerM2K() {
    return radiationWPerM2K;
  }

  /**
   * Vapour pressure of the air.
   *
   * @return Pa
   */
  public double airVapourPressurePa() {
    return airVapourPressurePa;
  }

  /**
   * Returns the sources of the exchange.
   *
   * @return the sources of all formulas used, those of air's properties first
   */
  public static List<Source> sources() {
    return List.of(
        WagnerPruss1993.SOURCE,
        MarreroMason1972.SOURCE,
        StandardAtmosphere1976.SOURCE,
        ForcedFlow.SOURCE,
        NaturalFlow.SOURCE,
        HEAT_AND_MASS);
  }

  /** The density of humid air but for a constant factor. */
  private double virtual(double temperatureK, double vapourPressurePa) {
    return (pressurePa - HumidAir.LIGHTNESS_OF_VAPOUR * vapourPressurePa) / temperatureK;
  }

  private static void require(boolean holds, String quantity, double given, String allowed) {
    if (!holds) {
      throw new IllegalArgumentException(
          "exchange with the air: " + quantity + ": " + given + " given, allowed " + allowed);
    }
  }
}
