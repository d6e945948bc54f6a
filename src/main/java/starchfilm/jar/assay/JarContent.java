package starchfilm.jar.assay;

import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;

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
    return new GlycerolStock(estimate(glycerol), estimate(stays), origin);
  }

  private static Estimate estimate(Band band) {
    return new Estimate(band.middle(), (band.high() - band.low()) / (2 * Band.Z90));
  }
}
