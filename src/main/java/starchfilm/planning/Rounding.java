package starchfilm.planning;

import java.util.ArrayList;
import java.util.List;
import starchfilm.film.FilmForecast;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.figures.Figures;

/**
 * Turns a design into grams that the balance can show.
 *
 * <p>Each amount goes to the nearest step, but down where the cupboard would not hold it. A reading
 * stands for everything that rounds to it, so its standard uncertainty is the step over the root of
 * 12. Source: JCGM 100:2008 (GUM), F.2.2.1 (recalled).
 */
final class Rounding {
  private static final int MOST_STEPS = 3;
  private static final double STARCH_WEIGHT = 0.5;

  private final PlanRequest request;
  private final Design design;
  private final double stepKg;

  private final CookSteps cook;
  private final int mostSteps;

  /**
   * Rounds.
   *
   * @param isStarchFree whether the starch may move by a few steps, so that the ratio to the
   *     glycerol is met; not where pots are to differ in one thing alone
   */
  Rounding(PlanRequest request, Design design, CookSteps cook, boolean isStarchFree) {
    this.mostSteps = isStarchFree ? MOST_STEPS : 0;
    this.request = request;
    this.design = design;
    this.cook = cook;
    this.stepKg = request.kitchen().scaleStepKg();
  }

  CookSteps cook() {
    return cook;
  }

  /** Paste poured on one plate (kg), rounded. */
  double pourKg() {
    return Math.max(stepKg, nearest(request.pouredKg(design)));
  }

  /** The potfuls, the largest first; their plates add up to those of the design. */
  List<Potful> potfuls() {
    double perPlateKg = pourKg() * (1 + PotShare.LEFT_IN_POT);
    Composition paste = design.composition(request.supplies());
    double withSteam = perPlateKg * PotRules.withSteam(paste);
    return PotShare.of(withSteam, request.kitchen().potM3(), design.plates()).stream()
        .map(share -> potful(share.plates(), share.times(), perPlateKg))
        .toList();
  }

  private Potful potful(int plates, int times, double perPlateKg) {
    double cookedKg = plates * perPlateKg;
    Solids solids = solids(cookedKg, (double) plates / design.plates());
    Supplies supplies = request.supplies();
    List<StarchPortion> starches = solids.starches();
    double glycerolKg = solids.glycerolKg();
    double vinegarKg = vinegarKg(cookedKg);
    double powders = starches.stream().mapToDouble(s -> s.massKg().value()).sum();
    double water = cookedKg - powders - glycerolKg - vinegarKg;
    double waterInPaste = cookedKg * design.composition(supplies).water();
    double steam = waterInPaste * PotRules.STEAM.value() / (1 - PotRules.STEAM.value());
    // On a coarse balance the nearest step may be less than the paste itself holds.
    double waterKg = Math.max(nearest(water + steam), Math.ceil(water / stepKg) * stepKg);
    Refusal.unless(
        waterKg >= 0,
        "vinegar in a pot",
        Figures.grams(vinegarKg) + " g",
        "at most the " + Figures.grams(vinegarKg + waterKg) + " g of water it takes; write less");
    double lost = waterKg - water;
    Recipe recipe =
        new Recipe(
            starches,
            new GlycerolPortion(weighed(glycerolKg), supplies.jar()),
            new VinegarPortion(
                weighed(vinegarKg), Estimate.exact(supplies.vinegarAcidityFraction())),
            weighed(waterKg),
            Estimate.exact(0),
            cook.cook(new Estimate(lost, PotRules.TOPPED_UP_SD * cookedKg)));
    return new Potful(plates, times, recipe, cookedKg);
  }

  /**
   * To the nearest step; what rounds to none is one step where such a paste keeps better than one
   * without, and does not thin.
   */
  private double vinegarKg(double cookedKg) {
    double wanted = cookedKg * design.vinegarInPaste();
    return mostSteps > 0
            && wanted > 0
            && nearest(wanted) == 0
            && Goal.sour(with(stepKg / cookedKg)) < Goal.sour(with(0))
        ? stepKg
        : nearest(wanted);
  }

  private FilmForecast with(double vinegarInPaste) {
    return request.film(design.with(design.starchInPaste(), design.plasticiser(), vinegarInPaste));
  }

  /** Starches and glycerol, rounded. */
  private record Solids(List<StarchPortion> starches, double glycerolKg) {}

  /**
   * The steps of starch and glycerol whose ratio is nearest to the design's: a spoon too much of
   * both spoils less than half a step of one.
   */
  private Solids solids(double cookedKg, double share) {
    Solids best = solids(cookedKg, share, 0, 0);
    double bestMiss = miss(best, cookedKg);
    for (int starchSteps = -mostSteps; starchSteps <= mostSteps; starchSteps++) {
      for (int glycerolSteps = -1; glycerolSteps <= 1; glycerolSteps++) {
        Solids other = solids(cookedKg, share, starchSteps, glycerolSteps);
        double miss = miss(other, cookedKg);
        if (miss < bestMiss - 1e-12) {
          best = other;
          bestMiss = miss;
        }
      }
    }
    return best;
  }

  /** How far a rounding is from the design: in plasticiser, and less so in starch. */
  private double miss(Solids solids, double cookedKg) {
    double dry = solids.starches().stream().mapToDouble(StarchPortion::dryKg).sum();
    double starch = Math.abs(dry / (cookedKg * design.starchInPaste()) - 1);
    double glycerol = solids.glycerolKg() * request.supplies().jar().glycerolFraction().value();
    double plasticiser =
        design.plasticiser() == 0 ? 0 : Math.abs(glycerol / dry / design.plasticiser() - 1);
    return plasticiser + STARCH_WEIGHT * starch;
  }

  private Solids solids(double cookedKg, double share, int starchSteps, int glycerolSteps) {
    Supplies supplies = request.supplies();
    List<StarchPortion> starches = new ArrayList<>();
    for (StarchAtHand starch : supplies.starches()) {
      double part = design.blend().shares().getOrDefault(starch.kind(), 0.0);
      if (part > 0) {
        double powder =
            cookedKg * design.starchInPaste() * part / (1 - starch.moistureFraction().value());
        double allowed = starch.massKg().orElse(Double.POSITIVE_INFINITY) * share;
        // The steps go to the first starch alone.
        double moved = powder + (starches.isEmpty() ? starchSteps * stepKg : 0);
        starches.add(
            new StarchPortion(
                starch.kind(),
                weighed(Math.max(stepKg, atMost(moved, allowed))),
                starch.moistureFraction()));
      }
    }
    double jar =
        cookedKg
            * design.starchInPaste()
            * design.plasticiser()
            / supplies.jar().glycerolFraction().value();
    double moved = design.plasticiser() == 0 ? 0 : jar + glycerolSteps * stepKg;
    return new Solids(starches, Math.max(0, atMost(moved, supplies.glycerolKg() * share)));
  }

  private Estimate weighed(double kg) {
    return new Estimate(kg, kg == 0 ? 0 : stepKg / Math.sqrt(12));
  }

  private double nearest(double kg) {
    return Math.rint(kg / stepKg) * stepKg;
  }

  private double atMost(double kg, double mostKg) {
    double rounded = nearest(kg);
    // The slack keeps a jar of exactly 250 g from being read as a hair less.
    return rounded <= mostKg * (1 + 1e-9) ? rounded : Math.floor(mostKg / stepKg + 1e-9) * stepKg;
  }
}
