package starchfilm.planning;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import starchfilm.casting.Casting;
import starchfilm.drying.DryingForecast;
import starchfilm.film.FilmForecast;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Recipe;

/**
 * A recipe ready to be weighed out. Every forecast is of the rounded grams.
 *
 * @param goals what it is best at; empty for one that somebody wrote
 * @param potfuls what goes into the pot, the largest first
 * @param cook how it is cooked
 * @param casting the first potful on a plate
 * @param film the dry film
 * @param drying how it dries, in the three spots
 * @param chances how likely it is as asked
 * @param limits what keeps it from giving more
 */
public record PlannedRecipe(
    Set<Goal> goals,
    List<Potful> potfuls,
    CookSteps cook,
    Casting casting,
    FilmForecast film,
    DryingForecast drying,
    Chances chances,
    List<BindingLimit> limits) {
  /**
   * The chances that a recipe is as asked.
   *
   * @param byDate share of the likely cases in which the thick spot is ready by the date; empty
   *     without a date
   * @param asWished true where the film forecast from the rounded grams is still as asked
   * @param wish how likely the film is as asked, by the band of its glass transition, 0 to 1
   */
  public record Chances(OptionalDouble byDate, boolean asWished, double wish) {}

  /** The same, best at some goals, with the limits that are told of it. */
  PlannedRecipe bestAt(Set<Goal> those, List<BindingLimit> told) {
    return new PlannedRecipe(those, potfuls, cook, casting, film, drying, chances, told);
  }

  /** Copies the collections. */
  public PlannedRecipe {
    EnumSet<Goal> ordered = EnumSet.noneOf(Goal.class);
    ordered.addAll(goals);
    goals = Collections.unmodifiableSet(ordered);
    potfuls = List.copyOf(potfuls);
    limits = List.copyOf(limits);
  }

  /**
   * A recipe that somebody wrote, cooked as written there, in one potful.
   *
   * @param recipe what goes into the pot
   * @param casting what is cast of it
   * @param film its forecast
   * @param drying its forecast
   */
  public static PlannedRecipe written(
      Recipe recipe, Casting casting, FilmForecast film, DryingForecast drying) {
    return new PlannedRecipe(
        EnumSet.noneOf(Goal.class),
        List.of(new Potful(casting.pour().plates(), 1, recipe, casting.paste().massKg())),
        CookSteps.of(casting.composition().starchShares()).as(recipe.cook()),
        casting,
        film,
        drying,
        new Chances(OptionalDouble.empty(), true, 1),
        List.of());
  }

  /**
   * Plates poured.
   *
   * @return in all
   */
  public int plates() {
    return casting.pour().plates();
  }

  /** Paste on one plate (kg). */
  public double pourKg() {
    return casting.pouredKg();
  }

  /** Between which wet thicknesses the paste levels and stays on the plate. */
  public Levelling levelling() {
    return Levelling.of(casting.composition());
  }

  /** Film from all plates, at rest with the air of use (kg). */
  public double filmKg() {
    return casting.pouredOnAllKg()
        * casting.composition().drySolids()
        * (1 + film.equilibriumMoisture().middle());
  }

  /** Each starch over all potfuls (kg of powder). */
  public Map<StarchKind, Double> starchKg() {
    return potfuls.stream()
        .flatMap(
            potful ->
                potful.recipe().starches().stream()
                    .map(s -> Map.entry(s.kind(), potful.times() * s.massKg().value())))
        .collect(
            Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, Double::sum, TreeMap::new));
  }

  /**
   * Glycerol out of the jar, over all potfuls.
   *
   * @return kg, water and salt included
   */
  public double glycerolKg() {
    return overPotfuls(recipe -> recipe.glycerol().massKg().value());
  }

  /** Vinegar over all potfuls (kg). */
  double vinegarKg() {
    return overPotfuls(recipe -> recipe.vinegar().massKg().value());
  }

  private double overPotfuls(ToDoubleFunction<Recipe> kg) {
    return potfuls.stream().mapToDouble(p -> p.times() * kg.applyAsDouble(p.recipe())).sum();
  }
}
