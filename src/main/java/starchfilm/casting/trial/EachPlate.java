package starchfilm.casting.trial;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is noted of the single plates of one pour, by their numbers from 1.
 *
 * @param shown the plate whose weighings are those of the {@link Observations}
 * @param emptyKg what the scale shows of the empty plate (kg), where it was weighed
 * @param weighings the weighings of the other plates, each in order of time
 * @param ends the plates that are done
 * @param films what was measured of the films of single plates
 */
public record EachPlate(
    int shown,
    SortedMap<Integer, Double> emptyKg,
    SortedMap<Integer, List<Weighing>> weighings,
    SortedMap<Integer, PlateEnd> ends,
    SortedMap<Integer, MeasuredFilm> films) {
  /** Nothing is noted of single plates. */
  public static final EachPlate NOTHING =
      new EachPlate(1, new TreeMap<>(), new TreeMap<>(), new TreeMap<>(), new TreeMap<>());

  public EachPlate {
    SortedMap<Integer, List<Weighing>> weighed = new TreeMap<>(weighings);
    weighed.replaceAll((plate, list) -> List.copyOf(list));
    weighed.values().removeIf(List::isEmpty);
    weighings = Collections.unmodifiableSortedMap(weighed);
    emptyKg = Collections.unmodifiableSortedMap(new TreeMap<>(emptyKg));
    ends = Collections.unmodifiableSortedMap(new TreeMap<>(ends));
    films = Collections.unmodifiableSortedMap(new TreeMap<>(films));
  }

  /**
   * What was measured of one plate's film.
   *
   * @param dryThicknessesM its thickness in several places (m)
   * @param pulls strips pulled of it
   */
  public record MeasuredFilm(List<Double> dryThicknessesM, List<PullTest> pulls) {
    public MeasuredFilm {
      dryThicknessesM = List.copyOf(dryThicknessesM);
      pulls = List.copyOf(pulls);
    }
  }

  /** How a plate ended; empty where it has not. */
  public Optional<PlateEnd> end(int plate) {
    return Optional.ofNullable(ends.get(plate));
  }

  /** What was seen of each plate, from the view of one, with the weighings of the others. */
  EachPlate seenFrom(int plate, SortedMap<Integer, List<Weighing>> others) {
    return new EachPlate(plate, emptyKg, others, ends, films);
  }
}
