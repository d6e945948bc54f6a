package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import starchfilm.casting.Casting;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingLimits;
import starchfilm.casting.DryingPlace;
import starchfilm.material.air.AirState;

/**
 * What can be changed about the air over the plate.
 *
 * <p>The air itself can be ordered only where it is the same all the time; of a room that was
 * logged, or swings, only another room of this notebook helps. Limits: 30 to 70 % humidity, up to
 * 35 °C and 0.5 m/s (judged, no source).
 */
final class RoomAdjustments {
  private static final double STILL_M_PER_S = 0.1;
  private static final double BREEZE_M_PER_S = 0.3;
  private static final double FAN_M_PER_S = 0.5;
  private static final double STEP_HUMIDITY = 0.10;
  private static final double DAMPEST = 0.70;
  private static final double DRIEST = 0.30;
  private static final double STEP_K = 3;
  private static final double WARMEST_K = 308.15;

  private RoomAdjustments() {}

  static List<Step> calmer(FaultContext scene, List<DryingPlace> otherPlaces) {
    return draught(scene, Adjustment.CALMER_AIR, BREEZE_M_PER_S, STILL_M_PER_S);
  }

  static List<Step> fan(FaultContext scene, List<DryingPlace> otherPlaces) {
    return draught(scene, Adjustment.FAN, BREEZE_M_PER_S, FAN_M_PER_S);
  }

  private static List<Step> draught(FaultContext scene, Adjustment adjustment, double... speeds) {
    List<Step> steps = new ArrayList<>();
    if (scene.setup().place().room() instanceof ConstantRoom room) {
      double from = room.air().speedMPerS();
      for (double to : speeds) {
        if (adjustment == Adjustment.FAN ? to > from : to < from) {
          steps.add(
              Step.to(
                  adjustment,
                  inAir(scene, with(room.air(), to)),
                  "air speed " + Told.number(from) + " → " + Told.number(to) + " m/s"));
        }
      }
    }
    return steps;
  }

  static List<Step> cover(FaultContext scene, List<DryingPlace> otherPlaces) {
    return humidity(scene, Adjustment.COVER_THE_PLATE, STEP_HUMIDITY, "a cover ajar: ");
  }

  static List<Step> drier(FaultContext scene, List<DryingPlace> otherPlaces) {
    return humidity(scene, Adjustment.DRIER_ROOM, -STEP_HUMIDITY, "");
  }

  private static List<Step> humidity(
      FaultContext scene, Adjustment adjustment, double step, String how) {
    List<Step> steps = new ArrayList<>();
    if (scene.setup().place().room() instanceof ConstantRoom room) {
      double from = room.air().relativeHumidity();
      for (int i = 1; i <= 2; i++) {
        double to = from + i * step;
        if (to <= DAMPEST && to >= DRIEST) {
          AirState air = new AirState(room.air().temperatureK(), to, room.air().speedMPerS());
          steps.add(
              Step.to(
                  adjustment,
                  inAir(scene, air),
                  how + "humidity over the plate " + whole(from) + " → " + whole(to) + " %"));
        }
      }
    }
    return steps;
  }

  static List<Step> warmer(FaultContext scene, List<DryingPlace> otherPlaces) {
    List<Step> steps = new ArrayList<>();
    if (scene.setup().place().room() instanceof ConstantRoom room) {
      for (int i = 1; i <= 2; i++) {
        AirState air = RoomCauses.warmed(room.air(), i * STEP_K);
        if (air.temperatureK() <= WARMEST_K) {
          steps.add(
              Step.to(
                  Adjustment.WARMER_ROOM,
                  inAir(scene, air),
                  "the room "
                      + Told.degrees(room.air().temperatureK())
                      + " → "
                      + Told.celsius(air.temperatureK())
                      + ", with the moisture it has"));
        }
      }
    }
    return steps;
  }

  static List<Step> another(FaultContext scene, List<DryingPlace> otherPlaces) {
    List<Step> steps = new ArrayList<>();
    DryingPlace here = scene.setup().place();
    for (DryingPlace place : otherPlaces) {
      if (!place.name().equals(here.name())) {
        steps.add(
            Step.to(
                Adjustment.ANOTHER_ROOM,
                scene.setup().with(place),
                "dry it in the "
                    + SetupWords.room(scene.setup().with(place))
                    + ", instead of the "
                    + SetupWords.room(scene.setup())));
      }
    }
    return steps;
  }

  private static AirState with(AirState air, double speedMPerS) {
    return new AirState(air.temperatureK(), air.relativeHumidity(), speedMPerS);
  }

  private static Casting inAir(FaultContext scene, AirState air) {
    DryingPlace place = scene.setup().place();
    if (!DryingLimits.AIR_TEMPERATURE.contains(air.temperatureK())) {
      throw new IllegalStateException("no room is advised at " + air.temperatureK() + " K");
    }
    return scene.setup().with(place.with(new ConstantRoom(air)));
  }

  private static String whole(double ratio) {
    return String.format(Locale.ROOT, "%.0f", 100 * ratio);
  }
}
