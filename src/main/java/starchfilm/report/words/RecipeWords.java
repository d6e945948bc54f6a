package starchfilm.report.words;

import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.List;
import java.util.stream.Collectors;
import starchfilm.casting.FaceChange;
import starchfilm.casting.Plate;
import starchfilm.material.recipe.GlycerolPortion;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;

/** Ingredients and plates in a few words. */
public final class RecipeWords {
  private static final double NEGLIGIBLE = 0.005;

  private RecipeWords() {}

  /**
   * The kinds of starch and their shares of the powder.
   *
   * @param recipe the recipe
   * @return such as {@code potato} or {@code 67 % potato, 33 % tapioca}
   */
  public static String starchKinds(Recipe recipe) {
    if (recipe.starches().size() == 1) {
      return recipe.starches().get(0).kind().tradeName();
    }
    return recipe.starches().stream()
        .map(
            portion ->
                "%s %% %s"
                    .formatted(
                        PERCENT.whole(portion.massKg().value() / recipe.starchKg()),
                        portion.kind().tradeName()))
        .collect(Collectors.joining(", "));
  }

  /**
   * The content of the jar of glycerol.
   *
   * @param portion what was weighed from it
   * @return such as {@code 88 % glycerol, 9.0 % water, 3 % salt}; {@code none} where none was used
   */
  public static String jar(GlycerolPortion portion) {
    if (portion.massKg().value() == 0) {
      return "none";
    }
    GlycerolStock stock = portion.stock();
    double water = 1 - stock.glycerolFraction().value() - stock.saltFraction().value();
    StringBuilder text = new StringBuilder(percent(stock.glycerolFraction()) + " glycerol");
    if (water > NEGLIGIBLE) {
      text.append(", ").append(Figures.two(100 * water)).append(" % water");
    }
    if (stock.saltFraction().value() > 0) {
      text.append(", ").append(percent(stock.saltFraction())).append(" salt");
    }
    return text.toString();
  }

  /**
   * A plasticiser level.
   *
   * @param glycerolPerDryStarch kg per kg
   * @return such as {@code 30 g glycerol per 100 g dry starch}
   */
  public static String plasticiser(double glycerolPerDryStarch) {
    return PERCENT.two(glycerolPerDryStarch) + " g glycerol per 100 g dry starch";
  }

  /**
   * A plate.
   *
   * @param plate the plate
   * @return such as {@code glass, 30 × 20 cm}
   */
  public static String plate(Plate plate) {
    return plate.material().words() + ", " + plate.size();
  }

  /**
   * The changes to the film while it dried.
   *
   * @param changes in order of time
   * @return such as {@code turned over after 2.0 days}
   */
  public static String faces(List<FaceChange> changes) {
    return FaceChange.words(changes, "left on the plate");
  }

  /** A share as noted; the middle of a range has two figures, for more would mean nothing. */
  private static String percent(Estimate fraction) {
    double percent = 100 * fraction.value();
    return (fraction.sd() > 0 ? Figures.two(percent) : Figures.noted(percent)) + " %";
  }
}
