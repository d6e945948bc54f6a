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
import starchfilm.casting.trial.Trial;
import starchfilm.numerics.evidence.Estimate;

/** Reads {@code plates}: what is noted of single plates of a pour. */
record PlatesReader(TimesReader times) {
  /** Stands for no plate in particular. */
  private static final int UNNAMED = 0;

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

    /** Whether a plate was noted as done before a moment, counted from the pour (s). */
    boolean isDoneBefore(int plate, double momentS) {
      PlateEnd end = ends.get(plate);
      return end != null
          && end.atS().isPresent()
          && end.atS().getAsDouble() + Trial.CLOCKS_APART_S < momentS;
    }

    /** The plate an entry names; the only plate of a pour need not be named. */
    OptionalInt named(ObjectReader entry) {
      OptionalInt number = number(entry);
      return number.isEmpty() && count == 1 ? OptionalInt.of(1) : number;
    }

    /** The plate an entry names; empty where it names none or one that was not poured. */
    OptionalInt number(ObjectReader entry) {
      return number(entry, count);
    }

    private static OptionalInt number(ObjectReader entry, int count) {
      OptionalInt number = entry.count("plate");
      if (number.isPresent() && number.getAsInt() > count) {
        entry.fault(
            "plate",
            "plate " + number.getAsInt(),
            count == 1 ? "plate 1, the only one poured" : "plate 1 to " + count + ", as poured",
            "check the number, and pour.plates");
        return OptionalInt.empty();
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
      OptionalInt number = Plates.number(entry, count);
      Optional<Estimate> tare = entry.amount("tare_g");
      OptionalDouble off = times.at(entry, "off_at", "the end of a plate");
      Optional<String> why = entry.text("given_up");
      List<Double> measuredM = entry.numbers("dry_thickness_um");
      if (!measuredM.isEmpty()) {
        int film = number.orElse(count == 1 ? 1 : UNNAMED);
        thicknessesM.computeIfAbsent(film, key -> new ArrayList<>()).addAll(measuredM);
      }
      for (int plate = number.orElse(1); plate <= number.orElse(count); plate++) {
        if (tare.isPresent()) {
          tares.put(plate, tare.get());
        }
        if (off.isPresent() || why.isPresent()) {
          ends.put(plate, new PlateEnd(off, why));
        }
      }
    }
    return new Plates(count, usual, tares, ends, thicknessesM);
  }
}
