package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import starchfilm.casting.DryingPlace;
import starchfilm.film.PasteBody;
import starchfilm.film.PlasticiserWindow;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.Ingredient;

/**
 * What can be changed in the pot, each ingredient on its own, the grams of all others kept.
 *
 * <p>Limits: never more than {@link #MOST_GLYCEROL}, and within the window between brittle and
 * tacky of {@link PlasticiserWindow} in the air the film is used in.
 */
final class PasteAdjustments {
  /** The most glycerol that is advised (kg per kg dry starch); beyond, film is tacky and parts. */
  static final double MOST_GLYCEROL = 0.45;

  private static final double[] LEVELS = {0.20, 0.25, 0.30, 0.35, 0.40, 0.45};
  private static final double NOTICEABLE = 0.02;
  private static final double CAST_RANGE_ENDS = 0.75;
  private static final double WELL_WITHIN_CAST_RANGE = 0.6;
  private static final double CLEAR_OF_SETTLING = 1.2;
  private static final double SALTY = 0.02;

  private PasteAdjustments() {}

  static List<Step> moreGlycerol(FaultContext scene, List<DryingPlace> otherPlaces) {
    return glycerol(scene, Adjustment.MORE_GLYCEROL, 1);
  }

  static List<Step> lessGlycerol(FaultContext scene, List<DryingPlace> otherPlaces) {
    return glycerol(scene, Adjustment.LESS_GLYCEROL, -1);
  }

  private static List<Step> glycerol(FaultContext scene, Adjustment adjustment, int direction) {
    double from = scene.setup().composition().glycerolPerDryStarch();
    double humidity = scene.setup().use().relativeHumidity();
    double least = PlasticiserWindow.cracksBelow(humidity);
    double most = Math.min(MOST_GLYCEROL, PlasticiserWindow.tackyAbove(humidity) - NOTICEABLE);
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < LEVELS.length; i++) {
      double to = direction > 0 ? LEVELS[i] : LEVELS[LEVELS.length - 1 - i];
      if (to >= least && to <= most && direction * (to - from) > NOTICEABLE) {
        steps.add(
            Step.to(
                adjustment,
                scene.setup().with(withPerStarch(scene, Ingredient.GLYCEROL, to)),
                "glycerol "
                    + Told.number(100 * from)
                    + " → "
                    + Told.level(to)
                    + " to 100 g dry starch"
                    + fromTheJar(scene, to)));
      }
    }
    return steps;
  }

  private static String fromTheJar(FaultContext scene, double level) {
    GlycerolPortion portion = scene.trial().recipe().glycerol();
    double purity = portion.stock().glycerolFraction().value();
    double starchKg = scene.trial().casting().paste().kg(Ingredient.STARCH);
    return purity > 0
        ? " ("
            + Told.grams(level * starchKg / purity)
            + " of the jar to the same starch, not "
            + Told.grams(portion.massKg().value())
            + ")"
        : "";
  }

  static List<Step> cleanerGlycerol(FaultContext scene, List<DryingPlace> otherPlaces) {
    double salt = scene.setup().composition().saltFractionOfDry();
    double ofTheJar = scene.trial().recipe().glycerol().stock().saltFraction().value();
    if (salt <= SALTY || ofTheJar == 0) {
      return List.of();
    }
    Composition clean = withPerStarch(scene, Ingredient.SALT, saltWithoutTheJar(scene));
    return List.of(
        Step.to(
            Adjustment.CLEANER_GLYCEROL,
            scene.setup().with(clean),
            "glycerol without salt: salt "
                + Told.percent(salt)
                + " → "
                + Told.percent(clean.saltFractionOfDry())
                + " of the dry solids"));
  }

  private static double saltWithoutTheJar(FaultContext scene) {
    double added = scene.trial().recipe().saltKg().value();
    return added / scene.trial().casting().paste().kg(Ingredient.STARCH);
  }

  static List<Step> moreWater(FaultContext scene, List<DryingPlace> otherPlaces) {
    PasteBody body = PasteBody.of(scene.setup().composition());
    List<Step> steps = new ArrayList<>();
    for (double share : new double[] {CAST_RANGE_ENDS, WELL_WITHIN_CAST_RANGE}) {
      double to = share * body.levelsUpTo();
      if (to < body.starchInPaste() && to > CLEAR_OF_SETTLING * body.settlesBelow()) {
        steps.add(watered(scene, Adjustment.MORE_WATER, body.starchInPaste(), to));
      }
    }
    return steps;
  }

  static List<Step> lessWater(FaultContext scene, List<DryingPlace> otherPlaces) {
    PasteBody body = PasteBody.of(scene.setup().composition());
    double to = CLEAR_OF_SETTLING * body.settlesBelow();
    return to > body.starchInPaste() && to < body.levelsUpTo()
        ? List.of(watered(scene, Adjustment.LESS_WATER, body.starchInPaste(), to))
        : List.of();
  }

  private static Step watered(FaultContext scene, Adjustment adjustment, double from, double to) {
    Composition changed = paste(scene).withStarchInPaste(to);
    double starchKg = scene.trial().casting().paste().kg(Ingredient.STARCH);
    double grams =
        starchKg * (changed.perStarch(Ingredient.WATER) - paste(scene).perStarch(Ingredient.WATER));
    return Step.to(
        adjustment,
        scene.setup().with(changed),
        "dry starch in the paste "
            + Told.number(100 * from)
            + " → "
            + Told.percent(to)
            + " ("
            + Told.grams(Math.abs(grams))
            + (grams > 0 ? " more" : " less")
            + " water to the same starch)");
  }

  static List<Step> lessVinegar(FaultContext scene, List<DryingPlace> otherPlaces) {
    double from = paste(scene).perStarch(Ingredient.VINEGAR);
    List<Step> steps = new ArrayList<>();
    if (from > 0) {
      steps.add(
          Step.to(
              Adjustment.LESS_VINEGAR,
              scene.setup().with(paste(scene).times(0.5, Ingredient.VINEGAR)),
              "half the vinegar"));
      steps.add(
          Step.to(
              Adjustment.LESS_VINEGAR,
              scene.setup().with(paste(scene).with(Ingredient.VINEGAR, 0)),
              "no vinegar"));
    }
    return steps;
  }

  static List<Step> clearerStarch(FaultContext scene, List<DryingPlace> otherPlaces) {
    Map<StarchKind, Double> now = scene.setup().composition().starchShares();
    if (now.getOrDefault(StarchKind.TAPIOCA, 0.0) + now.getOrDefault(StarchKind.POTATO, 0.0)
        >= 1 - NOTICEABLE) {
      return List.of();
    }
    return List.of(
        Step.to(
            Adjustment.CLEARER_STARCH,
            scene.setup().with(paste(scene).withStarches(Map.of(StarchKind.TAPIOCA, 1.0))),
            "tapioca instead of "
                + String.join(" and ", now.keySet().stream().map(StarchKind::tradeName).toList())
                + " starch"));
  }

  private static Composition withPerStarch(
      FaultContext scene, Ingredient ingredient, double perStarch) {
    return paste(scene).with(ingredient, perStarch * paste(scene).dryStarch());
  }

  private static Composition paste(FaultContext scene) {
    return scene.setup().composition();
  }
}
