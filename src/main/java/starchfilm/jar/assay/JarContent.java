package starchfilm.jar.assay;

import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Band;

/**
 * The parts of a jar, each with the range that holds in 8 cases of 10.
 *
 * @param glycerol glycerol (kg per kg jar)
 * @param stays salt, soap and whatever else stays in a film (kg per kg jar)
 * @param volatiles water, with what alcohol there may be (kg per kg jar)
 * @param pureGlycerolKg glycerol at hand (kg)
 */
public record JarContent(Band glycerol, Band stays, Band volatiles, Band pureGlycerolKg) {
  /**
   * The same for a recipe.
   *
   * @param origin where the jar comes from
   * @return glycerol and salt as fractions, with the uncertainty of their ranges
   */
  public GlycerolStock stock(GlycerolOrigin origin) {
    return new GlycerolStock(glycerol.estimate(), stays.estimate(), origin);
  }

  /**
   * The same, its ranges widened to hold those of another way to know the jar. Where two ways
   * disagree by more than they should, one is wrong, and nobody knows which (as metrology widens
   * what disagrees: Birge 1932, Phys. Rev. 40:207, recalled).
   *
   * @param other as known in the other way
   * @param mostGlycerolKg there cannot be more glycerol (kg)
   */
  JarContent covering(JarContent other, double mostGlycerolKg) {
    double most =
        Math.max(pureGlycerolKg.high(), Math.min(mostGlycerolKg, other.pureGlycerolKg.high()));
    double share = most / Math.max(most, other.pureGlycerolKg.high());
    return new JarContent(
        covering(glycerol, other.glycerol.low(), share * other.glycerol.high()),
        covering(stays, other.stays.low(), other.stays.high()),
        covering(volatiles, other.volatiles.low(), other.volatiles.high()),
        covering(pureGlycerolKg, other.pureGlycerolKg.low(), most));
  }

  private static Band covering(Band band, double low, double high) {
    return new Band(Math.min(band.low(), low), band.middle(), Math.max(band.high(), high));
  }
}
