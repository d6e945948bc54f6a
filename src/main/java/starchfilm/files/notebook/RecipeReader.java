package starchfilm.files.notebook;

import static starchfilm.numerics.units.Units.MINUTE_S;
import static starchfilm.numerics.units.Units.PERCENT;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import starchfilm.files.findings.Findings;
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

  private static final Estimate COOK_MINUTES = Estimate.between(5, 20);
  private static final Estimate COOK_TOP_C = Estimate.between(85, 98);
  private static final double LEAST_WATER_LOST = 0.02;
  private static final double MOST_WATER_LOST = 0.12;

  private final Findings findings;
  private final Scale scale;
  private final Volumes volumes;

  RecipeReader(Findings findings, Scale scale) {
    this.findings = findings;
    this.scale = scale;
    this.volumes = new Volumes(findings, scale);
  }

  /**
   * Reads the recipe.
   *
   * @param file the trial's file; a kept jar is looked for beside it
   * @return the recipe, or empty where the file gives none
   */
  Optional<Recipe> read(ObjectReader trial, Path file) {
    if (!trial.has("recipe")) {
      findings.fault(
          trial.place(),
          "a file without the field recipe",
          "a trial with at least recipe and, in it, starch",
          "add the recipe, or move the file to another folder if it is no trial");
    }
    Optional<ObjectReader> found = trial.section("recipe");
    ObjectReader recipe = found.orElseGet(() -> trial.empty("recipe"));
    StarchReader starchReader = new StarchReader(findings, volumes);
    List<StarchReader.Noted> noted = starchReader.starches(recipe, found.isPresent());
    Optional<ObjectReader> water = recipe.section("water");
    Optional<Estimate> waterKg = water.flatMap(section -> volumes.massKg(section, Volumes.WATER));
    List<StarchPortion> starches = starchReader.weighedStarches(noted, waterKg);
    double starchKg = starches.stream().mapToDouble(s -> s.massKg().value()).sum();
    Estimate waterTaken =
        waterKg.orElseGet(() -> starchReader.assumedWater(recipe, noted, starchKg));
    GlycerolPortion glycerol = new GlycerolReader(findings).read(recipe, starchKg, volumes, file);
    VinegarPortion vinegar = vinegar(recipe, waterTaken);
    Estimate salt = scale.kg(recipe.amount("salt_g"), Estimate.exact(0));
    Estimate inert = scale.kg(recipe.amount("inert_g"), Estimate.exact(0));
    Cook cook = cook(trial, waterTaken, waterTaken.value() + vinegar.massKg().value());
    // Without starch there is no recipe, but the other faults of the file are found all the same.
    return starches.isEmpty()
        ? Optional.empty()
        : Optional.of(new Recipe(starches, glycerol, vinegar, waterTaken, salt, inert, cook));
  }

  private VinegarPortion vinegar(ObjectReader recipe, Estimate waterKg) {
    Optional<ObjectReader> found = recipe.section("vinegar");
    if (found.isEmpty()) {
      return new VinegarPortion(Estimate.exact(0), Estimate.exact(0.05));
    }
    ObjectReader section = found.get();
    Amount acidity = section.amount("acidity_pct");
    Estimate acid = acidity.or(Estimate.between(4, 8)).times(PERCENT);
    if (!acidity.isKnown()) {
      findings.notRecorded(
          section.path("acidity_pct"), "4 to 8 % acid", "how far the acid cuts the chains");
    }
    Optional<Estimate> mass = volumes.massKg(section, Volumes.vinegar(acid.value()));
    Estimate massKg = mass.orElseGet(() -> Estimate.between(0, 0.1 * waterKg.value()));
    if (mass.isEmpty()) {
      findings.notRecorded(
          section.path("mass_g"),
          Words.grams(massKg),
          "how far the acid cuts the chains, and a little water");
    }
    return new VinegarPortion(massKg, acid);
  }

  private Cook cook(ObjectReader trial, Estimate waterKg, double mostKg) {
    Optional<ObjectReader> found = trial.section("cook");
    Amount missing = Amount.Missing.NOT_RECORDED;
    Amount minutes = found.map(cook -> cook.amount("minutes")).orElse(missing);
    Amount top = found.map(cook -> cook.amount("top_C")).orElse(missing);
    Amount lost = found.map(cook -> cook.amount("water_lost_g")).orElse(missing);
    Estimate lostKg =
        scale.kg(
            lost,
            Estimate.between(
                LEAST_WATER_LOST * waterKg.value(), MOST_WATER_LOST * waterKg.value()));
    if (!minutes.isKnown()) {
      findings.notRecorded("cook.minutes", "5 to 20 min", "how far the acid cuts the chains");
    }
    if (!top.isKnown()) {
      findings.notRecorded(
          "cook.top_C",
          "85 to 98 \u00B0C",
          "whether every grain gelatinised, and how far the acid cuts the chains");
    }
    if (!lost.isKnown()) {
      findings.notRecorded(
          "cook.water_lost_g",
          Words.grams(lostKg) + ", 2 to 12 % of the water",
          "the paste may be thicker or thinner; weigh the pot before and after");
    }
    if (lost.isKnown() && lostKg.value() >= mostKg) {
      findings.fault(
          found.orElseThrow().placeOf("water_lost_g"),
          Words.number(lostKg.value() * 1000) + " g of water lost in the pot",
          "less than the " + Words.number(mostKg * 1000) + " g that went in",
          "weigh the pot before and after the cook and write the difference");
    }
    return new Cook(
        minutes.or(COOK_MINUTES).times(MINUTE_S),
        top.or(COOK_TOP_C).plus(Estimate.exact(ZERO_CELSIUS_K)),
        lostKg);
  }
}
