package starchfilm.air;

/**
 * Exchange of vapour and heat between one face of a horizontal plate and the air of a room.
 *
 * <p>{@code J = k P M_w/(R T_f) ln[(P - e_air)/(P - a_w p_sat(T_s))]}, with k the mass-transfer
 * coefficient and T_f the film temperature, the mean of air and surface. With Sh the Sherwood
 * number, Re and Sc those of Reynolds and Schmidt, Ra that of Rayleigh for mass:
 *
 * <ul>
 *   <li>forced: {@code Sh = 0.664 Re^(1/2) Sc^(1/3)}; past Re 5e5 the mixed layer {@code (0.037
 *       Re^0.8 - 871) Sc^(1/3)}, faded in between 4.5e5 and 5.5e5. Source: Incropera et al.,
 *       Fundamentals of Heat and Mass Transfer, equations 7.30 and 7.38 (recalled). Length: the
 *       side of the square of the same area, for nobody knows where a draught comes from (assumed).
 *   <li>natural, where the air at the surface moves away by itself: {@code 0.54 Ra^(1/4)} and, past
 *       Ra 1e7, {@code 0.15 Ra^(1/3)}. Source: McAdams 1954; Lloyd and Moran 1974, J. Heat Transfer
 *       96:443 (read in a teaching text).
 *   <li>natural, where it lies still: {@code 0.52 Ra^(1/5)}, Ra 1e4 to 1e9. Source: the same
 *       teaching text; Radziemska and Lewandowski 2001, Appl. Energy 68:347 (recalled). The older
 *       {@code 0.27 Ra^(1/4)} begins at Ra 1e5, above a plate of 0.2 m, and is 15 % lower there.
 *   <li>both natural cases: never below pure conduction, Sh = 1; length: area over perimeter. The
 *       density of the air with its moisture decides between them: over a wet plate in a room it
 *       usually lies still.
 *   <li>forced and natural: {@code k^3 = k_forced^3 + k_natural^3} (common practice, no source).
 *   <li>rim: a layer of still air of 0.35 of the rim's height, thinner in a draught, lies in series
 *       (judged, no source): a 10 mm rim takes off some 20 to 25 %, where 10 to 40 % are reported.
 *   <li>heat: {@code h_c = k rho c_p Le^(2/3)} (Chilton and Colburn 1934); radiation to
 *       surroundings at air temperature with emissivity 0.95.
 * </ul>
 *
 * <p>The two natural cases are joined smoothly within some 0.1 K around equal density, so that a
 * solver sees a smooth function of temperature and activity.
 *
 * <p>Limits: near equal density, and for plates under 0.15 m, the natural correlations are used
 * below their stated range. Speeds below 0.05 m/s hardly occur in a room. A surface that boils
 * (vapour pressure at or above P) gives NaN.
 *
 * <p>An object is a working space: one a thread and a face, changed by its setters, read after
 * {@link #evaluate}. It allocates nothing.
 */
public final class PlateTransfer {
  private static final double GRAVITY_M_PER_S2 = 9.80665;
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;
  private static final double EMISSIVITY = 0.95;

  private static final double LAMINAR = 0.664;
  private static final double MIXED = 0.037;
  private static final double MIXED_EXPONENT = 0.8;
  private static final double MIXED_OFFSET = 871;
  private static final double MIXED_FROM_RE = 4.5e5;
  private static final double MIXED_TO_RE = 5.5e5;

  /** Below this speed times length (m2/s) no room air reaches the mixed layer. */
  private static final double SURELY_LAMINAR = MIXED_FROM_RE * 1e-5;

  private static final double UNSTABLE_TO_FOURTH = 0.54 * 0.54 * 0.54 * 0.54;
  private static final double TURBULENT_TO_TWELFTH = Math.pow(0.15, 12);
  private static final double STABLE_TO_FIFTH = Math.pow(0.52, 5);
  private static final double CUBE_OF_FIFTH_ROOT = 3 / 5.0;

  /**
   * Relative density difference over which the natural cases are joined (judged): that of 0.1 K, by
   * which the air of a still room flutters anyway.
   */
  private static final double JOINT = 3e-4;

  private static final double STILL_SHARE_OF_RIM = 0.35;
  private static final double DRAUGHT_HALVING_M_PER_S = 0.3;

  private static final SaturationPressure SATURATION = new WagnerPruss1993();

  private final double forcedLengthM;
  private final double naturalLengthM;
  private final double rimHeightM;
  private final double pressurePa;

  /** Standard pressure over pressure: what a diffusivity at standard pressure is multiplied by. */
  private final double thinness;

  private final double laminarScale;
  private final double rayleighScale;

  private double airTemperatureK;
  private double airVapourPressurePa;
  private double airVirtual;
  private double speedMPerS;
  private double laminarCoefficient;
  private double stillDepthM;
  private double factor = 1;
  private boolean facingDown;
  private boolean radiating = true;

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
    this.forcedLengthM = Math.sqrt(lengthM * widthM);
    this.naturalLengthM = lengthM * widthM / (2 * (lengthM + widthM));
    this.rimHeightM = rimHeightM;
    this.pressurePa = pressurePa;
    this.thinness = HumidAir.STANDARD_PRESSURE_PA / pressurePa;
    this.laminarScale = LAMINAR * Math.sqrt(thinness / forcedLengthM);
    this.rayleighScale =
        GRAVITY_M_PER_S2 * naturalLengthM * naturalLengthM * naturalLengthM / (thinness * thinness);
    setAir(HumidAir.ZERO_CELSIUS_K + 20, 0.5, 0);
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
    this.speedMPerS = speedMPerS;
    this.laminarCoefficient = laminarScale * Math.sqrt(speedMPerS);
    this.stillDepthM = STILL_SHARE_OF_RIM * rimHeightM / (1 + speedMPerS / DRAUGHT_HALVING_M_PER_S);
  }

  /**
   * Sets the air.
   *
   * @param air the air over the plate
   */
  public void setAir(AirState air) {
    setAir(air.temperatureK(), air.relativeHumidity(), air.speedMPerS());
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
    this.facingDown = facingDown;
  }

  /**
   * Switches radiation.
   *
   * @param radiating false for a surface that only convects, as a wet bulb does; true by default
   */
  public void setRadiating(boolean radiating) {
    this.radiating = radiating;
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

    double forced = forced(x);
    double conduction = diffusivity / naturalLengthM;
    double cubes =
        forced * forced * forced
            + conduction
                * conduction
                * conduction
                * naturalCubed(x, surfaceTemperatureK, surfacePa);
    double open = Math.cbrt(cubes);
    double sheltered = factor * open * diffusivity / (diffusivity + open * stillDepthM);

    massTransferMPerS = sheltered;
    vapourFluxKgPerM2S =
        sheltered
            * (pressurePa * HumidAir.WATER_KG_PER_MOL / HumidAir.GAS_CONSTANT_J_PER_MOL_K)
            / filmK
            * Math.log((pressurePa - airVapourPressurePa) / (pressurePa - surfacePa));
    convectionWPerM2K =
        sheltered
            * HumidAir.heatCapacityJPerM3K(filmK, (airVapourPressurePa + surfacePa) / 2, pressurePa)
            * FilmLayer.LEWIS_TWO_THIRDS.at(x);
    radiationWPerM2K =
        radiating
            ? EMISSIVITY
                * STEFAN_BOLTZMANN
                * (airTemperatureK + surfaceTemperatureK)
                * (airTemperatureK * airTemperatureK + surfaceTemperatureK * surfaceTemperatureK)
            : 0;
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

  private double forced(double x) {
    double laminar = laminarCoefficient * FilmLayer.LAMINAR_GROUP.at(x);
    double flow = speedMPerS * forcedLengthM;
    return flow < SURELY_LAMINAR * thinness ? laminar : mixed(x, flow, laminar);
  }

  private double mixed(double x, double flow, double laminar) {
    double reynolds = flow / (FilmLayer.KINEMATIC_VISCOSITY_M2_PER_S.at(x) * thinness);
    if (reynolds <= MIXED_FROM_RE) {
      return laminar;
    }
    double mixed =
        laminar
            * (MIXED * Math.pow(reynolds, MIXED_EXPONENT) - MIXED_OFFSET)
            / (LAMINAR * Math.sqrt(reynolds));
    double fade = Math.min(1, (reynolds - MIXED_FROM_RE) / (MIXED_TO_RE - MIXED_FROM_RE));
    double weight = fade * fade * (3 - 2 * fade);
    return laminar + weight * (mixed - laminar);
  }

  /**
   * The cube of the natural Sherwood number. Pure conduction, 1, is joined to the laminar branches
   * in the power of their own exponent, and the turbulent one to its laminar one by twelfth powers:
   * {@code Sh^12 = (1 + 0.54^4 Ra)^3 + (0.15^3 Ra)^4} and {@code Sh^5 = 1 + 0.52^5 Ra}.
   */
  private double naturalCubed(double x, double surfaceTemperatureK, double surfacePa) {
    double surfaceVirtual = virtual(surfaceTemperatureK, surfacePa);
    double lighter = 2 * (airVirtual - surfaceVirtual) / (airVirtual + surfaceVirtual);
    double difference = Math.sqrt(lighter * lighter + JOINT * JOINT);
    double awayShare = (1 + (facingDown ? -lighter : lighter) / difference) / 2;
    double rayleigh = rayleighScale * difference / FilmLayer.RAYLEIGH_GROUP.at(x);
    double laminar = 1 + UNSTABLE_TO_FOURTH * rayleigh;
    double squared = rayleigh * rayleigh;
    double away =
        Math.sqrt(
            Math.sqrt(laminar * laminar * laminar + TURBULENT_TO_TWELFTH * squared * squared));
    double lying = Math.pow(1 + STABLE_TO_FIFTH * rayleigh, CUBE_OF_FIFTH_ROOT);
    return lying + awayShare * (away - lying);
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
