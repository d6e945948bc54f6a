package starchfilm.planning;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.ClosedHeat;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Pour;
import starchfilm.casting.Use;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Estimate;

/**
 * Everything a plan needs to know.
 *
 * @param supplies what is in the cupboard
 * @param kitchen pot, balance and plates
 * @param wish the film wanted
 * @param place where the plates dry
 * @param byS when the film must be ready (s after the pour, above 0); empty for any time
 * @param sure how sure that must be, by which share of the likely cases (0.05 to 0.99)
 * @param use where the film will be used
 */
public record PlanRequest(
    Supplies supplies,
    Kitchen kitchen,
    Wish wish,
    DryingPlace place,
    OptionalDouble byS,
    double sure,
    Use use) {
  /** How sure a plan is of its date where nobody says; ours. */
  public static final double USUALLY_SURE = 0.8;

  private static final double LEAST_SURE = 0.05;
  private static final double MOST_SURE = 0.99;

  /** Checks air of use, date and sureness. */
  public PlanRequest {
    UseAir.require(use);
    ClosedHeat.of(new GlycerolPortion(Estimate.exact(supplies.glycerolKg()), supplies.jar()), place)
        .ifPresent(
            closed -> {
              throw new UnworkableRequestException(
                  Sentence.of("room", closed, ClosedHeat.allowed(), ClosedHeat.mend()));
            });
    if (byS.isPresent() && !(byS.getAsDouble() > 0)) {
      throw new UnworkableRequestException(
          Sentence.of(
              "date",
              Sentence.days(byS.getAsDouble()) + " after the pour",
              "a time after the pour",
              "write when the film must be ready, such as 5d"));
    }
    if (!(sure >= LEAST_SURE && sure <= MOST_SURE)) {
      throw new UnworkableRequestException(
          Sentence.of(
              "how sure the date must be",
              Sentence.percent(sure),
              "5 to 99 %",
              "80 % is a usual choice"));
    }
  }

  /**
   * The casting that a design makes, its paste and pour taken as exact: a search compares middles.
   */
  Casting casting(Design design) {
    return casting(
        Paste.exactly(design.composition(supplies)),
        CookSteps.of(design.blend().shares()).cook(Estimate.exact(0)),
        Estimate.exact(design.wetThicknessM()),
        1);
  }

  /** A paste poured in this kitchen on so many plates. */
  Casting casting(Paste paste, Cook cook, Estimate wetThicknessM, int plates) {
    return new Casting(
        paste,
        cook,
        kitchen.platePoured(wetThicknessM.value()),
        new Pour(
            wetThicknessM,
            kitchen.unevenness(),
            PotRules.POURED_AT_K,
            java.util.Optional.empty(),
            plates),
        List.of(),
        place,
        use);
  }

  PlanRequest with(Supplies other) {
    return new PlanRequest(other, kitchen, wish, place, byS, sure, use);
  }

  PlanRequest with(Kitchen other) {
    return new PlanRequest(supplies, other, wish, place, byS, sure, use);
  }

  PlanRequest with(Wish other) {
    return new PlanRequest(supplies, kitchen, other, place, byS, sure, use);
  }

  PlanRequest by(OptionalDouble otherS) {
    return new PlanRequest(supplies, kitchen, wish, place, otherS, sure, use);
  }
}
