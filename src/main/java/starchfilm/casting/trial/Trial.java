package starchfilm.casting.trial;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import starchfilm.casting.Casting;
import starchfilm.material.recipe.Recipe;

/**
 * One trial: what was cast, and what came of it.
 *
 * @param file the file it was read from
 * @param name what its maker calls it
 * @param invented true where the trial is made up as an example
 * @param pouredAt when it was poured, by the clock on the wall, if noted
 * @param recipe what went into the pot, as weighed; the casting's paste is what came out
 * @param casting what was poured, on what, and where it dried
 * @param seen what was seen and measured of it since
 * @param notRecorded what the file does not say
 */
public record Trial(
    Path file,
    String name,
    boolean invented,
    Optional<LocalDateTime> pouredAt,
    Recipe recipe,
    Casting casting,
    Observations seen,
    List<NotRecorded> notRecorded) {
  /** Copies the list. */
  public Trial {
    notRecorded = List.copyOf(notRecorded);
  }

  /**
   * Says whether anything has been noted about a plate of this trial; a recipe that nobody has cast
   * yet has no history.
   *
   * @return true where a pour, a weighing, a fault, a strip, a thickness or a rating is noted
   */
  public boolean hasHistory() {
    return pouredAt.isPresent()
        || seen.rating().isPresent()
        || !(seen.weighings().isEmpty()
            && seen.faults().isEmpty()
            && seen.pulls().isEmpty()
            && seen.dryThicknessesM().isEmpty());
  }
}
