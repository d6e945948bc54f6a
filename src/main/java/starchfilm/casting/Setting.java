package starchfilm.casting;

import java.util.function.ToDoubleFunction;
import starchfilm.material.air.AirState;
import starchfilm.material.air.WagnerPruss1993;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.Ingredient;
import starchfilm.numerics.evidence.Estimate;

/**
 * A figure of a casting that its maker can set alone, in SI units; everything else stays as it is.
 *
 * <p>An amount of an ingredient is set beside the grams of all others. The air can be set only
 * where it is the same all the time, for nobody can order other weather.
 */
public enum Setting {
  /** Wet thickness, averaged over the plate (m); known as well as before. */
  WET_THICKNESS(Casting::wetThicknessM, Casting::pouredTo),
  /** Unevenness of the pour (ratio). */
  UNEVENNESS(
      casting -> casting.pour().unevenness(),
      (casting, ratio) -> casting.with(casting.pour().withUnevenness(ratio))),
  /** Temperature of the paste when poured (K). */
  PASTE_TEMPERATURE(
      casting -> casting.pour().pasteTemperatureK(),
      (casting, kelvin) -> casting.with(casting.pour().withPasteTemperature(kelvin))),
  /** Dry starch (kg beside what else a kilogram of the paste holds). */
  STARCH(
      casting -> casting.composition().dryStarch(),
      (casting, kg) -> casting.with(casting.composition().with(Ingredient.STARCH, kg))),
  /** Dry starch in the paste (kg per kg), by more or less water. */
  CONCENTRATION(
      casting -> casting.composition().dryStarch(),
      (casting, share) -> casting.with(casting.composition().withStarchInPaste(share))),
  /** Glycerol (kg per kg dry starch). */
  GLYCEROL(Ingredient.GLYCEROL),
  /** Water (kg per kg dry starch). */
  WATER(Ingredient.WATER),
  /** Vinegar, counted by its acetic acid (kg per kg dry starch). */
  VINEGAR(Ingredient.VINEGAR),
  /** Salt (kg per kg dry starch). */
  SALT(Ingredient.SALT),
  /** Top temperature of the cook (K). */
  COOK_TEMPERATURE(
      casting -> casting.cook().topTemperatureK().value(),
      (casting, kelvin) -> {
        Cook cook = casting.cook();
        Estimate top = new Estimate(kelvin, cook.topTemperatureK().sd());
        return casting.with(new Cook(cook.durationS(), top, cook.waterLostKg()));
      }),
  /** Time at the top temperature of the cook (s). */
  COOK_TIME(
      casting -> casting.cook().durationS().value(),
      (casting, seconds) -> {
        Cook cook = casting.cook();
        Estimate time = new Estimate(seconds, cook.durationS().sd());
        return casting.with(new Cook(time, cook.topTemperatureK(), cook.waterLostKg()));
      }),
  /** Temperature of the air (K); warmed or cooled air keeps its vapour. */
  AIR_TEMPERATURE(
      casting -> casting.room().at(0).temperatureK(),
      (casting, kelvin) -> {
        AirState air = casting.room().at(0);
        WagnerPruss1993 saturation = new WagnerPruss1993();
        double vapour = air.relativeHumidity() * saturation.pa(air.temperatureK());
        return inAir(
            casting, new AirState(kelvin, vapour / saturation.pa(kelvin), air.speedMPerS()));
      }),
  /** Relative humidity of the air (ratio). */
  HUMIDITY(
      casting -> casting.room().at(0).relativeHumidity(),
      (casting, ratio) -> {
        AirState air = casting.room().at(0);
        return inAir(casting, new AirState(air.temperatureK(), ratio, air.speedMPerS()));
      }),
  /** Speed of the air (m/s). */
  AIR_SPEED(
      casting -> casting.room().at(0).speedMPerS(),
      (casting, speed) -> inAir(casting, casting.room().at(0).withSpeed(speed)));

  private interface Setter {
    Casting with(Casting casting, double figure);
  }

  private final ToDoubleFunction<Casting> figure;
  private final Setter setter;

  Setting(ToDoubleFunction<Casting> figure, Setter setter) {
    this.figure = figure;
    this.setter = setter;
  }

  Setting(Ingredient ingredient) {
    this(
        casting -> casting.composition().perStarch(ingredient),
        (casting, perStarch) ->
            casting.with(
                casting
                    .composition()
                    .with(ingredient, perStarch * casting.composition().dryStarch())));
  }

  /** Whether it can be set in a casting. */
  public boolean isFree(Casting casting) {
    return switch (this) {
      case AIR_TEMPERATURE, HUMIDITY, AIR_SPEED -> casting.room().isConstant();
      default -> true;
    };
  }

  /** What it is in a casting, in its SI unit; of air that varies, what it is at the pour. */
  public double of(Casting casting) {
    return figure.applyAsDouble(casting);
  }

  /** The same casting with another figure, in its SI unit. */
  public Casting set(Casting casting, double to) {
    return setter.with(casting, to);
  }

  private static Casting inAir(Casting casting, AirState air) {
    return casting.with(casting.place().with(new ConstantRoom(air)));
  }
}
