package starchfilm.casting.trial;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is noted of the single plates of one pour, by their numbers from 1.
 *
 * @param emptyKg what the scale shows of the empty plate (kg), where it was weighed
 * @param weighings the weighings of the plates beyond the first, each in order of time
 * @param ends the plates that are done
 */
public record EachPlate(
    SortedMap<Integer, Double> emptyKg,
    SortedMap<Integer, List<Weighing>> weighings,
    SortedMap<Integer, PlateEnd> ends) {
  /** Nothing is noted of single plates. */
  public static final EachPlate NOTHING =
      new EachPlate(new TreeMap<>(), new TreeMap<>(), new TreeMap<>());

  public EachPlate {
    emptyKg = new TreeMap<>(emptyKg);
    weighings = new TreeMap<>(weighings);
    weighings.replaceAll((plate, list) -> List.copyOf(list));
    ends = new TreeMap<>(ends);
  }

  @Override
  public SortedMap<Integer, Double> emptyKg() {
    return new TreeMap<>(emptyKg);
  }

  @Override
  public SortedMap<Integer, List<Weighing>> weighings() {
    return new TreeMap<>(weighings);
  }

  @Override
  public SortedMap<Integer, PlateEnd> ends() {
    return new TreeMap<>(ends);
  }

  /** How a plate ended; empty where it has not. */
  public Optional<PlateEnd> end(int plate) {
    return Optional.ofNullable(ends.get(plate));
  }

  /** The same with other weighings of the plates beyond the first. */
  EachPlate with(Map<Integer, List<Weighing>> other) {
    return new EachPlate(emptyKg, new TreeMap<>(other), ends);
  }
}
