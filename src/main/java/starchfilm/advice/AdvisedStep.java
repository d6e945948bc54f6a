package starchfilm.advice;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Setting;
import starchfilm.casting.Spot;
import starchfilm.change.Change;
import starchfilm.change.ChangeStep;
import starchfilm.change.Limits;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;
import starchfilm.material.recipe.Ingredient;

/**
 * One thing changed by one step, in words.
 *
 * @param waitUntilS when to look at the plate or peel it instead (s since the pour), where that is
 *     what changes
 * @param words the change in a clause, such as {@code wet thickness 3.2 → 2.4 mm}
 */
record AdvisedStep(Change change, Casting casting, OptionalDouble waitUntilS, String words) {
  /** Where the middle case is done after so much of the time, 9 in 10 plates are. */
  private static final double SURELY = 0.68;

  /** The steps of a change that are worth trying against a fault. */
  static List<AdvisedStep> of(Change change, FaultContext scene, List<DryingPlace> otherPlaces) {
    return switch (change) {
      case WAIT_LONGER -> waitLonger(scene);
      case ANOTHER_ROOM ->
          otherPlaces.stream()
              .filter(place -> !place.name().equals(scene.setup().place().name()))
              .map(place -> of(change, scene, scene.setup().with(place)))
              .toList();
      case CLEANER_GLYCEROL -> cleanerGlycerol(scene);
      case LEVEL_THE_PLATE ->
          scene.notes("pour.unevenness_pct") ? anywhere(change, scene) : List.of();
      default -> anywhere(change, scene);
    };
  }

  private static List<AdvisedStep> anywhere(Change change, FaultContext scene) {
    return change.steps(scene.setup()).stream()
        .map(step -> of(change, scene, step.after()))
        .toList();
  }

  private static AdvisedStep of(Change change, FaultContext scene, Casting after) {
    return new AdvisedStep(
        change,
        after,
        OptionalDouble.empty(),
        StepWords.of(new ChangeStep(change, scene.setup(), after), scene.trial().recipe()));
  }

  private static List<AdvisedStep> cleanerGlycerol(FaultContext scene) {
    Casting casting = scene.setup();
    if (casting.composition().saltFractionOfDry() <= Limits.SALTY
        || scene.trial().recipe().glycerol().stock().saltFraction().value() == 0) {
      return List.of();
    }
    double addedPerStarch =
        scene.trial().recipe().saltKg().value()
            / scene.trial().casting().paste().kg(Ingredient.STARCH);
    return List.of(of(Change.CLEANER_GLYCEROL, scene, Setting.SALT.set(casting, addedPerStarch)));
  }

  private static List<AdvisedStep> waitLonger(FaultContext scene) {
    if (scene.seenAtS().isEmpty()) {
      return List.of();
    }
    double middle =
        Math.max(
            scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH),
            scene.outlook().timeS(Spot.THICK_SPOT, Milestone.PEELABLE));
    double until = middle / SURELY;
    double seen = scene.seenAtS().getAsDouble();
    return until <= seen || until > DryingForecaster.HORIZON_S / 2
        ? List.of()
        : List.of(
            new AdvisedStep(
                Change.WAIT_LONGER,
                scene.setup(),
                OptionalDouble.of(until),
                "leave it on the plate for "
                    + Told.span(until)
                    + " instead of "
                    + Told.span(seen)));
  }

  /** The scenes as they are after this step; they share one view of the changed casting. */
  List<FaultContext> appliedTo(List<FaultContext> scenes) {
    ForecastCache changed = scenes.get(0).outlook().of(casting);
    return scenes.stream().map(scene -> appliedTo(scene, changed)).toList();
  }

  private FaultContext appliedTo(FaultContext scene, ForecastCache changed) {
    FaultContext after = scene.with(changed);
    return waitUntilS.isPresent() ? after.lookedAtS(waitUntilS.getAsDouble()) : after;
  }
}
