package starchfilm.planning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.FactorModel;
import starchfilm.drying.ReadyTimes;
import starchfilm.planning.PlanSearch.Found;
import starchfilm.recipe.Composition;

/**
 * Finds a few recipes that differ, each best at something, from what is at hand.
 *
 * <p>The same request gives the same plan on every machine and with any number of threads.
 * Immutable; safe to share.
 */
public final class Planner {
  /** How far (log) a recipe at its date may be from the real forecast before it is mended. */
  private static final double NEAR_DATE = 0.03;

  private final FactorModel factors;

  /**
   * A planner.
   *
   * @param factors what is known of the factors of a drying forecast
   */
  public Planner(FactorModel factors) {
    this.factors = factors;
  }

  /**
   * Plans.
   *
   * @param request what is at hand, and what is wanted
   * @return recipes, or the ways out where nothing fits
   * @throws UnworkableRequestException where the wishes contradict each other, the pot cannot fill
   *     a plate, or an open pan cannot cook the starch
   */
  public Plan plan(PlanRequest request) {
    new WishCheck(request).requirePossible();
    requirePotForOnePlate(request);
    PlanSearch search = new PlanSearch(request, factors);
    Map<Goal, Found> best = search.best(request, EnumSet.allOf(Goal.class), false);
    if (best.isEmpty()) {
      return new Plan(request, List.of(), new WaysOut(search, request).list());
    }
    List<Choice> choices = distinct(best);
    Relaxations relaxations = new Relaxations(search, request);
    Finisher finisher = new Finisher(request, factors);
    PlannedRecipe[] recipes = new PlannedRecipe[choices.size()];
    IntStream.range(0, recipes.length)
        .parallel()
        .forEach(
            i -> {
              Choice choice = choices.get(i);
              recipes[i] =
                  finisher.finish(
                      inTime(request, choice.found()),
                      choice.goals(),
                      choice.found().space().window(),
                      relaxations.of(choice.found()));
            });
    return new Plan(request, List.of(recipes), List.of());
  }

  private record Choice(Set<Goal> goals, Found found) {}

  /** Goals that end at nearly the same recipe share it. */
  private static List<Choice> distinct(Map<Goal, Found> best) {
    List<Choice> choices = new ArrayList<>();
    for (Map.Entry<Goal, Found> entry : best.entrySet()) {
      Design design = entry.getValue().candidate().design();
      choices.stream()
          .filter(c -> c.found().candidate().design().isNearly(design))
          .findFirst()
          .ifPresentOrElse(
              c -> c.goals().add(entry.getKey()),
              () -> choices.add(new Choice(EnumSet.of(entry.getKey()), entry.getValue())));
    }
    return choices;
  }

  /** A recipe poured as thick as its date allows, by the real forecast and not by the surface. */
  private Design inTime(PlanRequest request, Found found) {
    Candidate candidate = found.candidate();
    Design design = candidate.design();
    OptionalDouble byS = request.byS();
    boolean atDate =
        candidate.ceiling() == Limit.DATE
            && Math.log(candidate.ceilingM() / design.wetThicknessM()) < NEAR_DATE;
    if (byS.isEmpty() || !atDate) {
      return design;
    }
    ReadyTimes times = new ReadyTimes(factors, DryingForecaster.QUICK_DRAWS);
    OptionalDouble real =
        new ThicknessRoot(times, wetM -> DryingSurface.dryingCase(request, design.poured(wetM)))
            .thickest(byS.getAsDouble(), request.sure(), design.wetThicknessM());
    return real.isPresent() && real.getAsDouble() < design.wetThicknessM()
        ? design.poured(Math.max(candidate.floorM(), real.getAsDouble()))
        : design;
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
    double potKg = kitchen.potM3() * Kitchen.FILLED * Composition.WATER_KG_PER_M3;
    if (leastKg * (1 + PotRules.LEFT_IN_POT) > potKg) {
      throw new UnworkableRequestException(
          Sentence.of(
              "plate of "
                  + Sentence.number(kitchen.plate().lengthM() * 1e3)
                  + " x "
                  + Sentence.millimetres(kitchen.plate().widthM()),
              "a pot of " + Sentence.number(kitchen.potM3() * 1e3) + " l",
              "one that holds at least "
                  + Sentence.number(
                      leastKg
                          * (1 + PotRules.LEFT_IN_POT)
                          / (Kitchen.FILLED * Composition.WATER_KG_PER_M3)
                          * 1e3)
                  + " l, three quarters full, for "
                  + Sentence.millimetres(request.wish().leastDryThicknessM())
                  + " of film on one plate",
              "take a larger pot or smaller plates"));
    }
  }
}
