package starchfilm.report.words;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.material.recipe.VinegarPortion;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;

/**
 * An ingredient that goes on the scale and into the pot.
 *
 * @param name the ingredient
 * @param grams how much, with its unit
 * @param millilitres the same by the jug, with its unit; empty for powders
 * @param note what it holds; may be empty
 */
public record PotLine(String name, String grams, String millilitres, String note) {
  private static final double ML_PER_M3 = 1e6;

  /** The lines of a pot, as it was noted. */
  public static List<PotLine> asNoted(Recipe recipe) {
    return of(recipe, GRAM::noted);
  }

  /**
   * The lines of one potful.
   *
   * @param recipe what goes into it
   * @param grams how masses are written: as weighed out, or with what is uncertain of them
   * @return in the order in which it goes on the scale
   */
  public static List<PotLine> of(Recipe recipe, Function<Estimate, String> grams) {
    List<PotLine> lines = new ArrayList<>();
    for (StarchPortion portion : recipe.starches()) {
      String moisture = PERCENT.noted(portion.moistureFraction().value());
      lines.add(
          new PotLine(
              portion.powder(),
              grams.apply(portion.massKg()),
              "",
              "powder of " + moisture + " moisture"));
    }
    add(
        lines,
        "glycerol",
        recipe.glycerol().massKg(),
        grams,
        recipe.glycerol().stock().kgPerM3(),
        RecipeWords.jar(recipe.glycerol()));
    double acidity = recipe.vinegar().acidityFraction().value();
    add(
        lines,
        "vinegar",
        recipe.vinegar().massKg(),
        grams,
        VinegarPortion.kgPerM3(acidity),
        PERCENT.noted(acidity) + " acid");
    add(
        lines,
        "water",
        recipe.waterKg(),
        grams,
        Composition.WATER_KG_PER_M3,
        "including " + GRAM.figure(recipe.cook().waterLostKg().value()) + " that boils off");
    recipe.others().forEach((name, kg) -> lines.add(new PotLine(name, grams.apply(kg), "", "")));
    return lines;
  }

  private static void add(
      List<PotLine> lines,
      String name,
      Estimate massKg,
      Function<Estimate, String> grams,
      double kgPerM3,
      String note) {
    if (massKg.value() > 0) {
      double ml = massKg.value() / kgPerM3 * ML_PER_M3;
      String jug = (ml < 20 ? Figures.two(ml) : Figures.whole(ml)) + " ml";
      lines.add(new PotLine(name, grams.apply(massKg), jug, note));
    }
  }
}
