package starchfilm.files.notebook;

import static starchfilm.numerics.units.Nature.GRAVITY_M_PER_S2;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import starchfilm.casting.FaceChange;
import starchfilm.casting.trial.EachPlate.MeasuredFilm;
import starchfilm.casting.trial.ObservedFault;
import starchfilm.casting.trial.ObservedFault.FaultKind;
import starchfilm.casting.trial.ObservedFault.FaultPlace;
import starchfilm.casting.trial.PullTest;

/** Reads what was seen and measured after the pour, the weighings apart. */
record ObservationsReader(TimesReader times) {
  List<FaceChange> moved(ObjectReader trial) {
    List<FaceChange> changes = new ArrayList<>();
    for (ObjectReader entry : trial.sections("moved")) {
      OptionalDouble at = times.at(entry, "a move");
      Optional<FaceChange.OpenFaces> open = entry.choice("faces", FaceChange.OpenFaces.values());
      if (at.isPresent() && changes.stream().anyMatch(c -> c.timeS() == at.getAsDouble())) {
        entry.fault(
            "at",
            "a second move at the same time",
            "one move at a time",
            "delete one, or correct its time");
      } else if (at.isPresent() && open.isPresent()) {
        changes.add(new FaceChange(at.getAsDouble(), open.get()));
      }
    }
    changes.sort((a, b) -> Double.compare(a.timeS(), b.timeS()));
    return changes;
  }

  List<ObservedFault> faults(ObjectReader trial) {
    List<ObservedFault> faults = new ArrayList<>();
    for (ObjectReader entry : trial.sections("faults")) {
      Optional<FaultKind> kind = entry.choice("kind", FaultKind.values());
      FaultPlace where = entry.choice("where", FaultPlace.values()).orElse(FaultPlace.ALL);
      OptionalDouble seen = times.at(entry, "a fault");
      Optional<String> remark = entry.text("remark");
      kind.ifPresent(k -> faults.add(new ObservedFault(k, where, seen, remark)));
    }
    return faults;
  }

  /**
   * A strip and the plate it was cut from.
   *
   * @param plate its number; empty where none is named
   */
  record Pulled(OptionalInt plate, PullTest strip) {}

  /**
   * Reads the strips; one without a thickness has the mean of its plate's film, or else of all.
   *
   * @param all thicknesses of the dry film (m), of all plates
   */
  List<Pulled> pulls(ObjectReader trial, PlatesReader.Plates plates, List<Double> all) {
    List<Pulled> pulls = new ArrayList<>();
    for (ObjectReader entry : trial.sections("pulls")) {
      OptionalDouble newton = entry.number("load_N");
      OptionalDouble hung = entry.number("load_kg");
      OptionalDouble width = entry.number("width_mm");
      OptionalDouble thickness = entry.number("thickness_um");
      OptionalDouble stretch = entry.number("stretch_pct");
      if (newton.isPresent()) {
        entry.leftAside("load_kg", "since load_N is given");
      }
      OptionalDouble load =
          newton.isPresent() || hung.isEmpty()
              ? newton
              : OptionalDouble.of(hung.getAsDouble() * GRAVITY_M_PER_S2);
      OptionalInt plate = plates.named(entry);
      List<Double> ofFilm = plates.thicknessesM().getOrDefault(plate.orElse(-1), all);
      OptionalDouble mean = ofFilm.stream().mapToDouble(Double::doubleValue).average();
      OptionalDouble thicknessM = thickness.isPresent() ? thickness : mean;
      if (load.isPresent() && width.isPresent() && thicknessM.isPresent()) {
        pulls.add(
            new Pulled(
                plate,
                new PullTest(
                    load.getAsDouble(), width.getAsDouble(), thicknessM.getAsDouble(), stretch)));
      } else {
        incomplete(entry, thicknessM.isPresent());
      }
    }
    return pulls;
  }

  /** What was measured of the films of single plates. */
  static SortedMap<Integer, MeasuredFilm> films(PlatesReader.Plates plates, List<Pulled> pulls) {
    SortedMap<Integer, MeasuredFilm> films = new TreeMap<>();
    for (int plate = 1; plate <= plates.count(); plate++) {
      OptionalInt named = OptionalInt.of(plate);
      List<PullTest> pulled =
          pulls.stream().filter(p -> p.plate().equals(named)).map(Pulled::strip).toList();
      List<Double> thick = plates.thicknessesM().getOrDefault(plate, List.of());
      if (!(thick.isEmpty() && pulled.isEmpty())) {
        films.put(plate, new MeasuredFilm(thick, pulled));
      }
    }
    return films;
  }

  private static void incomplete(ObjectReader entry, boolean thicknessKnown) {
    String missing =
        Stream.of(
                entry.has("load_N") || entry.has("load_kg") ? "" : "no load at break",
                entry.has("width_mm") ? "" : "no width",
                thicknessKnown || entry.has("thickness_um") ? "" : "no thickness")
            .filter(what -> !what.isEmpty())
            .collect(Collectors.joining(", "));
    String path = entry.place().path();
    if (!missing.isEmpty()) {
      entry
          .findings()
          .notRecorded(
              path,
              "strip " + path.replaceAll("\\D", ""),
              "left out: " + missing,
              "one strip fewer to learn the strength from");
    }
  }
}
