package starchfilm.advice;

import static starchfilm.numerics.units.Units.HOUR_S;

import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.advice.Cause.PutRight;
import starchfilm.casting.Casting;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.Spot;
import starchfilm.casting.Use;
import starchfilm.drying.Milestone;
import starchfilm.material.air.AirState;
import starchfilm.material.air.SaturationPressure;
import starchfilm.material.air.WagnerPruss1993;

/**
 * The air a plate dries in and the air the film is used in.
 *
 * <p>Limits: a still room takes about 0.05 to 0.08 kg of water an hour off a square metre; from 0.2
 * on a fan or warm dry air is at work (judged). Air that could take up less than 300 Pa of vapour
 * is a cool, damp shed; an ordinary room of 20 °C and 50 % could take up 1200 Pa (judged).
 */
final class RoomCauses {
  private static final SaturationPressure SATURATION = new WagnerPruss1993();

  private static final double STILL_ROOM_KG_PER_M2H = 0.07;
  private static final double FAN_KG_PER_M2H = 0.2;
  private static final double CALM_HUMIDITY = 0.60;

  private static final double READY_TO_DRY_PA = 1_000;
  private static final double SLOW_PA = 300;
  private static final double ORDINARY_K = 293.15;
  private static final double ORDINARY_HUMIDITY = 0.50;

  private static final double DAMP_FROM = 0.60;
  private static final double DAMP = 0.75;
  private static final double DRY_FROM = 0.45;
  private static final double DRY = 0.30;

  private RoomCauses() {}

  static Reading tooFast(FaultContext scene) {
    if (!scene.notes("room.air_C") || !scene.notes("room.rh_pct")) {
      return Reading.untold("how warm and damp the room was");
    }
    double pace = evaporationKgPerM2H(scene);
    return Reading.of(
        pace,
        STILL_ROOM_KG_PER_M2H,
        FAN_KG_PER_M2H,
        "it dried at "
            + Told.number(1e3 * pace)
            + " g per hour and square metre on average; a still room takes up 50 to"
            + " 80 g");
  }

  private static double evaporationKgPerM2H(FaultContext scene) {
    Casting setup = scene.setup();
    double waterKgPerM2 =
        setup.wetThicknessM()
            * setup.composition().pasteDensityKgPerM3()
            * setup.composition().water();
    return waterKgPerM2 / (scene.outlook().timeS(Spot.NOMINAL, Milestone.DRY_THROUGH) / HOUR_S);
  }

  static Optional<PutRight> calm(FaultContext scene) {
    AirState air = meanAir(scene);
    if (air.relativeHumidity() >= CALM_HUMIDITY
        && air.speedMPerS() <= DryingPlace.STILL_AIR_M_PER_S) {
      return Optional.empty();
    }
    AirState calm =
        new AirState(
            air.temperatureK(),
            Math.max(CALM_HUMIDITY, air.relativeHumidity()),
            Math.min(DryingPlace.STILL_AIR_M_PER_S, air.speedMPerS()));
    return Optional.of(
        new PutRight(
            scene.setup().with(in(scene, calm)),
            "in still air of " + Told.percent(calm.relativeHumidity())));
  }

  static Reading slow(FaultContext scene) {
    if (!scene.notes("room.air_C") || !scene.notes("room.rh_pct")) {
      return Reading.untold("how warm and damp the room was");
    }
    AirState air = meanAir(scene);
    double room = (1 - air.relativeHumidity()) * SATURATION.pa(air.temperatureK());
    double ordinary = (1 - ORDINARY_HUMIDITY) * SATURATION.pa(ORDINARY_K);
    return Reading.of(
        room,
        READY_TO_DRY_PA,
        SLOW_PA,
        "the air of "
            + Told.celsius(air.temperatureK())
            + " and "
            + Told.percent(air.relativeHumidity())
            + " can take up "
            + Told.percent(room / ordinary)
            + " of what a room of 20 °C and 50 % can");
  }

  static Optional<PutRight> ordinary(FaultContext scene) {
    AirState air = meanAir(scene);
    if (air.temperatureK() >= ORDINARY_K && air.relativeHumidity() <= ORDINARY_HUMIDITY) {
      return Optional.empty();
    }
    AirState ordinary =
        new AirState(
            Math.max(ORDINARY_K, air.temperatureK()),
            Math.min(ORDINARY_HUMIDITY, air.relativeHumidity()),
            air.speedMPerS());
    return Optional.of(
        new PutRight(
            scene.setup().with(in(scene, ordinary)),
            "in a room of "
                + Told.celsius(ordinary.temperatureK())
                + " and "
                + Told.percent(ordinary.relativeHumidity())));
  }

  static Reading damp(FaultContext scene) {
    double humidity = scene.dampestHumidity();
    return Reading.of(
        humidity,
        DAMP_FROM,
        DAMP,
        "the film was in air of " + Told.percent(humidity) + " humidity; from 60 % on it softens");
  }

  static Reading dry(FaultContext scene) {
    double humidity = scene.driestHumidity();
    return Reading.of(
        humidity,
        DRY_FROM,
        DRY,
        "the film was in air of " + Told.percent(humidity) + " humidity; below 45 % it stiffens");
  }

  /** The same film in air of 50 %, on the plate and in use. */
  static Optional<PutRight> middling(FaultContext scene) {
    AirState air = meanAir(scene);
    AirState middling = new AirState(air.temperatureK(), ORDINARY_HUMIDITY, air.speedMPerS());
    Use use = scene.setup().use();
    return Optional.of(
        new PutRight(
            scene
                .setup()
                .with(in(scene, middling))
                .with(new Use(ORDINARY_HUMIDITY, use.temperatureK(), use.ageS())),
            "in air of 50 %"));
  }

  private static DryingPlace in(FaultContext scene, AirState air) {
    DryingPlace place = scene.setup().place();
    return new DryingPlace(
        place.name(), new ConstantRoom(air), RoomUncertainty.NONE, OptionalDouble.empty());
  }

  /** The air averaged over the first three days. */
  static AirState meanAir(FaultContext scene) {
    return meanAir(scene.setup().place());
  }

  static AirState meanAir(DryingPlace place) {
    int hours = 72;
    double temperature = 0;
    double humidity = 0;
    double speed = 0;
    for (int hour = 0; hour < hours; hour++) {
      AirState air = place.room().at(hour * HOUR_S);
      temperature += air.temperatureK() / hours;
      humidity += air.relativeHumidity() / hours;
      speed += air.speedMPerS() / hours;
    }
    return new AirState(temperature, humidity, speed);
  }

  static String words(AirState air) {
    return Told.celsius(air.temperatureK())
        + " and "
        + Long.toString(Math.round(100 * air.relativeHumidity()))
        + " % ("
        + draught(air)
        + ")";
  }

  private static String draught(AirState air) {
    return air.speedMPerS() <= DryingPlace.STILL_AIR_M_PER_S
        ? "still"
        : "draught of " + Told.number(air.speedMPerS()) + " m/s";
  }
}
