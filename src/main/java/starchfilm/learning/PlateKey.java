package starchfilm.learning;

import java.util.EnumMap;
import java.util.Map;
import starchfilm.learning.summary.RoomLearnt;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.Composition;
import starchfilm.trial.Trial;

/**
 * What decides which shared parts a plate takes.
 *
 * @param room the room's name in small letters
 * @param starchShares share of each kind in the dry starch
 * @param pourWeighed whether the poured paste was weighed, so that no bias of pouring applies
 */
record PlateKey(String room, Map<StarchKind, Double> starchShares, boolean pourWeighed) {
  /** Copies the map. */
  PlateKey {
    Map<StarchKind, Double> copy = new EnumMap<>(StarchKind.class);
    copy.putAll(starchShares);
    starchShares = copy;
  }

  static PlateKey of(Trial trial, Composition composition) {
    return new PlateKey(
        RoomLearnt.key(trial.roomName()),
        composition.starchShares(),
        trial.pouredMassKg().isPresent());
  }
}
