package starchfilm.advice;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.Milestone;

/** What can be changed about the plate and what is done with it. */
final class PlateAdjustments {
  /** Where the middle case is done after so much of the time, 9 in 10 plates are. */
  private static final double SURELY = 0.68;

  private static final double CLINGS_FROM = 0.3;

  private PlateAdjustments() {}

  static List<Step> waitLonger(FaultContext scene, List<DryingPlace> otherPlaces) {
    if (scene.seenAtS().isEmpty()) {
      return List.of();
    }
    double middle =
        Math.max(
            scene.outlook().timeS(Spot.THICK_SPOT, Milestone.DRY_THROUGH),
            scene.outlook().timeS(Spot.THICK_SPOT, Milestone.PEELABLE));
    double until = middle / SURELY;
    if (until <= scene.seenAtS().getAsDouble() || until > DryingForecaster.HORIZON_S / 2) {
      return List.of();
    }
    return List.of(
        new Step(
            Adjustment.WAIT_LONGER,
            scene.setup(),
            OptionalDouble.of(until),
            "leave it on the plate for "
                + Told.span(until)
                + " instead of "
                + Told.span(scene.seenAtS().getAsDouble())));
  }

  static List<Step> keep(FaultContext scene, List<DryingPlace> otherPlaces) {
    if (scene.setup().faces().isEmpty()) {
      return List.of();
    }
    return List.of(
        Step.to(
            Adjustment.KEEP_IT_ON_THE_PLATE,
            scene.setup().with(List.of()),
            "leave it on the plate until it is dry, without rack or turning"));
  }

  static List<Step> lettingGo(FaultContext scene, List<DryingPlace> otherPlaces) {
    return onto(scene, Adjustment.A_PLATE_THAT_LETS_GO, PlateMaterial.POLYPROPYLENE);
  }

  static List<Step> holdingOn(FaultContext scene, List<DryingPlace> otherPlaces) {
    return onto(scene, Adjustment.A_PLATE_THAT_HOLDS_ON, PlateMaterial.GLASS);
  }

  private static List<Step> onto(FaultContext scene, Adjustment adjustment, PlateMaterial to) {
    Plate plate = scene.setup().plate();
    boolean clings = PlateCauses.grip(plate.material()) >= CLINGS_FROM;
    boolean wanted = PlateCauses.grip(to) >= CLINGS_FROM;
    if (clings == wanted) {
      return List.of();
    }
    return List.of(
        Step.to(
            adjustment,
            scene.setup().with(plate.of(to)),
            "a plate of " + to.tradeName() + " instead of " + plate.material().tradeName()));
  }
}
