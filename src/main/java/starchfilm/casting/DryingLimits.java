package starchfilm.casting;

import starchfilm.material.air.AirState;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.evidence.ValidRange;

/**
 * What the drying model takes at all; outside, it refuses with a sentence.
 *
 * <p>Below freezing the water would freeze, near boiling it would boil, and a layer thinner than a
 * hundredth of a millimetre or thicker than half a decimetre is no cast film. The limits are ours
 * (assumed, no source).
 */
public final class DryingLimits {
  /** Wet thickness (m). */
  public static final ValidRange WET_THICKNESS = new ValidRange("wet thickness", 1e-5, 0.05, "m");

  /** Temperature of the air (K): 1 to 90 C. */
  public static final ValidRange AIR_TEMPERATURE =
      new ValidRange("air temperature", 274.15, 363.15, "K");

  /** Temperature of the paste and of the bench (K): 1 to 98 C. */
  public static final ValidRange PASTE_TEMPERATURE =
      new ValidRange("paste or bench temperature", 274.15, 371.15, "K");

  /** Relative humidity (ratio). */
  public static final ValidRange HUMIDITY = new ValidRange("relative humidity", 0, 1, "");

  /** Air speed (m/s). */
  public static final ValidRange AIR_SPEED = new ValidRange("air speed", 0, 20, "m/s");

  /** Unevenness (ratio). */
  public static final ValidRange UNEVENNESS = new ValidRange("unevenness", 0, 0.9, "");

  /** Moisture of the fresh paste (kg water per kg dry solids). */
  public static final ValidRange START_MOISTURE =
      new ValidRange("moisture of the paste", 0.05, 200, "kg per kg dry solids");

  private DryingLimits() {}

  /**
   * Refuses a casting whose drying the model does not take.
   *
   * @param casting the casting
   * @throws IllegalArgumentException where a figure lies outside; the message is a sentence for the
   *     reader
   */
  public static void require(Casting casting) {
    require(WET_THICKNESS, casting.wetThicknessM());
    require(UNEVENNESS, casting.pour().unevenness());
    require(PASTE_TEMPERATURE, casting.pour().pasteTemperatureK());
    require(START_MOISTURE, casting.composition().waterKgPerKgDry());
    casting.benchTemperatureK().ifPresent(given -> require(PASTE_TEMPERATURE, given));
    require(casting.room().at(0));
  }

  private static void require(ValidRange range, double given) {
    Refusal.unless(
        range.contains(given),
        range.quantity(),
        given,
        range.min() + " to " + range.max() + (range.unit().isEmpty() ? "" : " " + range.unit()));
  }

  private static void require(AirState air) {
    require(AIR_TEMPERATURE, air.temperatureK());
    require(HUMIDITY, air.relativeHumidity());
    require(AIR_SPEED, air.speedMPerS());
  }
}
