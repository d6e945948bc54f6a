package starchfilm.recipe;

import java.util.EnumMap;
import java.util.Map;
import starchfilm.ingredient.StarchKind;

/**
 * What is in the pot after the cook.
 *
 * @param dryStarchKg dry starch of each kind (kg)
 * @param glycerolKg pure glycerol (kg)
 * @param saltKg salt (kg)
 * @param aceticAcidKg acetic acid (kg)
 * @param waterKg water from every ingredient, less what boiled away (kg)
 * @param solidsRelativeSd relative standard uncertainty of the dry solids per kg paste that the
 *     weighing of the ingredients leaves
 * @param plasticiserRelativeSd relative standard uncertainty of glycerol per dry starch that the
 *     weighing and the jar leave
 */
public record Paste(
    Map<StarchKind, Double> dryStarchKg,
    double glycerolKg,
    double saltKg,
    double aceticAcidKg,
    double waterKg,
    double solidsRelativeSd,
    double plasticiserRelativeSd) {
  /** Copies the map. */
  public Paste {
    dryStarchKg = new EnumMap<>(dryStarchKg);
  }

  @Override
  public Map<StarchKind, Double> dryStarchKg() {
    return new EnumMap<>(dryStarchKg);
  }
}
