package starchfilm.material.recipe;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import starchfilm.material.ingredient.StarchKind;

/**
 * A paste per kilogram, and on the dry basis.
 *
 * <p>Dry solids are dry starch, glycerol, salt and inert solids: what stays when the film is dry.
 * Acetic acid leaves with the water and is counted as volatile.
 *
 * @param starchShares share of each kind in the dry starch; adds up to 1
 * @param dryStarch dry starch (kg per kg paste)
 * @param glycerol glycerol (kg per kg paste)
 * @param salt salt (kg per kg paste)
 * @param aceticAcid acetic acid (kg per kg paste)
 * @param water water (kg per kg paste)
 * @param inert other solids that stay in the film and take up no water, such as protein and fibre
 *     of a flour or citric acid (kg per kg paste); the six fractions add up to 1
 */
public record Composition(
    Map<StarchKind, Double> starchShares,
    double dryStarch,
    double glycerol,
    double salt,
    double aceticAcid,
    double water,
    double inert) {
  /** Density of dry starch in a mixture (kg/m3). Source: evidence of ideal mixing, recalled. */
  public static final double DRY_STARCH_KG_PER_M3 = 1500;

  /** Density of pure glycerol at 25 C (kg/m3). Source: Bosart and Snoddy 1927, rounded. */
  public static final double GLYCEROL_KG_PER_M3 = 1258;

  /** Density of water at 25 C (kg/m3). Source: Bosart and Snoddy 1927, rounded. */
  public static final double WATER_KG_PER_M3 = 997;

  /**
   * Density of water at 20 C (kg/m3), for what is measured cold. Source: CRC Handbook of Chemistry
   * and Physics, 998.2, rounded; recalled.
   */
  public static final double WATER_AT_20C_KG_PER_M3 = 998;

  /** Salt that does not show in a film (kg per kg dry solids; judged). */
  public static final double SALT_UNNOTICED = 0.02;

  /** Salt that is warned of (kg per kg dry solids; judged). */
  public static final double SALT_TOO_MUCH = 0.05;

  private static final double ROUNDING = 1e-9;

  /** A kind with a smaller share of the starch does not count by itself. */
  private static final double TRACE = 0.02;

  /** Copies the map and checks that the mass closes. */
  public Composition {
    starchShares = Collections.unmodifiableMap(new TreeMap<>(starchShares));
    double sum = dryStarch + glycerol + salt + aceticAcid + water + inert;
    if (!(Math.abs(sum - 1) < ROUNDING)) {
      throw new IllegalArgumentException("the fractions of a paste must add up to 1, not " + sum);
    }
    if (!(dryStarch + glycerol > 0)) {
      throw new IllegalArgumentException("a paste needs starch or glycerol");
    }
  }

  /**
   * A paste of these amounts, counted per kilogram.
   *
   * @param starchShares share of each kind in the dry starch; adds up to 1
   * @param dryStarch dry starch, in any unit of mass
   * @param glycerol glycerol, in the same unit
   * @param salt salt, in the same unit
   * @param aceticAcid acetic acid, in the same unit
   * @param water water, in the same unit
   * @param inert inert solids, in the same unit
   * @return its mass fractions
   */
  public static Composition of(
      Map<StarchKind, Double> starchShares,
      double dryStarch,
      double glycerol,
      double salt,
      double aceticAcid,
      double water,
      double inert) {
    double total = dryStarch + glycerol + salt + aceticAcid + water + inert;
    return new Composition(
        starchShares,
        dryStarch / total,
        glycerol / total,
        salt / total,
        aceticAcid / total,
        water / total,
        inert / total);
  }

  /** The same paste with other kinds of starch, as much in all. */
  public Composition withStarches(Map<StarchKind, Double> shares) {
    return new Composition(shares, dryStarch, glycerol, salt, aceticAcid, water, inert);
  }

  /**
   * The same with another amount of one ingredient and the grams of all others kept.
   *
   * @param ingredient what is changed
   * @param kg how much of it there is then beside what else a kilogram of this paste holds (kg)
   * @return the paste, again per kilogram
   */
  public Composition with(Ingredient ingredient, double kg) {
    return of(
        starchShares,
        ingredient == Ingredient.STARCH ? kg : dryStarch,
        ingredient == Ingredient.GLYCEROL ? kg : glycerol,
        ingredient == Ingredient.SALT ? kg : salt,
        ingredient == Ingredient.VINEGAR ? kg : aceticAcid,
        ingredient == Ingredient.WATER ? kg : water,
        inert);
  }

  /** The same paste with one ingredient multiplied and the grams of all others kept. */
  public Composition times(double factor, Ingredient ingredient) {
    return with(ingredient, factor * amount(ingredient));
  }

  /** The same paste with so much water that dry starch is a given share of it (kg/kg). */
  public Composition withStarchInPaste(double share) {
    return with(Ingredient.WATER, dryStarch / share - drySolids() - aceticAcid);
  }

  /** How much of an ingredient a kilogram of paste holds (kg). */
  public double amount(Ingredient ingredient) {
    return switch (ingredient) {
      case STARCH -> dryStarch;
      case GLYCEROL -> glycerol;
      case SALT -> salt;
      case VINEGAR -> aceticAcid;
      case WATER -> water;
    };
  }

  /** How much of an ingredient there is beside dry starch (kg per kg). */
  public double perStarch(Ingredient ingredient) {
    return amount(ingredient) / dryStarch;
  }

  /**
   * Dry solids.
   *
   * @return kg dry starch, glycerol, salt and inert solids per kg paste
   */
  public double drySolids() {
    return dryStarch + glycerol + salt + inert;
  }

  /**
   * Moisture content of the fresh paste; acetic acid leaves with the water and counts as water.
   *
   * @return kg water and acid per kg dry solids
   */
  public double waterKgPerKgDry() {
    return (water + aceticAcid) / drySolids();
  }

  /**
   * Plasticiser level.
   *
   * @return kg glycerol per kg dry starch; positive infinity without starch
   */
  public double glycerolPerDryStarch() {
    return glycerol / dryStarch;
  }

  /**
   * Glycerol in starch and glycerol.
   *
   * @return kg glycerol per kg dry starch and glycerol, 0 to 1
   */
  public double glycerolFractionOfStarchAndGlycerol() {
    return glycerol / (dryStarch + glycerol);
  }

  /**
   * Salt in the dry solids.
   *
   * @return kg salt per kg dry solids, 0 to 1
   */
  public double saltFractionOfDry() {
    return salt / drySolids();
  }

  /**
   * The solids that take room and heat as starch does: starch itself and, assumed without a source,
   * salt and inert solids.
   *
   * @return kg per kg paste
   */
  public double starchLike() {
    return dryStarch + salt + inert;
  }

  /**
   * The solids that take up water.
   *
   * @return kg starch and glycerol per kg dry solids, 0 to 1
   */
  public double starchAndGlycerolFractionOfDry() {
    return (dryStarch + glycerol) / drySolids();
  }

  /**
   * Inert solids in the dry solids.
   *
   * @return kg inert solids per kg dry solids, 0 to 1
   */
  public double inertFractionOfDry() {
    return inert / drySolids();
  }

  /** The kinds of starch of which there is more than a trace. */
  public Set<StarchKind> kinds() {
    return starchShares.entrySet().stream()
        .filter(share -> share.getValue() > TRACE)
        .map(Map.Entry::getKey)
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(StarchKind.class)));
  }

  /** The largest figure among the kinds of starch; a blend is cooked for its hardest kind. */
  public double most(ToDoubleFunction<StarchKind> figure) {
    return kinds().stream().mapToDouble(figure).max().orElseThrow();
  }

  /** Temperature at which all of its kinds of starch have gelatinised (K). */
  public double gelatinisedAtK() {
    return most(StarchKind::gelatinisationEndK);
  }

  /**
   * Amylose in the dry starch, over all kinds.
   *
   * @return mass fraction of dry starch, 0 to 1
   */
  public double amyloseFractionOfStarch() {
    return starchShares.entrySet().stream()
        .mapToDouble(share -> share.getValue() * share.getKey().amyloseFraction())
        .sum();
  }

  /**
   * Volume of the mixture at a moisture content, the volumes of the parts simply added.
   *
   * <p>{@code v(X) = 1/rho_ds + X/rho_w}, with {@link #starchLike()} of starch's density.
   *
   * @param waterKgPerKgDry moisture content X (kg per kg dry solids, 0 or more)
   * @return volume (m3 per kg dry solids)
   */
  public double volumeM3PerKgDry(double waterKgPerKgDry) {
    double dryVolume =
        (starchLike() / DRY_STARCH_KG_PER_M3 + glycerol / GLYCEROL_KG_PER_M3) / drySolids();
    return dryVolume + waterKgPerKgDry / WATER_KG_PER_M3;
  }

  /**
   * Density of the fresh paste.
   *
   * @return kg/m3
   */
  public double pasteDensityKgPerM3() {
    double moisture = waterKgPerKgDry();
    return (1 + moisture) / volumeM3PerKgDry(moisture);
  }
}
