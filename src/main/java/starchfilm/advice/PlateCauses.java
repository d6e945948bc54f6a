package starchfilm.advice;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.FaceChange;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Spot;
import starchfilm.drying.Milestone;

/**
 * What became of the plate after the pour: what it was poured on, when it was peeled, moved and
 * looked at.
 *
 * <p>Limits: starch film clings to steel most, to glass, and hardly to PTFE, silicone and
 * polypropylene, which may let it go too soon (common practice, no source; the grades are judged).
 * Where the middle case would be ready after 0.68 of the time given, 9 in 10 plates are ready.
 */
final class PlateCauses {
  private static final double SURELY_READY = 0.68;
  private static final double HALF_READY = 1;
  private static final double ORDINARY_DRYING_S = 2.5 * DAY_S;
  private static final double SLOW_DRYING_S = 5 * DAY_S;
  private static final double FRESH_S = 7 * DAY_S;
  private static final double OLD_S = 30 * DAY_S;
  private static final double SLIPPERY = 0.6;

  private PlateCauses() {}

  static Reading lookedTooEarly(FaultContext scene) {
    if (scene.seenAtS().isEmpty()) {
      return Reading.untold("when the plate was looked at");
    }
    double seen = scene.seenAtS().getAsDouble();
    double dry = scene.outlook().timeS(scene.spot(), Milestone.DRY_THROUGH);
    double early = (dry / seen - SURELY_READY) / (HALF_READY - SURELY_READY);
    double ordinary = (SLOW_DRYING_S - dry) / (SLOW_DRYING_S - ORDINARY_DRYING_S);
    return new Reading(
        Math.min(Math.min(1, early), ordinary),
        "looked at "
            + Told.span(seen)
            + " after the pour; "
            + Told.span(dry)
            + " are expected, and one to four days are ordinary",
        true);
  }

  static Reading peeledTooEarly(FaultContext scene) {
    if (scene.seenAtS().isEmpty()) {
      return Reading.untold("when it was peeled");
    }
    return firmness(scene, scene.seenAtS().getAsDouble(), "peeled");
  }

  static Reading movedTooEarly(FaultContext scene) {
    List<FaceChange> moves = scene.setup().faces();
    if (moves.isEmpty()) {
      return Reading.of(0, 1, 2, "it stayed on its plate");
    }
    double moved = moves.get(0).timeS();
    OptionalDouble seen = scene.fault().seenAtS();
    if (seen.isPresent() && seen.getAsDouble() < moved) {
      return Reading.of(0, 1, 2, "it was moved only after the fault was seen");
    }
    return firmness(scene, moved, "moved");
  }

  private static Reading firmness(FaultContext scene, double timeS, String what) {
    double peelable = scene.outlook().timeS(Spot.THICK_SPOT, Milestone.PEELABLE);
    double chance = Chance.by(scene.forecast().at(Spot.THICK_SPOT).at(Milestone.PEELABLE), timeS);
    return Reading.of(
        peelable / timeS,
        SURELY_READY,
        HALF_READY,
        what
            + " "
            + Told.span(timeS)
            + " after the pour, when the thick spot was firm in "
            + Told.chance(chance)
            + " likely cases");
  }

  static Reading holdsOn(FaultContext scene) {
    if (!scene.notes("pour.plate.material")) {
      return Reading.untold("what it was poured on");
    }
    PlateMaterial material = scene.setup().plate().material();
    return Reading.of(
        material.grip(),
        0,
        1,
        "starch film clings to " + material.tradeName() + " " + manner(material));
  }

  static Reading letsGo(FaultContext scene) {
    if (!scene.notes("pour.plate.material")) {
      return Reading.untold("what it was poured on");
    }
    PlateMaterial material = scene.setup().plate().material();
    return Reading.of(
        material.grip() == 0 ? SLIPPERY : 0,
        0,
        1,
        material.grip() == 0
            ? material.tradeName() + " may let the film go before it is dry"
            : material.tradeName() + " holds the film until it is dry");
  }

  private static String manner(PlateMaterial material) {
    double grip = material.grip();
    return grip == 0 ? "hardly" : grip < 0.5 ? "a little" : grip < 0.7 ? "sometimes" : "hard";
  }

  static Reading aged(FaultContext scene) {
    if (scene.fault().seenAtS().isEmpty()) {
      return Reading.untold("when the fault was seen");
    }
    double age =
        scene.fault().seenAtS().getAsDouble()
            - scene.outlook().timeS(Spot.NOMINAL, Milestone.DRY_THROUGH);
    return Reading.of(
        age,
        FRESH_S,
        OLD_S,
        age <= 0
            ? "the film was fresh"
            : "the film had been dry for " + Told.span(age) + "; it stiffens over weeks");
  }
}
