package starchfilm.material.recipe;

import java.util.EnumMap;
import java.util.Map;
import starchfilm.material.ingredient.StarchKind;

/**
 * What is in the pot after the cook.
 *
 * @param dryStarchKg dry starch of each kind (kg)
 * @param glycerolKg pure glycerol (kg)
 * @param saltKg salt (kg)
 * @param aceticAcidKg acetic acid (kg); none is taken to leave with the steam
 * @param waterKg water from every ingredient, less what boiled away (kg)
 * @param solidsRelativeSd relative standard uncertainty of the dry solids per kg paste that the
 *     weighing of the ingredients leaves
 * @param plasticiserRelativeSd relative standard uncertainty of glycerol per dry starch that the
 *     weighing and the jar leave; 0 without glycerol
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
    Map<StarchKind, Double> copy = new EnumMap<>(StarchKind.class);
    copy.putAll(dryStarchKg);
    dryStarchKg = copy;
  }

  @Override
  public Map<StarchKind, Double> dryStarchKg() {
    return new EnumMap<>(dryStarchKg);
  }

  /**
   * The paste that a recipe gives.
   *
   * <p>Water of the powders, the jar and the vinegar counts as water, and the water lost in the pot
   * is gone. All acetic acid is taken to stay (assumed, no source): the steam over a dilute
   * solution is poorer in acid than the liquid, so the share of acid lost is below the share of
   * water lost.
   *
   * @param recipe what went into the pot and how it was cooked
   * @return what is in the pot, its mass equal to all that went in less the steam, to rounding
   * @throws IllegalArgumentException if more water is lost than there is, or no dry starch is left
   */
  public static Paste cooked(Recipe recipe) {
    return new MassBalance(recipe).paste();
  }

  /**
   * Dry starch of every kind together.
   *
   * @return kg
   */
  public double totalDryStarchKg() {
    return dryStarchKg.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /**
   * Everything in the pot.
   *
   * @return kg
   */
  public double massKg() {
    return totalDryStarchKg() + glycerolKg + saltKg + aceticAcidKg + waterKg;
  }

  /**
   * The paste per kilogram and on the dry basis.
   *
   * @return mass fractions that add up to 1
   */
  public Composition composition() {
    double dryStarch = totalDryStarchKg();
    double mass = massKg();
    Map<StarchKind, Double> shares = new EnumMap<>(StarchKind.class);
    dryStarchKg.forEach((kind, kg) -> shares.put(kind, kg / dryStarch));
    return new Composition(
        shares,
        dryStarch / mass,
        glycerolKg / mass,
        saltKg / mass,
        aceticAcidKg / mass,
        waterKg / mass);
  }
}
