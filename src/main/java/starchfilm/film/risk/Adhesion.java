package starchfilm.film.risk;

import starchfilm.casting.PlateMaterial;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * How tightly a film sticks to its plate.
 *
 * <p>Silicone, PTFE and polypropylene 0.4 J/m2, acrylic 1, glass 30 (judged, times or divided by
 * 3). The 0.4 is set by one pour of 9 mm of corn paste with 65 g glycerol per 100 g that shrank by
 * 30 %, 65 by 155 to 43 by 110 mm, cracked and curled (a maker's notebook, read): calibration, not
 * proof. Laminate lets film go as acrylic does (read: it releases), steel holds it as glass does
 * (judged).
 */
final class Adhesion {
  /** Where the figures come from. */
  static final Source SOURCE =
      new Source(
          "adhesion of film: silicone, PTFE and polypropylene 0.4 J/m2, acrylic, laminate and"
              + " polyester 1, glass, metal and wood 30, times or divided by 3: judged; 0.4 set by one pour of a"
              + " maker's notebook",
          Check.JUDGED);

  /** The band: times or divided by. */
  static final double BAND = 3;

  private Adhesion() {}

  static double jPerM2(PlateMaterial material) {
    return switch (material) {
      case SILICONE, PTFE, POLYPROPYLENE, BAKING_PAPER -> 0.4;
      case ACRYLIC, LAMINATE, POLYESTER -> 1;
      case GLASS, STEEL, ENAMEL, ALUMINIUM, WOOD, OTHER -> 30;
    };
  }
}
