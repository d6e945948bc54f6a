package starchfilm.advice;

import java.util.Optional;
import starchfilm.advice.Cause.PutRight;
import starchfilm.casting.Setting;
import starchfilm.film.PlasticiserWindow;

/**
 * Glycerol, and the salt that comes with it.
 *
 * <p>Limits: {@link PlasticiserWindow}; parting of starch and glycerol and salt as in {@link
 * starchfilm.film.FilmCaution}. How far on either side of a limit the trouble starts and is clear
 * is judged, no source.
 */
final class GlycerolCauses {
  private static final String GLYCEROL = "recipe.glycerol";

  /** Comfortable in rooms of 35 to 75 % humidity: between both limits everywhere (judged). */
  private static final double COMFORTABLE = 0.30;

  private static final double MARGIN = 0.05;
  private static final double CLEARLY_TACKY = 0.02;
  private static final double PARTS_FROM = 0.30;
  private static final double PARTED = 0.50;
  private static final double SALT_IGNORED = 0.02;
  private static final double SALT_HIGH = 0.05;

  private GlycerolCauses() {}

  static Reading tooLittle(FaultContext scene) {
    if (!notedAmount(scene)) {
      return Reading.untold("how much glycerol went in");
    }
    double humidity = scene.driestHumidity();
    double limit = PlasticiserWindow.cracksBelow(humidity);
    return Reading.of(
        level(scene),
        limit + MARGIN,
        limit - MARGIN,
        Told.level(level(scene))
            + " glycerol per 100 g dry starch; in "
            + Told.percent(humidity)
            + " humidity film is brittle below about "
            + Told.level(limit));
  }

  static Reading tooMuch(FaultContext scene) {
    if (!notedAmount(scene)) {
      return Reading.untold("how much glycerol went in");
    }
    double humidity = scene.dampestHumidity();
    double limit = PlasticiserWindow.tackyAbove(humidity);
    return Reading.of(
        level(scene),
        limit - MARGIN,
        limit + CLEARLY_TACKY,
        Told.level(level(scene))
            + " glycerol per 100 g dry starch; in "
            + Told.percent(humidity)
            + " humidity film is tacky above about "
            + Told.level(limit));
  }

  static Reading parted(FaultContext scene) {
    if (!notedAmount(scene)) {
      return Reading.untold("how much glycerol went in");
    }
    return Reading.of(
        level(scene),
        PARTS_FROM,
        PARTED,
        Told.level(level(scene))
            + " glycerol per 100 g dry starch; from 30 g on, starch and glycerol may"
            + " part, above 50 g they do");
  }

  static Reading salt(FaultContext scene) {
    double salt = scene.setup().composition().saltFractionOfDry();
    if (!scene.notes(GLYCEROL + ".salt_pct") || !notedAmount(scene)) {
      return Reading.untold("how much salt the glycerol holds");
    }
    return Reading.of(
        salt,
        SALT_IGNORED,
        SALT_HIGH,
        "salt is "
            + Told.percent(salt)
            + " of the dry solids; under 2 % has no visible effect, over 5 % has");
  }

  static Optional<PutRight> comfortable(FaultContext scene) {
    return Optional.of(
        new PutRight(
            Setting.GLYCEROL.set(scene.setup(), COMFORTABLE),
            "with " + Told.level(COMFORTABLE) + " glycerol"));
  }

  private static double level(FaultContext scene) {
    return scene.setup().composition().glycerolPerDryStarch();
  }

  private static boolean notedAmount(FaultContext scene) {
    return scene.notes(GLYCEROL + ".mass_g");
  }
}
