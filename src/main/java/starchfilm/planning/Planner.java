package starchfilm.planning;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.Quantiles;
import starchfilm.material.recipe.Composition;
import starchfilm.planning.PlanSearch.Found;

/**
 * Finds a few recipes that differ, each best at something, from what is at hand.
 *
 * <p>The same request gives the same plan on every machine and with any number of threads.
 * Immutable; safe to share.
 */
public final class Planner {
  /** How far (log) a recipe at its date may be from the real forecast before it is corrected. */
  private static final double NEAR_DATE = 0.03;

  private static final int MOST_STEPS = 3;

  private final ParameterDistribution factors;

  /**
   * A planner.
   *
   * @param factors what is known of the factors of a drying forecast
   */
  public Planner(ParameterDistribution factors) {
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
                      relaxations.of(choice.best()));
            });
    return new Plan(request, List.of(recipes), List.of());
  }

  /**
   * Plans a series: the safest recipe for all plates, and one thing of it changed from group to
   * group.
   *
   * @param asked what is at hand, and what is wanted; its plates are counted anew
   * @param series the one thing
   * @param scatter how far plates lie apart that are meant to be the same
   * @return the series, or the ways out where no recipe fits at all
   * @throws UnworkableRequestException where the cupboard cannot fill every group
   */
  public SeriesAnswer series(PlanRequest asked, SeriesRequest series, PlateScatter scatter) {
    requireAlike(asked.kitchen());
    int groups = series.values().size();
    PlanRequest request = asked.with(asked.kitchen().withPlates(groups * series.platesEach()));
    new WishCheck(request).requirePossible();
    requirePotForOnePlate(request);
    PlanSearch search = new PlanSearch(request, factors);
    Optional<Found> best = search.best(request, Goal.SAFEST);
    if (best.isEmpty()) {
      return new SeriesAnswer(
          Optional.empty(), new Plan(request, List.of(), new WaysOut(search, request).list()));
    }
    Found found = best.get();
    Design base = inTime(request, found).on(series.platesEach());
    Finisher finisher = new Finisher(request, factors);
    Series.Group[] done = new Series.Group[groups];
    IntStream.range(0, groups)
        .parallel()
        .forEach(
            i -> {
              double value = series.values().get(i);
              CookSteps cook = series.what().in(CookSteps.of(base.blend().shares()), value);
              PlannedRecipe recipe =
                  finisher.finish(
                      series.what().in(base, value, request),
                      cook,
                      EnumSet.noneOf(Goal.class),
                      found.space().window(),
                      List.of());
              double weighed = series.what().of(recipe.potfuls().get(0).recipe(), recipe.casting());
              done[i] = new Series.Group(series.names().get(i), value, weighed, recipe);
            });
    Series whole =
        new Series(
            request,
            series,
            List.of(done),
            Series.drawn(groups, series.seed()),
            SeriesPower.of(series, List.of(done), scatter));
    whole.requireSupplied();
    return new SeriesAnswer(Optional.of(whole), new Plan(request, List.of(), List.of()));
  }

  /**
   * Plans from the wish backwards: what a number of pieces takes.
   *
   * @param asked what is at hand, and what is wanted
   * @param pieces the pieces
   * @return what they take, or the ways out where no recipe fits at all
   * @throws UnworkableRequestException where no piece fits a plate
   */
  public PiecesAnswer pieces(PlanRequest asked, Pieces pieces) {
    requireAlike(asked.kitchen());
    int plates = pieces.platesOf(asked.kitchen().plate());
    PlanRequest one = PiecesPlan.unlimited(asked, plates);
    new WishCheck(one).requirePossible();
    requirePotForOnePlate(one);
    PlanSearch search = new PlanSearch(one, factors);
    Optional<Found> best = search.best(one, Goal.SAFEST);
    if (best.isEmpty()) {
      return new PiecesAnswer(
          Optional.empty(), new Plan(asked, List.of(), new WaysOut(search, one).list()));
    }
    Found found = best.get();
    PlannedRecipe recipe =
        new Finisher(one, factors)
            .finish(inTime(one, found), EnumSet.of(Goal.SAFEST), found.space().window(), List.of());
    int pours = (plates + recipe.plates() - 1) / recipe.plates();
    return new PiecesAnswer(
        Optional.of(
            new PiecesPlan(
                asked, pieces, pieces.from(asked.kitchen().plate()), plates, pours, recipe)),
        new Plan(asked, List.of(), List.of()));
  }

  private static void requireAlike(Kitchen kitchen) {
    Sentence.require(
        kitchen.sizes().size() <= 1,
        "plates",
        kitchen.sizes().size() + " sizes",
        "one size for a series or for pieces",
        "write one kind of plate");
  }

  /**
   * What came of asking for pieces.
   *
   * @param pieces what they take; empty where no recipe fits
   * @param plan the plan with its ways out where there is none
   */
  public record PiecesAnswer(Optional<PiecesPlan> pieces, Plan plan) {}

  /**
   * What came of asking for a series.
   *
   * @param series the series; empty where no recipe fits
   * @param plan the plan with its ways out where there is none
   */
  public record SeriesAnswer(Optional<Series> series, Plan plan) {}

  /**
   * A recipe and what it is best at.
   *
   * @param best for the goal whose limits are worth telling: most film, where it is among them
   */
  private record Choice(Set<Goal> goals, Found found, Found best) {
    Choice alsoFor(Found other) {
      Set<Goal> both = EnumSet.copyOf(goals);
      both.add(other.goal());
      return new Choice(both, found, other.goal() == Goal.MOST_FILM ? other : best);
    }
  }

  /** Goals that end at nearly the same recipe share it. */
  private static List<Choice> distinct(Map<Goal, Found> best) {
    List<Choice> choices = new ArrayList<>();
    for (Found found : best.values()) {
      Design design = found.candidate().design();
      int same = 0;
      while (same < choices.size()
          && !choices.get(same).found().candidate().design().isNearly(design)) {
        same++;
      }
      if (same < choices.size()) {
        choices.set(same, choices.get(same).alsoFor(found));
      } else {
        choices.add(new Choice(EnumSet.of(found.goal()), found, found));
      }
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
    DryingForecaster times = new DryingForecaster(factors, DryingForecaster.DRAWS);
    double wetM = design.wetThicknessM();
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] ready = times.readyS(request.casting(design.poured(wetM)), Spot.THICK_SPOT);
      double late = Math.log(Quantiles.of(ready, request.sure()) / byS.getAsDouble());
      if (!Double.isFinite(late)) {
        break;
      }
      wetM *= Math.exp(-late / candidate.timeSlope());
      if (Math.abs(late) < NEAR_DATE) {
        break;
      }
    }
    return design.poured(Math.max(candidate.floorM(), Math.min(candidate.otherCeilingM(), wetM)));
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
    Sentence.require(
        leastKg * (1 + PotRules.LEFT_IN_POT) <= potKg,
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
        "use a larger pot or smaller plates");
  }
}
