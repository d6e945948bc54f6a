package starchfilm.report.plan;

import java.util.ArrayList;
import java.util.List;
import starchfilm.material.ingredient.VolkKaehler2018;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.material.recipe.Recipe;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.planning.Potful;
import starchfilm.report.words.Figures;
import starchfilm.report.words.Plural;
import starchfilm.report.words.ReaderUnit;
import starchfilm.report.words.RecipeWords;

/** The weigh-out of one potful, in grams and millilitres. */
final class PotfulLines {
  private static final double ROOM_K = 293.15;
  private static final double ML_PER_M3 = 1e6;

  /**
   * Rise of density per mass fraction of acetic acid in dilute vinegar (kg/m3). Source: CRC
   * Handbook, concentrative properties of aqueous solutions (recalled, rounded).
   */
  private static final double ACETIC_ACID_SLOPE_KG_PER_M3 = 140;

  private PotfulLines() {}

  static PlanSheet.Potful of(Potful potful, String heading) {
    Recipe recipe = potful.recipe();
    List<PlanSheet.Line> lines = new ArrayList<>();
    for (StarchPortion portion : recipe.starches()) {
      lines.add(
          new PlanSheet.Line(
              portion.powder(),
              ReaderUnit.GRAM.noted(portion.massKg().value()),
              "",
              "powder of "
                  + Figures.noted(100 * portion.moistureFraction().value())
                  + " % moisture"));
    }
    add(
        lines,
        "glycerol",
        recipe.glycerol().massKg().value(),
        density(recipe.glycerol().stock()),
        RecipeWords.jar(recipe.glycerol()));
    add(
        lines,
        "vinegar",
        recipe.vinegar().massKg().value(),
        Composition.WATER_KG_PER_M3
            + ACETIC_ACID_SLOPE_KG_PER_M3 * recipe.vinegar().acidityFraction().value(),
        Figures.noted(100 * recipe.vinegar().acidityFraction().value()) + " % acid");
    add(
        lines,
        "water",
        recipe.waterKg().value(),
        Composition.WATER_KG_PER_M3,
        Figures.two(ReaderUnit.GRAM.of(recipe.cook().waterLostKg().value()))
            + " g of it boils off");
    recipe
        .others()
        .forEach(
            (name, kg) ->
                lines.add(new PlanSheet.Line(name, ReaderUnit.GRAM.noted(kg.value()), "", "")));
    return new PlanSheet.Potful(
        heading,
        lines,
        ReaderUnit.GRAM.noted(recipe.massKg()),
        ReaderUnit.GRAM.noted(potful.cookedKg()));
  }

  /** For which plates, and how often. */
  static String heading(Potful potful, boolean alone) {
    String plates = Plural.of(potful.plates(), "plate");
    if (alone) {
      return "One potful for " + (potful.plates() == 1 ? plates : "all " + plates);
    }
    return potful.times() == 1
        ? "One potful for " + plates
        : "Each of " + potful.times() + " potfuls, for " + plates;
  }

  /** Salt is left out: it would make the millilitres a little fewer. */
  private static double density(GlycerolStock stock) {
    double liquid = 1 - stock.saltFraction().value();
    double glycerol = liquid > 0 ? stock.glycerolFraction().value() / liquid : 1;
    return new VolkKaehler2018().kgPerM3(Math.min(1, glycerol), ROOM_K);
  }

  private static void add(
      List<PlanSheet.Line> lines, String name, double massKg, double kgPerM3, String note) {
    if (massKg > 0) {
      lines.add(
          new PlanSheet.Line(
              name,
              ReaderUnit.GRAM.noted(massKg),
              millilitres(massKg / kgPerM3 * ML_PER_M3),
              note));
    }
  }

  private static String millilitres(double ml) {
    return (ml < 20 ? Figures.two(ml) : Figures.whole(ml)) + " ml";
  }
}
