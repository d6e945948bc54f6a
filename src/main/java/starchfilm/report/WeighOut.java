package starchfilm.report;

import java.util.ArrayList;
import java.util.List;
import starchfilm.forecast.TrialForecast;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.report.words.Figures;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.RecipeWords;

/**
 * What goes on the scale and into the pot.
 *
 * @param cook how it is cooked, in one sentence
 * @param paste what that gives, in one sentence
 */
record WeighOut(List<Line> lines, String total, String cook, String paste) {
  /**
   * An ingredient.
   *
   * @param grams how much, with its unit
   * @param note what it holds; may be empty
   */
  record Line(String name, String grams, String note) {}

  /**
   * The weigh-out of a trial.
   *
   * @return lines in the order of the pot
   */
  static WeighOut of(TrialForecast trial) {
    Recipe recipe = trial.trial().recipe();
    List<Line> lines = new ArrayList<>();
    for (StarchPortion portion : recipe.starches()) {
      lines.add(
          line(
              portion.powder(),
              portion.massKg(),
              percent(portion.moistureFraction()) + " moisture"));
    }
    add(lines, "water", recipe.waterKg(), "");
    add(lines, "glycerol", recipe.glycerol().massKg(), RecipeWords.jar(recipe.glycerol()));
    add(
        lines,
        "vinegar",
        recipe.vinegar().massKg(),
        percent(recipe.vinegar().acidityFraction()) + " acid");
    recipe.others().forEach((name, kg) -> add(lines, name, kg, ""));
    return new WeighOut(lines, ReaderUnit.GRAM.noted(recipe.massKg()), cook(recipe), paste(trial));
  }

  private static void add(List<Line> lines, String name, Estimate massKg, String note) {
    if (massKg.value() > 0) {
      lines.add(line(name, massKg, note));
    }
  }

  private static Line line(String name, Estimate massKg, String note) {
    return new Line(name, ReaderUnit.GRAM.noted(massKg), note);
  }

  private static String percent(Estimate fraction) {
    return Figures.noted(100 * fraction.value()) + " %";
  }

  private static String cook(Recipe recipe) {
    double hottest =
        recipe.starches().stream()
            .map(StarchPortion::kind)
            .mapToDouble(StarchKind::gelatinisationEndK)
            .max()
            .orElseThrow();
    return "Cook "
        + Math.round(ReaderUnit.MINUTE.of(recipe.cook().durationS().value()))
        + " min at "
        + Figures.whole(ReaderUnit.CELSIUS.of(recipe.cook().topTemperatureK().value()))
        + " °C (this starch has gelatinised by "
        + Figures.whole(ReaderUnit.CELSIUS.of(hottest))
        + " °C); about "
        + Figures.two(ReaderUnit.GRAM.of(recipe.cook().waterLostKg().value()))
        + " g boils off.";
  }

  private static String paste(TrialForecast trial) {
    double level = trial.composition().glycerolPerDryStarch();
    return Figures.two(ReaderUnit.GRAM.of(trial.paste().massKg()))
        + " g of paste with "
        + Figures.two(100 * trial.composition().drySolids())
        + " % dry solids"
        + (Double.isInfinite(level)
            ? ""
            : " and " + Figures.two(100 * level) + " g glycerol per 100 g dry starch")
        + ", pH about "
        + Figures.two(trial.film().acid().pastePh())
        + ".";
  }
}
