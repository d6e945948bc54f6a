package starchfilm.files.notebook;

import static starchfilm.numerics.units.Units.PERCENT_PER_UNIT;

import java.util.Optional;
import starchfilm.casting.DryingLimits;
import starchfilm.files.findings.Words;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.Place;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Paste;
import starchfilm.material.recipe.Recipe;

/**
 * Cooks the recipe of a file, unless its amounts make no paste that could become a film.
 *
 * <p>The limits are far from any recipe and judged, no source: with less starch the paste stays
 * water, with more glycerol the film stays a syrup, with more of other solids it is a powder. They
 * are there for a slip of the pen.
 */
final class PasteReader {
  private static final double LEAST_STARCH = 0.005;
  private static final double MOST_GLYCEROL_PER_STARCH = 5;
  private static final double MOST_INERT = 0.9;

  private PasteReader() {}

  /**
   * The paste.
   *
   * @return the paste; empty where a fault says why there is none
   */
  static Optional<Paste> cooked(ObjectReader trial, Recipe recipe) {
    if (recipe.starches().stream().allMatch(starch -> starch.dryKg() <= 0)) {
      fault(
          trial,
          "starch",
          "neither the grams of starch nor the water to compute them from",
          "at least one of the two",
          "write the grams of powder weighed as mass_g");
      return Optional.empty();
    }
    Paste paste;
    try {
      paste = Paste.cooked(recipe);
    } catch (IllegalArgumentException impossible) {
      trial.fault("recipe", String.valueOf(impossible.getMessage()), "", "check these amounts");
      return Optional.empty();
    }
    Composition composition = paste.composition();
    if (composition.dryStarch() < LEAST_STARCH) {
      fault(
          trial,
          "starch",
          Words.number(PERCENT_PER_UNIT * composition.dryStarch()) + " % dry starch in the paste",
          "at least " + Words.number(PERCENT_PER_UNIT * LEAST_STARCH) + " %",
          "check the grams of starch and of water");
    } else if (composition.glycerolPerDryStarch() > MOST_GLYCEROL_PER_STARCH) {
      fault(
          trial,
          "glycerol",
          Words.number(PERCENT_PER_UNIT * composition.glycerolPerDryStarch())
              + " g glycerol per 100 g dry starch",
          "at most " + Words.number(PERCENT_PER_UNIT * MOST_GLYCEROL_PER_STARCH) + " g",
          "check the grams of glycerol and of starch; such a mixture stays liquid");
    } else if (composition.inertFractionOfDry() > MOST_INERT) {
      fault(
          trial,
          "inert_g",
          Words.number(PERCENT_PER_UNIT * composition.inertFractionOfDry())
              + " % of the solids neither starch nor glycerol",
          "at most " + Words.number(PERCENT_PER_UNIT * MOST_INERT) + " %",
          "check the grams of other solids and of starch");
    } else if (composition.waterKgPerKgDry() < DryingLimits.START_MOISTURE.min()) {
      fault(
          trial,
          "water",
          Words.number(composition.waterKgPerKgDry())
              + " g water per gram of solids after the cook",
          "at least " + Words.number(DryingLimits.START_MOISTURE.min()) + " g",
          "check the grams of water and those lost in the pot");
    } else {
      return Optional.of(paste);
    }
    return Optional.empty();
  }

  private static void fault(
      ObjectReader trial, String key, String given, String allowed, String mend) {
    ObjectReader recipe = trial.sectionOrEmpty("recipe");
    Place place = recipe.value(key).map(Located::place).orElse(recipe.place().at(key));
    trial.findings().fault(place, given, allowed, mend);
  }
}
