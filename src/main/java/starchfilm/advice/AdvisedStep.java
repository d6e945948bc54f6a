package starchfilm.advice;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Setting;
import starchfilm.change.Change;
import starchfilm.change.ChangeStep;
import starchfilm.drying.DryingForecaster;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Ingredient;
import starchfilm.material.recipe.Recipe;

/**
 * One thing changed by one step, in words.
 *
 * @param waitUntilS when to look at the plate or peel it instead (s since the pour), where that is
 *     what changes
 * @param words the change in a clause, such as {@code wet thickness 3.2 → 2.4 mm}
 */
record AdvisedStep(Change change, Casting casting, OptionalDouble waitUntilS, String words) {
  /** Share of the time: where the middle case is done by then, 9 in 10 plates are done in time. */
  private static final double SURELY = 0.68;

  /** The steps of a change that are worth trying against a fault. */
  static List<AdvisedStep> of(
      Change change, FaultContext scene, RuleBook book, List<DryingPlace> otherPlaces) {
    if (change == Change.WAIT_LONGER) {
      return waitLonger(scene, book);
    }
    return castings(change, scene, otherPlaces)
        .map(
            after ->
                new AdvisedStep(
                    change,
                    after,
                    OptionalDouble.empty(),
                    book.words(change, scene, scene.with(scene.outlook().of(after)))))
        .toList();
  }

  private static Stream<Casting> castings(
      Change change, FaultContext scene, List<DryingPlace> otherPlaces) {
    Casting casting = scene.setup();
    return switch (change) {
      case ANOTHER_ROOM ->
          otherPlaces.stream()
              .filter(place -> !place.name().equals(casting.place().name()))
              .map(casting::with);
      case CLEANER_GLYCEROL -> cleanerGlycerol(scene);
      case LEVEL_THE_PLATE ->
          scene.notes("pour.unevenness_pct") ? tried(change, casting) : Stream.empty();
      default -> tried(change, casting);
    };
  }

  private static Stream<Casting> tried(Change change, Casting casting) {
    return change.steps(casting).stream().map(ChangeStep::after);
  }

  private static Stream<Casting> cleanerGlycerol(FaultContext scene) {
    Recipe recipe = scene.trial().recipe();
    if (AdviceFigure.SALT.of(scene) <= Composition.SALT_UNNOTICED
        || recipe.glycerol().stock().saltFraction().value() == 0) {
      return Stream.empty();
    }
    double addedPerStarch =
        recipe.saltKg().value() / scene.trial().casting().paste().kg(Ingredient.STARCH);
    return Stream.of(Setting.SALT.set(scene.setup(), addedPerStarch));
  }

  private static List<AdvisedStep> waitLonger(FaultContext scene, RuleBook book) {
    double until =
        Math.max(AdviceFigure.DRY_MIDDLE.of(scene), AdviceFigure.FIRM.of(scene)) / SURELY;
    if (scene.seenAtS().orElse(until) >= until || until > DryingForecaster.HORIZON_S / 2) {
      return List.of();
    }
    String words = book.words(Change.WAIT_LONGER, scene, scene.lookedAtS(until));
    return List.of(
        new AdvisedStep(Change.WAIT_LONGER, scene.setup(), OptionalDouble.of(until), words));
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
