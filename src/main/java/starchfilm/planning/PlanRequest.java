package starchfilm.planning;

import static starchfilm.numerics.figures.ReaderUnit.PERCENT;
import static starchfilm.numerics.units.Units.DAY_S;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.Casting;
import starchfilm.casting.ClosedHeat;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Pour;
import starchfilm.casting.Use;
import starchfilm.film.FilmForecast;
import starchfilm.film.FilmForecaster;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.figures.Figures;

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
  /** The share of likely cases that a plan must be ready in where nobody says; ours. */
  public static final double USUALLY_SURE = 0.8;

  /** Checks air of use, date and sureness. */
  public PlanRequest {
    UseAir.require(use);
    ClosedHeat.of(new GlycerolPortion(Estimate.exact(supplies.glycerolKg()), supplies.jar()), place)
        .ifPresent(
            closed ->
                Refusal.unless(
                    false, "room", closed, ClosedHeat.allowed() + "; " + ClosedHeat.mend()));
    requireAfterThePour(byS.orElse(DAY_S));
    PERCENT.require("how sure the date must be", sure, 5, 99, "80 % is a usual choice");
  }

  static void requireAfterThePour(double byS) {
    Refusal.unless(
        byS > 0,
        "date",
        Figures.of(byS / DAY_S, 3) + " days after the pour",
        "a time after the pour; write when the film must be ready, such as 5d");
  }

  /** The film of a design, its composition taken as exact: a search compares middles. */
  FilmForecast film(Design design) {
    return new FilmForecaster().forecast(casting(design));
  }

  /**
   * The casting that a design makes, its paste and pour taken as exact: a search compares middles.
   */
  Casting casting(Design design) {
    return casting(
        Paste.exactly(design.composition(supplies)),
        design.cook().cook(Estimate.exact(0)),
        Estimate.exact(design.wetThicknessM()),
        1);
  }

  /** Paste on one plate of a design (kg). */
  double pouredKg(Design design) {
    return design.wetThicknessM()
        * kitchen.plate().areaM2()
        * design.composition(supplies).pasteDensityKgPerM3();
  }

  /** A paste poured in this kitchen on so many plates. */
  Casting casting(Paste paste, Cook cook, Estimate wetThicknessM, int plates) {
    return new Casting(
        paste,
        cook,
        kitchen.platePoured(wetThicknessM.value()),
        new Pour(
            wetThicknessM, kitchen.unevenness(), PotRules.POURED_AT_K, Optional.empty(), plates),
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
