package starchfilm.files.notebook;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import starchfilm.files.findings.Words;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.evidence.Estimate;

/**
 * Reads {@code recipe} and {@code cook}: what went into the pot.
 *
 * <p>What is assumed where nothing is recorded is judged, no source, and wide enough to show in the
 * bands.
 */
final class RecipeReader {

  private static final double LEAST_WATER_LOST = 0.02;
  private static final double MOST_WATER_LOST = 0.12;

  private RecipeReader() {}

  /**
   * Reads the recipe.
   *
   * @param file the trial's file; a kept jar is looked for beside it
   * @return the recipe, or empty where the file gives none
   */
  static Optional<Recipe> read(ObjectReader trial, Path file) {
    if (!trial.has("recipe")) {
      trial.fault(
          "a file without the field recipe",
          "a trial with at least recipe and, in it, starch",
          "add the recipe, or move the file to another folder if it is no trial");
    }
    ObjectReader recipe = trial.sectionOrEmpty("recipe");
    List<StarchReader.Noted> noted = StarchReader.starches(recipe, recipe.isThere());
    Optional<ObjectReader> water = recipe.section("water");
    Optional<Estimate> waterKg = water.flatMap(section -> Volumes.massKg(section, Volumes.WATER));
    List<StarchPortion> starches = StarchReader.weighedStarches(noted, waterKg);
    double starchKg = starches.stream().mapToDouble(s -> s.massKg().value()).sum();
    Estimate waterTaken =
        waterKg.orElseGet(() -> StarchReader.assumedWater(recipe, noted, starchKg));
    GlycerolPortion glycerol = GlycerolReader.read(recipe, starchKg, file);
    VinegarPortion vinegar = vinegar(recipe, waterTaken);
    Estimate salt = recipe.taken("salt_g");
    Estimate inert = recipe.taken("inert_g");
    Cook cook = cook(trial, waterTaken, waterTaken.value() + vinegar.massKg().value());
    // Without starch there is no recipe, but the other faults of the file are found all the same.
    return starches.isEmpty()
        ? Optional.empty()
        : Optional.of(new Recipe(starches, glycerol, vinegar, waterTaken, salt, inert, cook));
  }

  private static VinegarPortion vinegar(ObjectReader recipe, Estimate waterKg) {
    Optional<ObjectReader> found = recipe.section("vinegar");
    if (found.isEmpty()) {
      return new VinegarPortion(Estimate.exact(0), Estimate.exact(0.05));
    }
    ObjectReader section = found.get();
    Estimate acid = section.taken("acidity_pct");
    Estimate assumed = Estimate.between(0, 0.1 * waterKg.value());
    double density = VinegarPortion.kgPerM3(acid.value());
    return new VinegarPortion(
        Volumes.massKg(section, density, assumed, Words.grams(assumed)), acid);
  }

  private static Cook cook(ObjectReader trial, Estimate waterKg, double mostKg) {
    ObjectReader cook = trial.sectionOrEmpty("cook");
    Estimate durationS = cook.taken("minutes");
    Estimate topK = cook.taken("top_C");
    Estimate assumed =
        Estimate.between(LEAST_WATER_LOST * waterKg.value(), MOST_WATER_LOST * waterKg.value());
    String words = Words.grams(assumed) + ", 2 to 12 % of the water";
    Optional<Estimate> weighedKg = cook.amount("water_lost_g");
    Estimate lostKg = weighedKg.orElseGet(() -> cook.assumed("water_lost_g", assumed, words));
    if (weighedKg.isPresent() && lostKg.value() >= mostKg) {
      cook.fault(
          "water_lost_g",
          Words.grams(lostKg.value()) + " of water lost in the pot",
          "less than the " + Words.grams(mostKg) + " that went in",
          "weigh the pot before and after the cook and write the difference");
    }
    return new Cook(durationS, topK, lostKg);
  }
}
