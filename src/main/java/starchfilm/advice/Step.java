package starchfilm.advice;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;

/**
 * One thing changed by one step.
 *
 * @param adjustment what is turned
 * @param setup the set-up after it
 * @param waitUntilS when to look at the plate or peel it instead (s since the pour), where that is
 *     what changes
 * @param words the change in a clause, such as {@code wet thickness 3.2 → 2.4 mm}
 */
record Step(Adjustment adjustment, Casting setup, OptionalDouble waitUntilS, String words) {
  static Step to(Adjustment adjustment, Casting setup, String words) {
    return new Step(adjustment, setup, OptionalDouble.empty(), words);
  }

  /** The scenes as they are after this step; they share one view of the changed set-up. */
  List<FaultContext> appliedTo(List<FaultContext> scenes) {
    ForecastCache changed = scenes.get(0).outlook().of(setup);
    return scenes.stream().map(scene -> appliedTo(scene, changed)).toList();
  }

  private FaultContext appliedTo(FaultContext scene, ForecastCache changed) {
    FaultContext after = scene.with(changed);
    return waitUntilS.isPresent() ? after.lookedAtS(waitUntilS.getAsDouble()) : after;
  }
}
