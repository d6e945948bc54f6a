package starchfilm.casting.trial;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import starchfilm.casting.Casting;
import starchfilm.material.recipe.Recipe;

/**
 * One trial: what was cast, and what came of it.
 *
 * @param file the file it was read from
 * @param name what its maker calls it
 * @param invented true where the trial is made up as an example
 * @param from the file of the trial it was made from, beside this one, if it was made from one
 * @param wanted what its plan was asked for
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
    Wanted wanted,
    Optional<LocalDateTime> pouredAt,
    Recipe recipe,
    Casting casting,
    Observations seen,
    List<NotRecorded> notRecorded) {
  /** Two clocks that are set by hand may be as far apart (s); judged, no source. */
  public static final double CLOCKS_APART_S = 600;

  public Trial {
    notRecorded = List.copyOf(notRecorded);
  }

  /**
   * The hash of the file alone: a trial serves as a key, and may hold months of a room's readings.
   */
  @Override
  public int hashCode() {
    return file.hashCode();
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
    double latestS = WallClock.secondsBetween(pouredAt.get(), now) + CLOCKS_APART_S;
    EachPlate plates = seen.eachPlate();
    SortedMap<Integer, List<Weighing>> others = new TreeMap<>(plates.weighings());
    others.replaceAll((plate, weighings) -> until(latestS, weighings));
    Observations past =
        seen.with(until(latestS, seen.weighings()), plates.seenFrom(plates.shown(), others));
    return past.equals(seen) ? this : with(wanted, casting, past, notRecorded);
  }

  /**
   * Whether its pour is noted for later than a moment, beyond what clocks differ.
   *
   * @param now the time by the clock on the wall
   * @return false also at noon of the same day, as which a day without an hour is read
   */
  public boolean isPouredAfter(LocalDateTime now) {
    return pouredAt
        .filter(pour -> WallClock.secondsBetween(now, pour) > CLOCKS_APART_S)
        .filter(pour -> !pour.equals(now.toLocalDate().atTime(LocalTime.NOON)))
        .isPresent();
  }

  private static List<Weighing> until(double latestS, List<Weighing> weighings) {
    return weighings.stream().filter(weighing -> weighing.timeS() <= latestS).toList();
  }

  /**
   * The trial wanted by a moment.
   *
   * @param byS when it must be ready (s after the pour)
   * @return the same with that wish
   */
  public Trial wantedBy(double byS) {
    return with(new Wanted(wanted.film(), OptionalDouble.of(byS)), casting, seen, notRecorded);
  }

  /**
   * The trial of something else that was cast.
   *
   * @param other what was cast
   * @param gaps what is not recorded of it
   * @return the same otherwise
   */
  public Trial cast(Casting other, List<NotRecorded> gaps) {
    return with(wanted, other, seen, gaps);
  }

  private Trial with(Wanted wish, Casting cast, Observations observed, List<NotRecorded> gaps) {
    return new Trial(file, name, invented, from, wish, pouredAt, recipe, cast, observed, gaps);
  }

  /**
   * The trial as one of its plates shows it.
   *
   * @param plate its number, from 1
   * @return the same with the weighings of that plate before those of the others
   */
  public Trial ofPlate(int plate) {
    EachPlate plates = seen.eachPlate();
    if (plate == plates.shown()) {
      return this;
    }
    SortedMap<Integer, List<Weighing>> others = new TreeMap<>(plates.weighings());
    others.put(plates.shown(), seen.weighings());
    List<Weighing> own = Optional.ofNullable(others.remove(plate)).orElse(List.of());
    return with(
        wanted,
        casting.ofPlate(plate),
        seen.with(own, plates.seenFrom(plate, others)),
        notRecorded);
  }

  /** The other plates of the pour that were weighed, each as {@link #ofPlate} shows it. */
  public List<Trial> weighedSiblings() {
    return seen.eachPlate().weighings().keySet().stream().map(this::ofPlate).toList();
  }

  /** Weighings of all its plates. */
  public int weighingCount() {
    return seen.weighings().size()
        + seen.eachPlate().weighings().values().stream().mapToInt(List::size).sum();
  }

  /**
   * The plates that were weighed, each as {@link #ofPlate} shows it: every plate teaches by itself.
   *
   * @return in the order of their numbers
   */
  public List<Trial> weighedPlates() {
    return IntStream.rangeClosed(1, plates())
        .mapToObj(this::ofPlate)
        .filter(plate -> !plate.seen().weighings().isEmpty())
        .toList();
  }

  /** The name of its file, without the folder. */
  public String fileName() {
    return String.valueOf(file.getFileName());
  }

  /** How many plates were poured. */
  public int plates() {
    return casting.pour().plates();
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
        || weighingCount() > 0
        || !(seen.faults().isEmpty()
            && seen.pulls().isEmpty()
            && seen.eachPlate().ends().isEmpty()
            && seen.dryThicknessesM().isEmpty());
  }
}
