package starchfilm.planning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.ConstantRoom;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Use;
import starchfilm.film.Feel;
import starchfilm.material.air.AirState;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Estimate;

/** Requests for the tests of this room: four glass plates in a room of 19 C and 55 %. */
final class Requests {
  static final double DAY_S = 86_400;
  static final double ZERO_CELSIUS_K = 273.15;
  static final OptionalDouble NONE = OptionalDouble.empty();

  private Requests() {}

  static PlanRequest garden() {
    return new PlanRequest(
        potatoAnd(0.25),
        kitchen(),
        feeling(Feel.FLEXIBLE),
        new DryingPlace(new ConstantRoom(new AirState(19 + ZERO_CELSIUS_K, 0.55, 0.1)), NONE),
        OptionalDouble.of(5 * DAY_S),
        PlanRequest.USUALLY_SURE,
        new Use(0.5, 23 + ZERO_CELSIUS_K, 7 * DAY_S));
  }

  /** Plenty of potato starch, and so much of a recovered glycerol (kg). */
  static Supplies potatoAnd(double glycerolKg) {
    return new Supplies(recovered(), glycerolKg, List.of(plenty(StarchKind.POTATO)), 0.05);
  }

  static GlycerolStock recovered() {
    return new GlycerolStock(Estimate.exact(0.82), Estimate.exact(0.03));
  }

  static StarchAtHand plenty(StarchKind kind) {
    return new StarchAtHand(kind, NONE, kind.powderMoisture());
  }

  static StarchAtHand starch(StarchKind kind, double kg) {
    return new StarchAtHand(kind, OptionalDouble.of(kg), kind.powderMoisture());
  }

  static Kitchen kitchen() {
    return kitchen(0.002, 0.001, 4);
  }

  static Kitchen kitchen(double potM3, double stepKg, int plates) {
    return new Kitchen(
        potM3,
        stepKg,
        new Plate(PlateMaterial.GLASS, 0.3, 0.2, 0.004, 0),
        0,
        plates,
        0.25,
        List.of());
  }

  static Wish feeling(Feel feel) {
    return new Wish(Optional.of(feel), NONE, NONE, NONE);
  }
}
