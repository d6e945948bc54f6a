package starchfilm.planning;

import java.util.Map;
import starchfilm.material.ingredient.StarchKind;

/**
 * The pours that a number of pieces takes: as many on the plates there are as it needs, one after
 * the other, each of the safest recipe.
 *
 * @param request what was asked, supplies as they are at hand
 * @param pieces the pieces
 * @param eachPlate pieces on one plate
 * @param plates plates needed in all
 * @param pours pours on the plates there are
 * @param recipe one pour
 */
public record PiecesPlan(
    PlanRequest request,
    Pieces pieces,
    double eachPlate,
    int plates,
    int pours,
    PlannedRecipe recipe) {
  /** The same request with enough of everything in the cupboard, for one pour. */
  static PlanRequest unlimited(PlanRequest asked, int plates) {
    PlanRequest plenty = LimitMoves.plenty(Limit.STARCH, asked);
    int atOnce = Math.min(plates, asked.kitchen().plates());
    return (asked.supplies().glycerolKg() == 0 ? plenty : LimitMoves.plenty(Limit.GLYCEROL, plenty))
        .with(asked.kitchen().withPlates(atOnce));
  }

  /** Out of the jar for one pour (kg). */
  public double glycerolEachKg() {
    return recipe.glycerolKg();
  }

  /** Out of the jar for all plates (kg). */
  public double glycerolKg() {
    return glycerolEachKg() * plates / recipe.plates();
  }

  /** Glycerol to get beside what is at hand (kg). */
  public double missingGlycerolKg() {
    return Math.max(0, glycerolKg() - request.supplies().glycerolKg());
  }

  /** Glycerol left in the jar afterwards (kg). */
  public double leftKg() {
    return Math.max(0, request.supplies().glycerolKg() - glycerolKg());
  }

  /** The number of such pours that the jar still holds then. */
  public int morePours() {
    return glycerolEachKg() == 0 ? 0 : (int) Math.floor(leftKg() / glycerolEachKg() + 1e-9);
  }

  /** Each starch for all plates (kg of powder). */
  public Map<StarchKind, Double> starchKg() {
    Map<StarchKind, Double> all = recipe.starchKg();
    all.replaceAll((kind, kg) -> kg * plates / recipe.plates());
    return all;
  }

  /** Vinegar for all plates (kg). */
  public double vinegarKg() {
    return recipe.vinegarKg() * plates / recipe.plates();
  }

  /** Powder of a starch to get beside what is at hand (kg); 0 where there is plenty. */
  public double missingKg(StarchKind kind) {
    double at =
        request.supplies().starches().stream()
            .filter(starch -> starch.kind() == kind)
            .mapToDouble(starch -> starch.massKg().orElse(Double.POSITIVE_INFINITY))
            .findFirst()
            .orElse(0);
    return Math.max(0, starchKg().getOrDefault(kind, 0.0) - at);
  }
}
