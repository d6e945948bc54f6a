package starchfilm.material.recipe;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import starchfilm.numerics.evidence.Estimate;

/**
 * The ingredients of a paste as weighed, and how it was cooked.
 *
 * @param starches the starch powders; at least one
 * @param glycerol glycerol out of a jar; mass 0 for none
 * @param vinegar vinegar; mass 0 for none
 * @param waterKg water poured in (kg)
 * @param saltKg salt added on purpose (kg); 0 for none
 * @param inertKg other solids that stay in the film, beside those in the powders (kg); 0 for none
 * @param cook how it was cooked
 */
public record Recipe(
    List<StarchPortion> starches,
    GlycerolPortion glycerol,
    VinegarPortion vinegar,
    Estimate waterKg,
    Estimate saltKg,
    Estimate inertKg,
    Cook cook) {
  /** Copies the list and checks that there is starch and no amount is negative. */
  public Recipe {
    starches = List.copyOf(starches);
    if (starches.isEmpty()) {
      throw new IllegalArgumentException("a recipe needs at least one starch");
    }
    Amounts.requireMass("water", waterKg);
    Amounts.requireMass("salt", saltKg);
    Amounts.requireMass("other solids", inertKg);
  }

  /** A recipe without other solids. */
  public Recipe(
      List<StarchPortion> starches,
      GlycerolPortion glycerol,
      VinegarPortion vinegar,
      Estimate waterKg,
      Estimate saltKg,
      Cook cook) {
    this(starches, glycerol, vinegar, waterKg, saltKg, Estimate.exact(0), cook);
  }

  /**
   * The same recipe, more or less of it.
   *
   * @param factor how many times as much
   * @return with every mass, and the water lost in the pot, times that
   */
  public Recipe times(double factor) {
    return new Recipe(
        starches.stream()
            .map(
                portion ->
                    new StarchPortion(
                        portion.kind(),
                        portion.massKg().times(factor),
                        portion.moistureFraction(),
                        portion.inertFraction()))
            .toList(),
        new GlycerolPortion(glycerol.massKg().times(factor), glycerol.stock()),
        new VinegarPortion(vinegar.massKg().times(factor), vinegar.acidityFraction()),
        waterKg.times(factor),
        saltKg.times(factor),
        inertKg.times(factor),
        new Cook(cook.durationS(), cook.topTemperatureK(), cook.waterLostKg().times(factor)));
  }

  /** Returns what else goes in as it is: its name and mass (kg), where there is any. */
  public Map<String, Estimate> others() {
    Map<String, Estimate> others = new LinkedHashMap<>();
    others.put("salt", saltKg);
    others.put("other solids", inertKg);
    others.values().removeIf(kg -> kg.value() == 0);
    return others;
  }

  /** Starch powder as weighed (kg). */
  public double starchKg() {
    return starches.stream().mapToDouble(portion -> portion.massKg().value()).sum();
  }

  /**
   * Everything that goes into the pot.
   *
   * @return kg, before the cook
   */
  public double massKg() {
    return starchKg()
        + glycerol.massKg().value()
        + vinegar.massKg().value()
        + waterKg.value()
        + others().values().stream().mapToDouble(Estimate::value).sum();
  }
}
