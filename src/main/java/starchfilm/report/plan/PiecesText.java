package starchfilm.report.plan;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.units.Units.G_PER_KG;

import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.Plate;
import starchfilm.jar.recovery.OilBatch;
import starchfilm.jar.recovery.OilKind;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.figures.Spans;
import starchfilm.numerics.units.Plural;
import starchfilm.planning.Pieces;
import starchfilm.planning.PiecesPlan;
import starchfilm.planning.Supplies;
import starchfilm.report.TrialRows;
import starchfilm.report.data.AnswerTable;
import starchfilm.report.words.RecipeWords;

/** What a number of pieces takes, in sentences. */
final class PiecesText {
  private PiecesText() {}

  /**
   * All of it.
   *
   * @param plan what the pieces take
   * @return sentences
   */
  static List<String> of(PiecesPlan plan) {
    List<String> lines = new ArrayList<>();
    Pieces pieces = plan.pieces();
    String wanted =
        pieces.isArea()
            ? Figures.of(1e4 * pieces.lengthM() * pieces.widthM(), 3) + " cm² of film"
            : "%s of %s × %s mm, %s from a plate,"
                .formatted(
                    Plural.of(pieces.count(), "piece"),
                    Figures.of(1e3 * pieces.lengthM(), 3),
                    Figures.of(1e3 * pieces.widthM(), 3),
                    Math.round(plan.eachPlate()));
    lines.add(
        "%s take %s of %s, 10 mm cut off all round: %s%s."
            .formatted(
                wanted,
                Plural.of(plan.plates(), "plate"),
                RecipeWords.plate(plan.recipe().casting().plate()),
                Plural.of(plan.pours(), "pour"),
                plan.pours() == 1 ? "" : " of " + Plural.of(plan.recipe().plates(), "plate")));
    if (!pieces.isArea() && plan.recipe().casting().plate().outline() == Plate.Outline.FREE) {
      lines.add("The plate's shape is unknown: the pieces are counted on a square of its area.");
    }
    lines.add(together(plan));
    lines.add(time(plan));
    lines.add(toGet(plan));
    oil(plan, lines);
    left(plan, lines);
    return lines;
  }

  /** A row for all of it, and one for each pour. */
  static AnswerTable table(PiecesPlan needed, NamedRecipe each) {
    AnswerTable table = new AnswerTable("pieces");
    boolean counted = !needed.pieces().isArea();
    table
        .row("pieces", "in all")
        .put("pieces", counted ? needed.pieces().count() : Double.NaN)
        .put("pieces_per_plate", counted ? needed.eachPlate() : Double.NaN)
        .put("plates", needed.plates())
        .put("pours", needed.pours())
        .put("starch_g", needed.starchKg().values().stream().mapToDouble(kg -> kg).sum())
        .put("glycerol_g", needed.glycerolKg())
        .put("vinegar_g", needed.vinegarKg())
        .put(
            "starch_to_get_g",
            needed.starchKg().keySet().stream().mapToDouble(needed::missingKg).sum())
        .put("glycerol_to_get_g", needed.missingGlycerolKg())
        .put("glycerol_left_g", needed.leftKg())
        .put("more_pours", needed.morePours());
    TrialRows.put(table.row("recipe", each.title()), needed.recipe());
    return table.tell("what_it_takes", of(needed));
  }

  private static String together(PiecesPlan plan) {
    List<String> parts = new ArrayList<>();
    plan.starchKg().forEach((kind, kg) -> add(parts, kg, kind.tradeName() + " starch"));
    add(parts, plan.glycerolKg(), "glycerol out of the jar");
    add(parts, plan.vinegarKg(), "vinegar");
    return "In all: " + String.join(", ", parts) + ".";
  }

  private static void add(List<String> parts, double kg, String what) {
    if (kg > 0) {
      parts.add(grams(kg) + " of " + what);
    }
  }

  private static String time(PiecesPlan plan) {
    Band ready = plan.recipe().drying().dryThroughS();
    return plan.pours() == 1
        ? "Ready " + Spans.of(ready) + " after the pour."
        : ("One pour is ready after %s; on these plates, one pour after the other, all of them"
                + " after about %s, the time to peel and clean not counted.")
            .formatted(Spans.of(ready), Spans.of(ready.times(plan.pours())));
  }

  private static String toGet(PiecesPlan plan) {
    List<String> parts = new ArrayList<>();
    for (StarchKind kind : plan.starchKg().keySet()) {
      add(parts, plan.missingKg(kind), kind.tradeName() + " starch");
    }
    add(parts, plan.missingGlycerolKg(), "such glycerol");
    return parts.isEmpty()
        ? "To buy: nothing; you have enough of everything you listed."
        : "To buy: " + String.join(", ", parts) + ".";
  }

  /** How much oil that is, and no word on how to get it out. */
  private static void oil(PiecesPlan plan, List<String> lines) {
    Supplies supplies = plan.request().supplies();
    if (supplies.jar().origin() != GlycerolOrigin.RECOVERED || plan.glycerolKg() == 0) {
      return;
    }
    double pureKg = plan.glycerolKg() * supplies.jar().glycerolFraction().value();
    Estimate oil = OilBatch.holding(OilKind.USED_FRYING_OIL, pureKg);
    Band range = Band.of(oil);
    lines.add(
        ("That much glycerol was bound in about %s g of used oil (%s to %s g; saponification value"
                + " 180 to 205 mg KOH/g, judged). No recovery brings all of it back, so count on more"
                + " oil.")
            .formatted(
                Figures.of(range.middle() * G_PER_KG, 2),
                Figures.of(range.low() * G_PER_KG, 2),
                Figures.of(range.high() * G_PER_KG, 2)));
  }

  private static void left(PiecesPlan plan, List<String> lines) {
    if (plan.glycerolKg() > 0 && plan.missingGlycerolKg() == 0) {
      lines.add(
          "Left in the jar afterwards: %s, enough for %s more such %s."
              .formatted(
                  grams(plan.leftKg()),
                  plan.morePours() == 0 ? "no" : String.valueOf(plan.morePours()),
                  plan.morePours() == 1 ? "pour" : "pours"));
    }
  }

  private static String grams(double kg) {
    return GRAM.noted(Math.ceil(kg * 1e3 - 1e-6) / 1e3);
  }
}
