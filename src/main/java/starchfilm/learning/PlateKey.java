package starchfilm.learning;

import java.util.Map;
import java.util.TreeMap;
import starchfilm.casting.trial.Trial;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;

/**
 * The facts that decide which shared parts a plate takes.
 *
 * @param pourWeighed whether the poured paste was weighed, so that no bias of pouring applies
 */
record PlateKey(String room, Map<StarchKind, Double> starchShares, boolean pourWeighed) {
  private static final double ALL_SHARES = 1e-6;

  PlateKey {
    starchShares = new TreeMap<>(starchShares);
    requireWhole(starchShares);
  }

  /** Refuses shares that are no shares of a whole. */
  static void requireWhole(Map<StarchKind, Double> shares) {
    double sum = 0;
    for (double share : shares.values()) {
      if (!(share >= 0)) {
        throw new IllegalArgumentException("shares are 0 or more");
      }
      sum += share;
    }
    if (!(Math.abs(sum - 1) <= ALL_SHARES)) {
      throw new IllegalArgumentException("shares add up to 1");
    }
  }

  static PlateKey of(Trial trial, Composition composition) {
    return new PlateKey(
        RoomLearnt.key(trial.casting().place().name()),
        composition.starchShares(),
        trial.casting().pour().weighedKg().isPresent());
  }
}
