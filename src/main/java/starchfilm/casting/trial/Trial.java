package starchfilm.casting.trial;

import java.nio.file.Path;
import java.time.Duration;
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
 * @param from the file of the trial it was made from, beside this one, if it was made from one
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
    Optional<String> from,
    Optional<LocalDateTime> pouredAt,
    Recipe recipe,
    Casting casting,
    Observations seen,
    List<NotRecorded> notRecorded) {
  /** Two clocks that are set by hand may be as far apart (s); judged, no source. */
  private static final double CLOCKS_APART_S = 600;

  /** A trial that was made from no other. */
  public Trial(
      Path file,
      String name,
      boolean invented,
      Optional<LocalDateTime> pouredAt,
      Recipe recipe,
      Casting casting,
      Observations seen,
      List<NotRecorded> notRecorded) {
    this(file, name, invented, Optional.empty(), pouredAt, recipe, casting, seen, notRecorded);
  }

  /** Copies the list. */
  public Trial {
    notRecorded = List.copyOf(notRecorded);
  }

  /**
   * The trial as far as it can have happened.
   *
   * @param now the time by the clock on the wall
   * @return the same without weighings that lie in the future; an invented trial as it is
   */
  public Trial until(LocalDateTime now) {
    if (invented || pouredAt.isEmpty()) {
      return this;
    }
    double latestS = Duration.between(pouredAt.get(), now).toSeconds() + CLOCKS_APART_S;
    List<Weighing> past =
        seen.weighings().stream().filter(weighing -> weighing.timeS() <= latestS).toList();
    return past.size() == seen.weighings().size()
        ? this
        : new Trial(
            file, name, false, from, pouredAt, recipe, casting, seen.with(past), notRecorded);
  }

  /** Whether it was made from another trial, which lies where its file says. */
  public boolean isMadeFrom(Trial other) {
    return from.map(name -> file.resolveSibling(name).normalize())
        .filter(other.file().normalize()::equals)
        .isPresent();
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
