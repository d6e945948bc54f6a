package starchfilm.planning;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import starchfilm.film.Feel;

/**
 * One way out where no recipe fits everything that was asked.
 *
 * @param wishes what would have to be given up or got more of; one, or two where one is not enough
 * @param feel the feel that could be had instead, where the feel is given up
 * @param gives the soonest recipe that can be made then
 */
public record GiveUp(Set<Limit> wishes, Optional<Feel> feel, RecipeOutcome gives) {
  public GiveUp {
    wishes = Collections.unmodifiableSet(EnumSet.copyOf(wishes));
  }
}
