package starchfilm.advice;

import static starchfilm.numerics.units.Units.MINUTE_S;

import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingPlace;
import starchfilm.material.recipe.Cook;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.units.Units;

/**
 * What can be changed at the stove: to the guide of the starch that needs most, never to a boil. A
 * starch that an open pan cannot cook is not advised to be cooked in one.
 */
final class CookAdjustments {
  /** The hottest cook in an open pan that is advised (C): short of a boil. */
  static final double HOTTEST_C = 95;

  private static final double NOTICEABLE_K = 1;

  private CookAdjustments() {}

  static List<Step> hotter(FaultContext scene, List<DryingPlace> otherPlaces) {
    Casting setup = scene.setup();
    double from = CookCauses.topC(scene);
    double to =
        Math.min(HOTTEST_C, CookCauses.worst(setup, kind -> kind.cookGuide().topCelsius().min()));
    if (to < from + NOTICEABLE_K || !CookCauses.openPanWorks(setup)) {
      return List.of();
    }
    return List.of(top(Adjustment.COOK_HOTTER, setup, from, to));
  }

  static List<Step> cooler(FaultContext scene, List<DryingPlace> otherPlaces) {
    Casting setup = scene.setup();
    double from = CookCauses.topC(scene);
    double least = CookCauses.worst(setup, kind -> kind.cookGuide().topCelsius().min());
    double most = CookCauses.worst(setup, kind -> kind.cookGuide().topCelsius().max());
    double to = Math.min((least + most) / 2, HOTTEST_C - NOTICEABLE_K);
    if (to > from - NOTICEABLE_K || !CookCauses.openPanWorks(setup)) {
      return List.of();
    }
    return List.of(top(Adjustment.COOK_COOLER, setup, from, to));
  }

  private static Step top(Adjustment adjustment, Casting setup, double fromC, double toC) {
    Cook cook = setup.cook();
    Estimate to = new Estimate(toC + Units.ZERO_CELSIUS_K, cook.topTemperatureK().sd());
    return Step.to(
        adjustment,
        setup.with(new Cook(cook.durationS(), to, cook.waterLostKg())),
        "top of the cook " + Told.number(fromC) + " → " + Told.number(toC) + " °C");
  }

  static List<Step> longer(FaultContext scene, List<DryingPlace> otherPlaces) {
    double from = scene.setup().cook().durationS().value() / MINUTE_S;
    double to = CookCauses.worst(scene.setup(), kind -> kind.cookGuide().holdMinutes().min());
    return to > from ? List.of(time(Adjustment.COOK_LONGER, scene.setup(), from, to)) : List.of();
  }

  static List<Step> shorter(FaultContext scene, List<DryingPlace> otherPlaces) {
    double from = scene.setup().cook().durationS().value() / MINUTE_S;
    double to = CookCauses.worst(scene.setup(), kind -> kind.cookGuide().holdMinutes().min());
    return to < from ? List.of(time(Adjustment.COOK_SHORTER, scene.setup(), from, to)) : List.of();
  }

  private static Step time(Adjustment adjustment, Casting setup, double fromMin, double toMin) {
    Cook cook = setup.cook();
    Estimate to = new Estimate(toMin * MINUTE_S, cook.durationS().sd());
    return Step.to(
        adjustment,
        setup.with(new Cook(to, cook.topTemperatureK(), cook.waterLostKg())),
        "cook for " + Told.number(fromMin) + " → " + Told.number(toMin) + " min");
  }
}
