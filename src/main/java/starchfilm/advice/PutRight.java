package starchfilm.advice;

import static starchfilm.numerics.figures.ReaderUnit.CELSIUS;
import static starchfilm.numerics.figures.ReaderUnit.MILLIMETRE;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.RoomUncertainty;
import starchfilm.casting.Setting;
import starchfilm.casting.Use;
import starchfilm.change.Limits;
import starchfilm.material.air.AirState;

/**
 * A cause put right on paper: the set-up with a figure that does no harm. The figures are judged.
 *
 * @param words the set-up in a clause
 */
record PutRight(Casting setup, String words) {
  /** An ordinary room (K, and ratio). */
  static final double ORDINARY_K = 293.15;

  static final double ORDINARY_HUMIDITY = 0.50;

  private static final double CALM_HUMIDITY = 0.60;

  /** Comfortable in rooms of 35 to 75 % humidity: between brittle and tacky everywhere. */
  private static final double COMFORTABLE_GLYCEROL = 0.30;

  private static final double MODEST_DRY_M = 100e-6;
  private static final double STURDY_EDGE_M = 80e-6;

  static Optional<PutRight> glycerol(FaultContext scene) {
    return Optional.of(
        new PutRight(
            Setting.GLYCEROL.set(scene.setup(), COMFORTABLE_GLYCEROL),
            "with " + AdviceFigure.level(COMFORTABLE_GLYCEROL) + " glycerol"));
  }

  static Optional<PutRight> thinner(FaultContext scene) {
    return poured(scene, Math.min(1, MODEST_DRY_M / AdviceFigure.DRY_THICKNESS.of(scene)));
  }

  static Optional<PutRight> thicker(FaultContext scene) {
    return poured(scene, Math.max(1, STURDY_EDGE_M / AdviceFigure.THIN_EDGE.of(scene)));
  }

  private static Optional<PutRight> poured(FaultContext scene, double times) {
    double wetM = scene.setup().wetThicknessM() * times;
    return times == 1
        ? Optional.empty()
        : Optional.of(
            new PutRight(
                scene.setup().pouredTo(wetM), "poured " + MILLIMETRE.brief(wetM) + " wet"));
  }

  static Optional<PutRight> level(FaultContext scene) {
    return scene.notes("pour.unevenness_pct") && AdviceFigure.UNEVENNESS.of(scene) > Limits.LEVEL
        ? Optional.of(
            new PutRight(Setting.UNEVENNESS.set(scene.setup(), Limits.LEVEL), "on a level plate"))
        : Optional.empty();
  }

  static Optional<PutRight> calmAir(FaultContext scene) {
    AirState air = scene.meanAir();
    double humidity = Math.max(CALM_HUMIDITY, air.relativeHumidity());
    double speed = Math.min(DryingPlace.STILL_AIR_M_PER_S, air.speedMPerS());
    return inAir(
        scene,
        new AirState(air.temperatureK(), humidity, speed),
        "in still air of " + PERCENT.brief(humidity));
  }

  static Optional<PutRight> ordinaryRoom(FaultContext scene) {
    AirState air = scene.meanAir();
    double kelvin = Math.max(ORDINARY_K, air.temperatureK());
    double humidity = Math.min(ORDINARY_HUMIDITY, air.relativeHumidity());
    return inAir(
        scene,
        new AirState(kelvin, humidity, air.speedMPerS()),
        "in a room of " + CELSIUS.brief(kelvin) + " and " + PERCENT.brief(humidity));
  }

  /** The film in air of 50 %, on the plate and in use. */
  static Optional<PutRight> middlingAir(FaultContext scene) {
    AirState air = scene.meanAir();
    Use use = scene.setup().use();
    Casting dried =
        dried(scene, new AirState(air.temperatureK(), ORDINARY_HUMIDITY, air.speedMPerS()));
    return Optional.of(
        new PutRight(
            dried.with(new Use(ORDINARY_HUMIDITY, use.temperatureK(), use.ageS())),
            "in air of 50 %"));
  }

  private static Optional<PutRight> inAir(FaultContext scene, AirState air, String words) {
    return air.equals(scene.meanAir())
        ? Optional.empty()
        : Optional.of(new PutRight(dried(scene, air), words));
  }

  private static Casting dried(FaultContext scene, AirState air) {
    return scene
        .setup()
        .with(
            new DryingPlace(
                scene.setup().place().name(),
                new ConstantRoom(air),
                RoomUncertainty.NONE,
                OptionalDouble.empty()));
  }
}
