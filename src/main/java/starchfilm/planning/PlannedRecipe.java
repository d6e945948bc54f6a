package starchfilm.planning;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import starchfilm.casting.Plate;
import starchfilm.casting.Pour;
import starchfilm.drying.DryingForecast;
import starchfilm.film.FilmForecast;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Paste;

/**
 * A recipe ready to be weighed out. Every forecast is of the rounded grams.
 *
 * @param goals what it is best at; at least one
 * @param potfuls what goes into the pot, the largest first
 * @param cook how it is cooked
 * @param paste the first potful after the cook
 * @param plate one plate, with what its rim leaves above the paste
 * @param pour how it is poured
 * @param pourKg paste on one plate (kg)
 * @param plates plates poured in all
 * @param film the dry film
 * @param drying how it dries, in the three spots
 * @param chance share of the likely cases in which the thick spot is ready by the date; empty
 *     without a date
 * @param asWished true where the film forecast from the rounded grams is still as asked
 * @param wishChance how likely the film is as asked, by the band of its glass transition, 0 to 1
 * @param levelling between which wet thicknesses the paste levels and stays on the plate
 * @param filmKg film from all plates, at rest with the air of use (kg)
 * @param limits what keeps it from giving more
 */
public record PlannedRecipe(
    Set<Goal> goals,
    List<Potful> potfuls,
    CookSteps cook,
    Paste paste,
    Plate plate,
    Pour pour,
    double pourKg,
    int plates,
    FilmForecast film,
    DryingForecast drying,
    OptionalDouble chance,
    boolean asWished,
    double wishChance,
    Levelling levelling,
    double filmKg,
    List<BindingLimit> limits) {
  /** Copies the collections. */
  public PlannedRecipe {
    goals = EnumSet.copyOf(goals);
    potfuls = List.copyOf(potfuls);
    limits = List.copyOf(limits);
  }

  @Override
  public Set<Goal> goals() {
    return EnumSet.copyOf(goals);
  }

  /**
   * The paste per kilogram.
   *
   * @return of the first potful
   */
  public Composition composition() {
    return paste.composition();
  }

  /**
   * Glycerol out of the jar, over all potfuls.
   *
   * @return kg, water and salt included
   */
  public double glycerolKg() {
    return potfuls.stream()
        .mapToDouble(p -> p.times() * p.recipe().glycerol().massKg().value())
        .sum();
  }

  /**
   * Film area, over all plates.
   *
   * @return m2
   */
  public double filmAreaM2() {
    return plates * plate.areaM2();
  }
}
