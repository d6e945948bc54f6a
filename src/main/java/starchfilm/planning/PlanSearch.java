package starchfilm.planning;

import static starchfilm.numerics.units.Units.DAY_S;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import starchfilm.casting.Spot;
import starchfilm.drying.DryingForecaster;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmCaution;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/**
 * Searches one request and its variations.
 *
 * <p>How a paste dries depends on room, plates, jar and starch alone, so the surfaces are forecast
 * once and serve every variation of supplies, wish, date and pot. Safe to share between threads.
 */
final class PlanSearch {
  /** Likely cases at each node of a surface. */
  private static final int SURFACE_DRAWS = 12;

  /** How far a surface reaches beyond the thinnest and thickest film asked for. */
  private static final double BEYOND = 1.25;

  private static final double LONG_AFTER = 2.5;
  private static final double ANY_PLASTICISER = 0.3;
  private static final double ANY_POUR_M = 2e-3;

  private static final double THINNEST_POUR_M = 0.1e-3;
  private static final double THICKEST_POUR_M = 25e-3;

  /** Moisture of a dry film for the ends of a surface (kg/kg); any film's is near. */
  private static final double FILM_MOISTURE = 0.12;

  private final PlanRequest base;
  private final DryingForecaster times;
  private final Map<Set<StarchKind>, DryingSurface> surfaces = new ConcurrentHashMap<>();

  PlanSearch(PlanRequest base, ParameterDistribution factors) {
    this.base = base;
    this.times = new DryingForecaster(factors, SURFACE_DRAWS);
  }

  /** What one goal's search found. */
  record Found(Goal goal, Candidate candidate, RecipeSpace space, double score) {
    Design design() {
      return candidate.design();
    }

    RecipeOutcome outcome() {
      return space.outcome(candidate, space.request());
    }
  }

  /**
   * The best recipe for each goal, over all blends that fill the most plates.
   *
   * @param request the request of this search or a variation of it, with the same room, plate, rim,
   *     jar and kinds of starch
   * @param beyondLevelling whether the paste may be stiffer than people cast at
   * @return one a goal; empty where no recipe can be made
   */
  Map<Goal, Found> best(PlanRequest request, Collection<Goal> goals, boolean beyondLevelling) {
    List<RecipeSpace> spaces = spaces(request, beyondLevelling);
    List<Found> found =
        goals.stream()
            .flatMap(goal -> spaces.stream().map(space -> new GoalSearch(goal, space)))
            .toList()
            .parallelStream()
            .map(GoalSearch::run)
            .flatMap(Optional::stream)
            .toList();
    Map<Goal, Found> best = new EnumMap<>(Goal.class);
    for (Found one : found) {
      best.merge(one.goal(), one, (a, b) -> b.score() > a.score() ? b : a);
    }
    return best;
  }

  Optional<Found> best(PlanRequest request, Goal goal, boolean beyondLevelling) {
    return Optional.ofNullable(best(request, List.of(goal), beyondLevelling).get(goal));
  }

  private List<RecipeSpace> spaces(PlanRequest request, boolean beyondLevelling) {
    List<RecipeSpace> best = new ArrayList<>();
    int most = 1;
    for (StarchBlend blend : StarchBlend.of(request.supplies())) {
      WishWindow window = WishWindow.of(request, blend);
      if (window.isEmpty()) {
        continue;
      }
      double mostStarch = beyondLevelling ? blend.levelsUpTo() : blend.castTo();
      DryingSurface surface = surface(blend);
      int plates = new RecipeSpace(request, blend, surface, window, 1, mostStarch).mostPlates();
      if (plates > most) {
        best.clear();
        most = plates;
      }
      if (plates == most) {
        best.add(new RecipeSpace(request, blend, surface, window, plates, mostStarch));
      }
    }
    return best;
  }

  private DryingSurface surface(StarchBlend blend) {
    return surfaces.computeIfAbsent(
        blend.shares().keySet(),
        kinds -> {
          Wish wish = base.wish();
          double thin =
              Math.min(wish.leastDryThicknessM(), FilmCaution.USUALLY_THINNEST_M) / BEYOND;
          double thick =
              Math.max(wish.mostDryThicknessM(), FilmCaution.USUALLY_THICKEST_M) * BEYOND;
          double richest = dryPerWet(blend, blend.levelsUpTo(), WishWindow.MOST_PLASTICISER);
          double leanest = dryPerWet(blend, blend.castFrom(), 0);
          double most = Math.min(THICKEST_POUR_M, thick / leanest);
          double least = BEYOND * wish.leastDryThicknessM() / leanest;
          return DryingSurface.of(
              base,
              blend,
              times,
              WishWindow.MOST_PLASTICISER,
              Math.max(THINNEST_POUR_M, thin / richest),
              Math.min(most, Math.max(least, thickestInQuestion(blend))));
        });
  }

  /**
   * The pour (m) beyond which nobody need look: in the middle of the likely cases it is ready only
   * long after the date and the day by which the date is moved to see what that buys.
   */
  private double thickestInQuestion(StarchBlend blend) {
    if (base.byS().isEmpty()) {
      return THICKEST_POUR_M;
    }
    double starch = (blend.castFrom() + blend.levelsUpTo()) / 2;
    Design any = new Design(blend, starch, ANY_PLASTICISER, 0, ANY_POUR_M, 1);
    double[] ready = times.readyS(base.casting(any), Spot.THICK_SPOT);
    Arrays.sort(ready);
    double latest = LONG_AFTER * (base.byS().getAsDouble() + DAY_S);
    // Time rises a little faster than thickness, so this is on the thick side.
    return ANY_POUR_M * latest / Math.min(latest, ready[ready.length / 2]);
  }

  private double dryPerWet(StarchBlend blend, double starch, double plasticiser) {
    Composition paste =
        new Design(blend, starch, plasticiser, 0, THINNEST_POUR_M, 1).composition(base.supplies());
    return paste.volumeM3PerKgDry(FILM_MOISTURE) * paste.drySolids() * paste.pasteDensityKgPerM3();
  }
}
