package starchfilm.files.notebook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import starchfilm.casting.trial.PlateEnd;
import starchfilm.files.findings.Findings;
import starchfilm.numerics.evidence.Estimate;

/** Reads {@code plates}: what is noted of single plates of a pour. */
final class PlatesReader {
  private final Findings findings;
  private final Scale scale;
  private final TimesReader times;

  PlatesReader(Findings findings, Scale scale, TimesReader times) {
    this.findings = findings;
    this.scale = scale;
    this.times = times;
  }

  /**
   * The plates of a pour.
   *
   * @param usual the empty plate, where that was weighed for all of them
   * @param tares empty plates weighed by themselves
   */
  record Plates(
      int count,
      Optional<Estimate> usual,
      Map<Integer, Estimate> tares,
      SortedMap<Integer, PlateEnd> ends) {
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

    /** The plate an entry names; empty where it names none or one that was not poured. */
    Optional<Integer> number(ObjectReader entry, Findings findings) {
      return number(entry, count, findings);
    }

    private static Optional<Integer> number(ObjectReader entry, int count, Findings findings) {
      Optional<Integer> number = entry.count("plate");
      if (number.isPresent() && number.get() > count) {
        findings.fault(
            entry.placeOf("plate"),
            "plate " + number.get(),
            count == 1 ? "plate 1, the only one poured" : "plate 1 to " + count + ", as poured",
            "check the number, and pour.plates");
        return Optional.empty();
      }
      return number;
    }
  }

  /**
   * Reads the plates; a later entry about the same plate counts over an earlier one.
   *
   * @param usual the empty plate, where that was weighed for all of them
   */
  Plates read(ObjectReader trial, int count, Optional<Estimate> usual) {
    Map<Integer, Estimate> tares = new HashMap<>();
    SortedMap<Integer, PlateEnd> ends = new TreeMap<>();
    for (ObjectReader entry : trial.sections("plates")) {
      Optional<Integer> number = Plates.number(entry, count, findings);
      List<Integer> about =
          number.map(List::of).orElseGet(() -> IntStream.rangeClosed(1, count).boxed().toList());
      Amount tare = entry.amount("tare_g");
      OptionalDouble off = times.at(entry, "off_at", "the end of a plate");
      Optional<String> why = entry.text("given_up");
      for (int plate : about) {
        if (tare.isKnown()) {
          tares.put(plate, scale.kg(tare, Estimate.exact(0)));
        }
        if (off.isPresent() || why.isPresent()) {
          ends.put(plate, new PlateEnd(off, why));
        }
      }
    }
    return new Plates(count, usual, tares, ends);
  }
}
