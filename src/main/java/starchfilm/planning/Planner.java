package starchfilm.planning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import starchfilm.casting.Plate;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Refusal;
import starchfilm.numerics.figures.Figures;
import starchfilm.planning.PlanSearch.Found;

/**
 * Finds a few recipes that differ, each best at something, from what is at hand.
 *
 * <p>The same request gives the same plan on every machine and with any number of threads.
 * Immutable; safe to share.
 *
 * @param factors what is known of the factors of a drying forecast
 */
public record Planner(ParameterDistribution factors) {
  /**
   * Plans.
   *
   * @param request what is at hand, and what is wanted
   * @return recipes, or the ways out where nothing fits
   * @throws IllegalArgumentException where the wishes contradict each other, the pot cannot fill a
   *     plate, or an open pan cannot cook the starch
   */
  public Plan plan(PlanRequest request) {
    return planned(
        request,
        EnumSet.allOf(Goal.class),
        (search, best) -> {
          LimitMoves moves = new LimitMoves(search, request);
          Finisher finisher = new Finisher(request, factors);
          return Plan.of(
              request,
              distinct(best).parallelStream()
                  .map(
                      same ->
                          finisher
                              .finish(same.get(0))
                              .bestAt(
                                  same.stream().map(Found::goal).collect(Collectors.toSet()),
                                  moves.bindingOn(tellingLimits(same))))
                  .toList());
        });
  }

  /**
   * Plans a series: the safest recipe for all plates, and one thing of it changed from group to
   * group.
   *
   * @param asked what is at hand, and what is wanted; its plates are counted anew
   * @param series the one thing
   * @param scatter how far plates lie apart that are meant to be the same
   * @return the plan with its series, or the ways out where no recipe fits at all
   * @throws IllegalArgumentException where the cupboard cannot fill every group
   */
  public Plan series(PlanRequest asked, SeriesRequest series, PlateScatter scatter) {
    requireAlike(asked.kitchen());
    int plates = series.values().size() * series.platesEach();
    PlanRequest request = asked.with(asked.kitchen().withPlates(plates));
    return safest(
        request,
        found -> {
          List<Series.Group> done = new Finisher(request, factors).groups(found, series);
          Series whole =
              new Series(
                  request,
                  series,
                  done,
                  Series.drawn(done.size(), series.seed()),
                  TrendPower.of(series, done, scatter));
          whole.requireSupplied();
          return Plan.of(whole);
        });
  }

  /**
   * Plans from the wish backwards: what a number of pieces takes.
   *
   * @param asked what is at hand, and what is wanted
   * @param pieces the pieces
   * @return the plan with what they take, or the ways out where no recipe fits at all
   * @throws IllegalArgumentException where no piece fits a plate
   */
  public Plan pieces(PlanRequest asked, Pieces pieces) {
    requireAlike(asked.kitchen());
    Plate plate = asked.kitchen().plate();
    int plates = pieces.platesOf(plate);
    PlanRequest one = PiecesPlan.unlimited(asked, plates);
    return safest(
        one,
        found -> {
          PlannedRecipe recipe =
              new Finisher(one, factors).finish(found).bestAt(EnumSet.of(Goal.SAFEST), List.of());
          int pours = (plates + recipe.plates() - 1) / recipe.plates();
          return Plan.of(new PiecesPlan(asked, pieces, pieces.from(plate), plates, pours, recipe));
        });
  }

  private Plan safest(PlanRequest request, Function<Found, Plan> made) {
    return planned(
        request,
        EnumSet.of(Goal.SAFEST),
        (search, best) -> made.apply(best.values().iterator().next()));
  }

  /** What is made of the best recipes for some goals, or the ways out where there are none. */
  private Plan planned(
      PlanRequest request, Set<Goal> goals, BiFunction<PlanSearch, Map<Goal, Found>, Plan> made) {
    new WishCheck(request).requirePossible();
    requirePotForOnePlate(request);
    PlanSearch search = new PlanSearch(request, factors);
    Map<Goal, Found> best = search.best(request, goals, false);
    return best.isEmpty()
        ? Plan.impossible(request, new LimitMoves(search, request).waysOut())
        : made.apply(search, best);
  }

  private static void requireAlike(Kitchen kitchen) {
    Refusal.unless(
        kitchen.sizes().size() <= 1,
        "plates",
        kitchen.sizes().size() + " sizes",
        "one size for a series or for pieces; write one kind of plate");
  }

  /** Goals that end at nearly the same recipe share it: that of the first of them. */
  private static List<List<Found>> distinct(Map<Goal, Found> best) {
    List<List<Found>> recipes = new ArrayList<>();
    for (Found found : best.values()) {
      recipes.stream()
          .filter(same -> same.get(0).design().isNearly(found.design()))
          .findFirst()
          .ifPresentOrElse(
              same -> same.add(found), () -> recipes.add(new ArrayList<>(List.of(found))));
    }
    return recipes;
  }

  /** The goal whose limits are worth telling of a recipe: most film, where it is among them. */
  private static Found tellingLimits(List<Found> same) {
    return same.stream()
        .filter(found -> found.goal() == Goal.MOST_FILM)
        .findFirst()
        .orElse(same.get(0));
  }

  private static void requirePotForOnePlate(PlanRequest request) {
    Kitchen kitchen = request.kitchen();
    double leastKg = Double.POSITIVE_INFINITY;
    for (StarchBlend blend : StarchBlend.of(request.supplies())) {
      Composition richest =
          new Design(blend, blend.castTo(), WishWindow.MOST_PLASTICISER, 0, 1e-3, 1)
              .composition(request.supplies());
      double solids = request.wish().leastDryThicknessM() / richest.volumeM3PerKgDry(0);
      leastKg = Math.min(leastKg, kitchen.plate().areaM2() * solids / richest.drySolids());
    }
    double leastM3 = leastKg * (1 + PotShare.LEFT_IN_POT) / Kitchen.HOLDS_KG_PER_M3;
    Plate plate = kitchen.plate();
    Refusal.unless(
        leastM3 <= kitchen.potM3(),
        "plate of " + plate.size(),
        "a pot of " + Figures.of(kitchen.potM3() * 1e3, 3) + " l",
        ("one that holds at least %s l, three quarters full, for %s µm of film on one plate; use a"
                + " larger pot or smaller plates")
            .formatted(
                Figures.of(leastM3 * 1e3, 3),
                Figures.of(1e6 * request.wish().leastDryThicknessM(), 3)));
  }
}
