package starchfilm.files.notebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import starchfilm.casting.trial.PlateEnd;
import starchfilm.numerics.evidence.Estimate;

/** Reads {@code plates}: what is noted of single plates of a pour. */
final class PlatesReader {
  /** Stands for no plate in particular. */
  private static final int UNNAMED = 0;

  private final TimesReader times;

  PlatesReader(TimesReader times) {
    this.times = times;
  }

  /**
   * The plates of a pour.
   *
   * @param usual the empty plate, where that was weighed for all of them
   * @param tares empty plates weighed by themselves
   * @param thicknessesM of the dry film (m) by the number of the plate; 0 where none is named
   */
  record Plates(
      int count,
      Optional<Estimate> usual,
      Map<Integer, Estimate> tares,
      SortedMap<Integer, PlateEnd> ends,
      SortedMap<Integer, List<Double>> thicknessesM) {
    Optional<Estimate> tare(int plate) {
      return Optional.ofNullable(tares.get(plate)).or(() -> usual);
    }

    /** What the empty plates weigh (kg). */
    SortedMap<Integer, Double> emptyKg() {
      SortedMap<Integer, Double> known = new TreeMap<>();
      IntStream.rangeClosed(1, count)
          .forEach(plate -> tare(plate).ifPresent(tare -> known.put(plate, tare.value())));
      return known;
    }

    /** The same where the only plate of a pour need not be named. */
    OptionalInt named(ObjectReader entry) {
      int number = number(entry).orElse(count == 1 ? 1 : UNNAMED);
      return number == UNNAMED ? OptionalInt.empty() : OptionalInt.of(number);
    }

    /** The plate an entry names; empty where it names none or one that was not poured. */
    Optional<Integer> number(ObjectReader entry) {
      return number(entry, count);
    }

    private static Optional<Integer> number(ObjectReader entry, int count) {
      Optional<Integer> number = entry.count("plate");
      if (number.isPresent() && number.get() > count) {
        entry.fault(
            "plate",
            "plate " + number.get(),
            count == 1 ? "plate 1, the only one poured" : "plate 1 to " + count + ", as poured",
            "check the number, and pour.plates");
        return Optional.empty();
      }
      return number;
    }
  }

  /**
   * Reads the plates; a later entry about the same plate counts over an earlier one, but for
   * thicknesses, which all count.
   *
   * @param usual the empty plate, where that was weighed for all of them
   */
  Plates read(ObjectReader trial, int count, Optional<Estimate> usual) {
    Map<Integer, Estimate> tares = new HashMap<>();
    SortedMap<Integer, PlateEnd> ends = new TreeMap<>();
    SortedMap<Integer, List<Double>> thicknessesM = new TreeMap<>();
    for (ObjectReader entry : trial.sections("plates")) {
      Optional<Integer> number = Plates.number(entry, count);
      List<Integer> about =
          number.map(List::of).orElseGet(() -> IntStream.rangeClosed(1, count).boxed().toList());
      Optional<Estimate> tare = entry.amount("tare_g");
      OptionalDouble off = times.at(entry, "off_at", "the end of a plate");
      Optional<String> why = entry.text("given_up");
      List<Double> measuredM = entry.numbers("dry_thickness_um");
      if (!measuredM.isEmpty()) {
        int film = number.orElse(count == 1 ? 1 : UNNAMED);
        thicknessesM.computeIfAbsent(film, key -> new ArrayList<>()).addAll(measuredM);
      }
      for (int plate : about) {
        tare.ifPresent(kg -> tares.put(plate, kg));
        if (off.isPresent() || why.isPresent()) {
          ends.put(plate, new PlateEnd(off, why));
        }
      }
    }
    return new Plates(count, usual, tares, ends, thicknessesM);
  }
}
