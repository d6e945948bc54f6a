package starchfilm.report;

import static starchfilm.numerics.units.ReaderUnit.CELSIUS;
import static starchfilm.numerics.units.ReaderUnit.GRAM;
import static starchfilm.numerics.units.ReaderUnit.MINUTE;
import static starchfilm.numerics.units.ReaderUnit.PERCENT;

import java.util.List;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.numerics.units.Figures;
import starchfilm.report.words.PotLine;
import starchfilm.report.words.RecipeWords;

/**
 * What goes on the scale and into the pot.
 *
 * @param cook how it is cooked, in one sentence
 * @param paste what that gives, in one sentence
 */
record WeighOut(List<PotLine> lines, String total, String cook, String paste) {
  /**
   * The weigh-out of a trial.
   *
   * @return lines in the order of the pot
   */
  public static WeighOut of(TrialForecast trial) {
    Recipe recipe = trial.trial().recipe();
    return new WeighOut(
        PotLine.of(recipe, GRAM::noted), GRAM.noted(recipe.massKg()), cook(recipe), paste(trial));
  }

  private static String cook(Recipe recipe) {
    double hottest =
        recipe.starches().stream()
            .map(StarchPortion::kind)
            .mapToDouble(StarchKind::gelatinisationEndK)
            .max()
            .orElseThrow();
    return "Cook %s min at %s (this starch has gelatinised by %s); about %s boils off."
        .formatted(
            Math.round(MINUTE.of(recipe.cook().durationS().value())),
            CELSIUS.figure(recipe.cook().topTemperatureK().value()),
            CELSIUS.figure(hottest),
            GRAM.figure(recipe.cook().waterLostKg().value()));
  }

  private static String paste(TrialForecast trial) {
    double level = trial.composition().glycerolPerDryStarch();
    return "%s of paste with %s dry solids%s, pH about %s."
        .formatted(
            GRAM.figure(trial.casting().paste().massKg()),
            PERCENT.figure(trial.composition().drySolids()),
            Double.isInfinite(level) ? "" : " and " + RecipeWords.plasticiser(level),
            Figures.two(trial.film().acid().pastePh()));
  }
}
