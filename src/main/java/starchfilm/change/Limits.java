package starchfilm.change;

import starchfilm.numerics.units.Units;

/**
 * The limits of changing a casting at a kitchen table; common practice or judged, no source, unless
 * said otherwise.
 */
public final class Limits {
  /** The thinnest pour that levels by hand (m). */
  public static final double THINNEST_WET_M = 1e-3;

  /** The thickest pour (m): without a rim a pool of paste stands no higher than about 5 mm. */
  public static final double THICKEST_WET_M = 4.5e-3;

  /** A plate is level where thin edge and thick spot lie so far from the average (ratio). */
  public static final double LEVEL = 0.10;

  /** Glycerol that differs by less is the same (kg per kg dry starch). */
  static final double SAME_GLYCEROL = 0.02;

  /** Air in a light draught (m/s). */
  static final double BREEZE_M_PER_S = 0.3;

  /** One step of relative humidity (ratio). */
  static final double HUMIDITY_STEP = 0.10;

  /** The dampest air that is asked for (ratio); beyond, mould. */
  static final double DAMPEST = 0.70;

  /** The driest air that is asked for (ratio). */
  static final double DRIEST = 0.30;

  /** One step of the air's temperature (K). */
  static final double WARMTH_STEP_K = 3;

  /** The warmest room that is asked for (K). */
  static final double WARMEST_K = 35 + Units.ZERO_CELSIUS_K;

  private Limits() {}
}
