package starchfilm.drying;

import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingLimits;
import starchfilm.casting.FaceChange.OpenFaces;
import starchfilm.casting.Plate;
import starchfilm.casting.Room;
import starchfilm.drying.uncertainty.ParameterSample;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.material.air.AirState;
import starchfilm.material.air.Harrison1963;
import starchfilm.material.air.PlateTransfer;
import starchfilm.material.air.WagnerPruss1993;
import starchfilm.material.sorption.FilmIsotherm;
import starchfilm.material.wetfilm.FilmMaterial;
import starchfilm.material.wetfilm.SolidsHeat;
import starchfilm.numerics.diffusion.FaceExchange;
import starchfilm.numerics.evidence.ValidRange;

/**
 * What a film on its plate exchanges with the room, and the heat balance of film and plate.
 *
 * <p>{@code (C_film + C_plate) dT/dt = (h_c + h_r)(T_air - T) + U_bench (T_bench - T) - lambda J}
 * with one temperature T for film and plate, which are thin (Biot number of a 4 mm glass plate
 * about 0.03). J is the outflow of the open face from {@link PlateTransfer} at the water activity
 * of the moisture there. On a rack both faces exchange, and plate and bench are gone.
 *
 * <p>The lumped state of {@link FaceExchange} is T (K), the unknown is X (kg/kg), the outflow
 * kg/(m2 s). One object serves one thread.
 */
final class PlateExchange implements FaceExchange {
  /**
   * Heat passed by a bench that takes on the room's temperature (W/(m2 K)), its own resistance
   * included; assumed, no source.
   */
  static final double BENCH_W_PER_M2K = 3;

  /**
   * Heat passed by a bench that is kept warm or cool (W/(m2 K)): about a millimetre of air, 0.026
   * W/(m K), between it and a plate that lies on it; assumed, no source.
   */
  static final double KEPT_BENCH_W_PER_M2K = 30;

  /**
   * A bench that differs from the air by much more than this is kept warm or cool by something (K);
   * one that differs by much less has merely been measured. Between them the conductance goes over
   * without a jump, {@code U = 3 + 27 [1 - exp(-(T_bench - T_air)^2/(3 K)^2)]}; judged, no source.
   */
  private static final double KEPT_FROM_K = 3;

  /** Specific heat of liquid water near 25 C. Source: any steam table (recalled). */
  private static final double WATER_J_PER_KG_K = 4180;

  /** Step of the numeric derivatives in activity. */
  private static final double ACTIVITY_STEP = 1e-5;

  /** Step of the numeric derivatives in temperature (K). */
  private static final double TEMPERATURE_STEP_K = 1e-3;

  /** Step of the numeric derivatives in time (s); short against any change of a room. */
  private static final double TIME_STEP_S = 30;

  /**
   * Air of a room never stands; where none was felt it moves about so fast (m/s). Still air then
   * lies within 25 % of Shah's line over plates of 0.2 m, 30 % below it at 0.5 m and at half of it
   * at 1 m, where a motionless room gave two fifths; judged, no source.
   */
  static final double STILLEST_M_PER_S = 0.03;

  /** Speeds that are taken as given. */
  static final ValidRange SPEED =
      new ValidRange("air speed", STILLEST_M_PER_S, DryingLimits.AIR_SPEED.max(), "m/s");

  /** Rounds that find the steady temperature to less than 1e-6 K. */
  private static final int STEADY_ROUNDS = 10;

  private static final WagnerPruss1993 SATURATION = new WagnerPruss1993();
  private static final Harrison1963 LATENT_HEAT = new Harrison1963();

  private final Room room;
  private final boolean constantRoom;
  private final OptionalDouble benchTemperatureK;
  private final double plateHeatJPerM2K;
  private final PlateTransfer upperTransfer;
  private final PlateTransfer lowerTransfer;

  private FilmIsotherm isotherm;
  private OpenFaces open = OpenFaces.UPPER;
  private double isothermFactor;
  private double restingTemperatureK;
  private double benchFactor;
  private double benchWPerM2K;
  private double benchHereK;
  private double humidityShift;
  private double temperatureShiftK;
  private double solidsHeatJPerM2K;
  private double waterHeatJPerM2K;

  private double airTimeS;
  private double lowerActivity;
  private double upperActivity;
  private double airTemperatureK;
  private double airHumidity;
  private double lowerOutflow;
  private double upperOutflow;
  private double borderRate;
  private final double[][] slopes = new double[Result.values().length][Argument.values().length];

  PlateExchange(Casting drying, FilmIsotherm isotherm) {
    this.room = drying.room();
    this.constantRoom = room.isConstant();
    this.benchTemperatureK = drying.benchTemperatureK();
    Plate plate = drying.plate();
    this.plateHeatJPerM2K = plate.heatCapacityJPerM2K();
    this.upperTransfer = new PlateTransfer(plate.lengthM(), plate.widthM(), plate.rimHeightM());
    this.lowerTransfer = new PlateTransfer(plate.lengthM(), plate.widthM(), 0);
    lowerTransfer.setFacingDown(true);
    this.isotherm = isotherm;
  }

  /** Takes on one likely case. */
  void setCase(ParameterSample deviations, FilmMaterial material, double solidsKgPerM2) {
    isotherm = material.isotherm();
    isothermFactor = deviations.multiplier(UncertainParameter.ISOTHERM);
    benchFactor = deviations.multiplier(UncertainParameter.BENCH);
    humidityShift = deviations.of(UncertainParameter.HUMIDITY);
    temperatureShiftK = deviations.of(UncertainParameter.AIR_TEMPERATURE);
    double airSide = deviations.multiplier(UncertainParameter.AIR_SIDE);
    upperTransfer.setFactor(airSide);
    lowerTransfer.setFactor(airSide);
    solidsHeatJPerM2K = solidsKgPerM2 * SolidsHeat.jPerKgK(material.composition());
    waterHeatJPerM2K = solidsKgPerM2 * WATER_J_PER_KG_K;
    airTimeS = Double.NaN;
    setAir(0);
  }

  void setOpenFaces(OpenFaces faces) {
    open = faces;
    airTimeS = Double.NaN;
  }

  /** Which faces are open now. */
  OpenFaces openFaces() {
    return open;
  }

  /** Whether the air never changes. */
  boolean inConstantRoom() {
    return constantRoom;
  }

  /**
   * The water activity a film would come to rest at in the air of a moment, lying as it does now:
   * {@code p_v/p_sat(T_film)} at the temperature at which air and bench keep a film that loses
   * nothing. It is the air's humidity but on a bench that is warmer or cooler.
   */
  double restingActivity(double timeS) {
    if (!constantRoom) {
      setAir(timeS);
    }
    restingTemperatureK = airTemperatureK;
    // On a plate as warm as the air it is, too; that saves a tenth of a forecast in a logged room.
    if (!open.onPlate() || benchHereK == airTemperatureK) {
      return airHumidity;
    }
    double vapourPa = upperTransfer.airVapourPressurePa();
    double filmK = airTemperatureK;
    for (int round = 0; round < STEADY_ROUNDS; round++) {
      upperTransfer.evaluate(filmK, vapourPa / SATURATION.pa(filmK));
      double fromAir = upperTransfer.convectionWPerM2K() + upperTransfer.radiationWPerM2K();
      filmK = (fromAir * airTemperatureK + benchWPerM2K * benchHereK) / (fromAir + benchWPerM2K);
    }
    restingTemperatureK = filmK;
    return Math.min(1, vapourPa / SATURATION.pa(filmK));
  }

  /** The temperature of film and plate at once after the pour (K); the plate had the air's. */
  double startTemperatureK(double pasteTemperatureK, double startMoisture) {
    double film = solidsHeatJPerM2K + startMoisture * waterHeatJPerM2K;
    return (film * pasteTemperatureK + plateHeatJPerM2K * airTemperatureK)
        / (film + plateHeatJPerM2K);
  }

  /**
   * The air as this case has it: shifted, its humidity cut off at 0 and 1, beyond which no air is.
   * The bench is shifted alike, for what was noted is how much warmer it is than the air.
   */
  private void setAir(double timeS) {
    if (timeS == airTimeS) {
      return;
    }
    airTimeS = timeS;
    AirState air = room.at(timeS);
    airTemperatureK = air.temperatureK() + temperatureShiftK;
    airHumidity = Math.min(1, Math.max(0, air.relativeHumidity() + humidityShift));
    double speedMPerS = Math.max(STILLEST_M_PER_S, air.speedMPerS());
    upperTransfer.setAir(airTemperatureK, airHumidity, speedMPerS);
    if (constantRoom || !open.onPlate()) {
      lowerTransfer.setAir(airTemperatureK, airHumidity, speedMPerS);
    }
    benchHereK =
        benchTemperatureK.isPresent()
            ? benchTemperatureK.getAsDouble() + temperatureShiftK
            : airTemperatureK;
    double apart = (benchHereK - airTemperatureK) / KEPT_FROM_K;
    double kept = -Math.expm1(-apart * apart);
    benchWPerM2K =
        benchFactor * (BENCH_W_PER_M2K + kept * (KEPT_BENCH_W_PER_M2K - BENCH_W_PER_M2K));
  }

  /** The activity at a face; at a closed one nothing is exchanged and nothing looked up. */
  private double activity(boolean isOpen, double moisture, double temperatureK) {
    return isOpen ? isotherm.activity(moisture / held(temperatureK)) : Double.NaN;
  }

  private double activitySlope(double moisture, double temperatureK) {
    double held = held(temperatureK);
    return isotherm.activitySlope(moisture / held) / held;
  }

  /** What the table's moisture is multiplied by in this case at a temperature. */
  private double held(double temperatureK) {
    return isothermFactor * FilmIsotherm.warmth(temperatureK);
  }

  /** Temperature of the film where it comes to rest, as last asked for (K). */
  double restingTemperatureK() {
    return restingTemperatureK;
  }

  @Override
  public void evaluate(double timeS, double lower, double upper, double mean, double temperatureK) {
    if (!constantRoom) {
      setAir(timeS);
    }
    lowerActivity = activity(open.lower(), lower, temperatureK);
    upperActivity = activity(open.upper(), upper, temperatureK);
    exchange(lowerActivity, upperActivity, mean, temperatureK);
  }

  private void exchange(double atLower, double atUpper, double mean, double temperatureK) {
    double heat = 0;
    double capacity = solidsHeatJPerM2K + mean * waterHeatJPerM2K;
    lowerOutflow = 0;
    upperOutflow = 0;
    if (open.onPlate()) {
      heat += benchWPerM2K * (benchHereK - temperatureK);
      capacity += plateHeatJPerM2K;
    }
    double latent = LATENT_HEAT.jPerKg(temperatureK);
    if (open.upper()) {
      upperTransfer.evaluate(temperatureK, atUpper);
      upperOutflow = upperTransfer.vapourFluxKgPerM2S();
      heat += received(upperTransfer, temperatureK) - latent * upperOutflow;
    }
    if (open.lower()) {
      PlateTransfer transfer = open.upper() ? lowerTransfer : upperTransfer;
      transfer.evaluate(temperatureK, atLower);
      lowerOutflow = transfer.vapourFluxKgPerM2S();
      heat += received(transfer, temperatureK) - latent * lowerOutflow;
    }
    borderRate = heat / capacity;
  }

  private double received(PlateTransfer transfer, double temperatureK) {
    return (transfer.convectionWPerM2K() + transfer.radiationWPerM2K())
        * (airTemperatureK - temperatureK);
  }

  @Override
  public void linearise(
      double timeS, double lower, double upper, double mean, double temperatureK) {
    if (!constantRoom) {
      setAir(timeS);
    }
    double lowerOutflowHere = lowerOutflow;
    double upperOutflowHere = upperOutflow;
    double borderRateHere = borderRate;
    double warmerK = temperatureK + TEMPERATURE_STEP_K;
    exchange(
        activity(open.lower(), lower, warmerK),
        activity(open.upper(), upper, warmerK),
        mean,
        warmerK);
    keep(Argument.BORDER);
    if (open.lower()) {
      exchange(lowerActivity - ACTIVITY_STEP, upperActivity, mean, temperatureK);
      keep(Argument.LOWER);
    }
    if (open.upper()) {
      exchange(lowerActivity, upperActivity - ACTIVITY_STEP, mean, temperatureK);
      keep(Argument.UPPER);
    }
    // The last, for the air of later on stays until another is asked for.
    if (!constantRoom) {
      setAir(timeS + TIME_STEP_S);
      exchange(lowerActivity, upperActivity, mean, temperatureK);
      keep(Argument.TIME);
    }
    lowerOutflow = lowerOutflowHere;
    upperOutflow = upperOutflowHere;
    borderRate = borderRateHere;
    difference(Argument.TIME, constantRoom ? 0 : 1 / TIME_STEP_S);
    difference(Argument.BORDER, 1 / TEMPERATURE_STEP_K);
    difference(
        Argument.LOWER, open.lower() ? -activitySlope(lower, temperatureK) / ACTIVITY_STEP : 0);
    difference(
        Argument.UPPER, open.upper() ? -activitySlope(upper, temperatureK) / ACTIVITY_STEP : 0);
    double capacity =
        solidsHeatJPerM2K + mean * waterHeatJPerM2K + (open.onPlate() ? plateHeatJPerM2K : 0);
    slopes[Result.BORDER_RATE.ordinal()][Argument.MEAN.ordinal()] =
        -borderRate * waterHeatJPerM2K / capacity;
  }

  private void keep(Argument by) {
    int argument = by.ordinal();
    slopes[Result.LOWER_OUTFLOW.ordinal()][argument] = lowerOutflow;
    slopes[Result.UPPER_OUTFLOW.ordinal()][argument] = upperOutflow;
    slopes[Result.BORDER_RATE.ordinal()][argument] = borderRate;
  }

  /** Turns the results kept at a moved argument into derivatives. */
  private void difference(Argument by, double perStep) {
    int argument = by.ordinal();
    difference(Result.LOWER_OUTFLOW, argument, lowerOutflow, perStep);
    difference(Result.UPPER_OUTFLOW, argument, upperOutflow, perStep);
    difference(Result.BORDER_RATE, argument, borderRate, perStep);
  }

  private void difference(Result of, int argument, double here, double perStep) {
    double[] row = slopes[of.ordinal()];
    row[argument] = (row[argument] - here) * perStep;
  }

  @Override
  public double lowerOutflow() {
    return lowerOutflow;
  }

  @Override
  public double upperOutflow() {
    return upperOutflow;
  }

  @Override
  public double borderRate() {
    return borderRate;
  }

  @Override
  public double slope(Result of, Argument by) {
    return slopes[of.ordinal()][by.ordinal()];
  }
}
