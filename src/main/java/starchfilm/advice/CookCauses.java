package starchfilm.advice;

import static starchfilm.numerics.units.Units.MINUTE_S;

import java.util.function.ToDoubleFunction;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Cook;
import starchfilm.numerics.units.Units;

/**
 * The cook, held against gelatinisation and the cook guide of its starches.
 *
 * <p>Limits: {@link StarchKind}; a kind with a share under 2 % does not count (judged). Paste boils
 * near 100 °C at sea level; bubbles form from 95 °C on (common practice, no source). Acid that
 * costs under a twelfth of the strength does not show, a quarter does (judged).
 */
final class CookCauses {
  private static final double ENOUGH_OF_THE_TIME = 0.8;
  private static final double FAR_TOO_SHORT = 0.4;
  private static final double FAR_TOO_HOT_K = 6;
  private static final double FAR_TOO_LONG = 2;
  private static final double SIMMERS_C = 94;
  private static final double BOILS_C = 99;
  private static final double UNCUT = 0.92;
  private static final double CUT = 0.75;

  private CookCauses() {}

  static Reading undercooked(FaultContext scene) {
    return temperatureTooLow(scene).orWorse(timeTooShort(scene));
  }

  private static Reading temperatureTooLow(FaultContext scene) {
    if (!scene.notes("cook.top_C")) {
      return Reading.untold("how hot the paste got");
    }
    double top = topC(scene);
    double end = worst(scene, kind -> kind.gelatinisationEndK() - Units.ZERO_CELSIUS_K);
    double guide = worst(scene, kind -> kind.cookGuide().topCelsius().min());
    return Reading.of(
        top,
        guide,
        end,
        "cooked at "
            + Told.number(top)
            + " °C; this starch is cooked above "
            + Told.number(end)
            + " °C and is heated to "
            + Told.number(guide)
            + " °C to be sure");
  }

  private static Reading timeTooShort(FaultContext scene) {
    if (!scene.notes("cook.minutes")) {
      return Reading.untold("how long it cooked");
    }
    double minutes = minutes(scene);
    double least = worst(scene, kind -> kind.cookGuide().holdMinutes().min());
    return Reading.of(
        minutes / least,
        ENOUGH_OF_THE_TIME,
        FAR_TOO_SHORT,
        "cooked for "
            + Told.number(minutes)
            + " min; this starch needs "
            + Told.number(least)
            + " min");
  }

  static Reading overcooked(FaultContext scene) {
    return tooHot(scene).orWorse(tooLong(scene));
  }

  private static Reading tooHot(FaultContext scene) {
    if (!scene.notes("cook.top_C")) {
      return Reading.untold("how hot the paste got");
    }
    double most = worst(scene, kind -> kind.cookGuide().topCelsius().max());
    return Reading.of(
        topC(scene),
        most,
        most + FAR_TOO_HOT_K,
        "cooked at "
            + Told.number(topC(scene))
            + " °C; up to "
            + Told.number(most)
            + " °C is usual for this starch");
  }

  private static Reading tooLong(FaultContext scene) {
    if (!scene.notes("cook.minutes")) {
      return Reading.untold("how long it cooked");
    }
    double most = worst(scene, kind -> kind.cookGuide().holdMinutes().max());
    return Reading.of(
        minutes(scene) / most,
        1,
        FAR_TOO_LONG,
        "cooked for "
            + Told.number(minutes(scene))
            + " min; up to "
            + Told.number(most)
            + " min is usual for this starch");
  }

  static Reading boiled(FaultContext scene) {
    if (!scene.notes("cook.top_C")) {
      return Reading.untold("how hot the paste got");
    }
    return Reading.of(
        topC(scene),
        SIMMERS_C,
        BOILS_C,
        "cooked at " + Told.number(topC(scene)) + " °C; paste bubbles from about 95 °C on");
  }

  static Reading acidCut(FaultContext scene) {
    if (!scene.notes("recipe.vinegar.mass_g")
        || !scene.notes("cook.top_C")
        || !scene.notes("cook.minutes")) {
      return Reading.untold("how much vinegar went in, or how hot and how long it cooked");
    }
    double left = scene.outlook().film().acid().strengthFactor().middle();
    return Reading.of(
        left,
        UNCUT,
        CUT,
        "hot acid leaves " + Told.percent(left) + " of the strength a film has without vinegar");
  }

  static double topC(FaultContext scene) {
    return scene.setup().cook().topTemperatureK().value() - Units.ZERO_CELSIUS_K;
  }

  private static double minutes(FaultContext scene) {
    Cook cook = scene.setup().cook();
    return cook.durationS().value() / MINUTE_S;
  }

  private static double worst(FaultContext scene, ToDoubleFunction<StarchKind> figure) {
    return scene.setup().composition().most(figure);
  }
}
