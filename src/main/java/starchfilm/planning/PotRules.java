package starchfilm.planning;

import starchfilm.material.recipe.Composition;
import starchfilm.numerics.evidence.Estimate;

/**
 * What a plan takes for the pot; each assumed, no source, and said on the sheet.
 *
 * <p>The sheet has the pot weighed after the cook and topped up with hot water, so what the steam
 * took is only known to what that leaves open.
 */
final class PotRules {
  /** Paste is poured at this temperature (K): 60 C. */
  static final double POURED_AT_K = 333.15;

  /** Steam in an open pot, over all water in it: 2 to 12 %. */
  static final Estimate STEAM = Estimate.between(0.02, 0.12);

  /** Standard uncertainty that topping up leaves, over the paste. */
  static final double TOPPED_UP_SD = 0.01;

  private PotRules() {}

  /** What goes into the pot with the water for the steam, over the paste it becomes (ratio). */
  static double withSteam(Composition paste) {
    return 1 + STEAM.value() * paste.water();
  }
}
