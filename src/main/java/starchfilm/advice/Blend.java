package starchfilm.advice;

import java.util.EnumMap;
import java.util.Map;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/**
 * A paste counted per kilogram of dry starch, so that one ingredient can be changed while the grams
 * of all others stay.
 *
 * @param starchShares share of each kind in the dry starch; adds up to 1
 * @param waterPerStarch water (kg per kg dry starch)
 * @param glycerolPerStarch glycerol (kg per kg dry starch)
 * @param saltPerStarch salt (kg per kg dry starch)
 * @param acidPerStarch acetic acid (kg per kg dry starch)
 */
record Blend(
    Map<StarchKind, Double> starchShares,
    double waterPerStarch,
    double glycerolPerStarch,
    double saltPerStarch,
    double acidPerStarch) {
  /** Copies the map. */
  Blend {
    Map<StarchKind, Double> copy = new EnumMap<>(StarchKind.class);
    copy.putAll(starchShares);
    starchShares = copy;
  }

  static Blend of(Composition paste) {
    double starch = paste.dryStarch();
    return new Blend(
        paste.starchShares(),
        paste.water() / starch,
        paste.glycerol() / starch,
        paste.salt() / starch,
        paste.aceticAcid() / starch);
  }

  Composition composition() {
    double total = 1 + waterPerStarch + glycerolPerStarch + saltPerStarch + acidPerStarch;
    return new Composition(
        starchShares,
        1 / total,
        glycerolPerStarch / total,
        saltPerStarch / total,
        acidPerStarch / total,
        waterPerStarch / total);
  }

  Blend withStarch(Map<StarchKind, Double> shares) {
    return new Blend(shares, waterPerStarch, glycerolPerStarch, saltPerStarch, acidPerStarch);
  }

  Blend withWater(double perStarch) {
    return new Blend(starchShares, perStarch, glycerolPerStarch, saltPerStarch, acidPerStarch);
  }

  Blend withGlycerol(double perStarch) {
    return new Blend(starchShares, waterPerStarch, perStarch, saltPerStarch, acidPerStarch);
  }

  Blend withSalt(double perStarch) {
    return new Blend(starchShares, waterPerStarch, glycerolPerStarch, perStarch, acidPerStarch);
  }

  Blend withAcid(double perStarch) {
    return new Blend(starchShares, waterPerStarch, glycerolPerStarch, saltPerStarch, perStarch);
  }

  /** The same with so much water that dry starch is a given share of the paste (kg/kg). */
  Blend withStarchInPaste(double share) {
    return withWater(1 / share - 1 - glycerolPerStarch - saltPerStarch - acidPerStarch);
  }
}
