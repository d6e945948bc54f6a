package starchfilm.planning;

import static starchfilm.numerics.figures.ReaderUnit.GRAM;
import static starchfilm.numerics.figures.ReaderUnit.PERCENT;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Refusal;

/**
 * The ingredients in the cupboard.
 *
 * @param jar what the jar of glycerol holds
 * @param glycerolKg what is in the jar, water and salt included (kg); 0 for no glycerol
 * @param starches the starches; at least one, each kind once
 * @param vinegarAcidityFraction acetic acid in the vinegar (kg per kg); 0 for no vinegar
 */
public record Supplies(
    GlycerolStock jar,
    double glycerolKg,
    List<StarchAtHand> starches,
    double vinegarAcidityFraction) {

  public Supplies {
    starches = List.copyOf(starches);
    if (starches.isEmpty()) {
      throw new IllegalArgumentException("a plan needs at least one starch");
    }
    Set<StarchKind> kinds = EnumSet.noneOf(StarchKind.class);
    for (StarchAtHand starch : starches) {
      if (!kinds.add(starch.kind())) {
        throw new IllegalArgumentException(
            starch.kind() + " starch is named twice; name each starch once, with all of its grams");
      }
    }
    GRAM.requireNoneOrMore("glycerol at hand", glycerolKg, "write the grams in the jar");
    Refusal.unless(
        !(glycerolKg > 0) || jar.glycerolFraction().value() > 0,
        "glycerol in the jar",
        "0 %",
        "more than 0 to 100 %; write the purity on the label, or assay the jar");
    // Stronger than this it is no vinegar but an acid to be handled as one; ours.
    PERCENT.require(
        "acidity of the vinegar",
        vinegarAcidityFraction,
        0,
        30,
        "write the per cent of acid on the label, 5 % for common vinegar");
  }

  /**
   * Pure glycerol at hand.
   *
   * @return kg
   */
  public double pureGlycerolKg() {
    return glycerolKg * jar.glycerolFraction().value();
  }

  /** The same cupboard with another amount of the same glycerol; who has none buys it. */
  Supplies withGlycerol(double kg) {
    GlycerolStock there =
        glycerolKg > 0
            ? jar
            : new GlycerolStock(jar.glycerolFraction(), jar.saltFraction(), GlycerolOrigin.BOUGHT);
    return new Supplies(there, kg, starches, vinegarAcidityFraction);
  }

  /** The same cupboard with other starches. */
  Supplies withStarches(List<StarchAtHand> others) {
    return new Supplies(jar, glycerolKg, others, vinegarAcidityFraction);
  }
}
