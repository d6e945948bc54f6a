package starchfilm.files.notebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Weighing;
import starchfilm.files.findings.Words;
import starchfilm.numerics.evidence.Estimate;

/** Reads {@code weighings}: takes the plate off, puts them in order, and refuses the impossible. */
record WeighingsReader(TimesReader times) {
  /** How far a film may seem heavier than poured before it cannot be true; judged, no source. */
  private static final double ROOM_FOR_ERROR = 0.05;

  /** How far a film may seem lighter than its dry solids likewise; judged, no source. */
  private static final double LEAST_OF_SOLIDS = 0.5;

  private static final double SIGMAS = 3;
  private static final Comparator<Shown> BY_TIME =
      Comparator.comparingDouble(shown -> shown.weighing().timeS());

  /** A weighing of a plate; with the plate until that is taken off. */
  private record Shown(ObjectReader entry, int plate, boolean samePlate, Weighing weighing) {
    Estimate massKg() {
      return new Estimate(weighing.filmMassKg(), weighing.massSdKg());
    }

    Shown with(Estimate filmKg, boolean tared) {
      Weighing film =
          new Weighing(weighing.timeS(), filmKg.value(), filmKg.sd(), weighing.confirmed(), tared);
      return new Shown(entry, plate, samePlate, film);
    }
  }

  /**
   * Reads the weighings.
   *
   * @param sized whether the plate's area or the mass poured is noted
   * @param areasM2 the area of each plate (m2) where they differ; empty else
   * @param firstKg the paste on the first plate when poured
   * @param solids dry solids (kg per kg paste)
   * @return by the number of the plate, in order of time
   */
  SortedMap<Integer, List<Weighing>> read(
      ObjectReader trial,
      boolean sized,
      PlatesReader.Plates plates,
      List<Double> areasM2,
      Estimate firstKg,
      Estimate solids) {
    List<Shown> films = new ArrayList<>();
    List<Shown> withoutTare = new ArrayList<>();
    List<ObjectReader> entries = trial.sections("weighings");
    if (!sized && !entries.isEmpty()) {
      entries
          .get(0)
          .fault(
              "a weighing of a plate of unknown size",
              "the plate's sides in pour.plate, its diameter_mm, or pour.poured_g",
              "note one of them; grams are of no use for a plate of unknown size");
    }
    for (ObjectReader entry : entries) {
      OptionalDouble at = times.at(entry, "a weighing");
      Optional<Estimate> massKg = entry.amount("mass_g");
      int plate = plates.number(entry).orElse(1);
      Estimate freshKg = onPlate(plate, areasM2, firstKg);
      Optional<Estimate> tare = plates.tare(plate);
      Optional<Boolean> samePlate = entry.flag("same_plate");
      if (samePlate.equals(Optional.of(false))) {
        entry.findings().notice(entry.place(), "weighed on another plate; left out");
      } else if (massKg.isEmpty()) {
        entry.notRecorded("mass_g");
      } else if (at.isPresent()) {
        Estimate gross = massKg.get();
        boolean same = samePlate.orElse(false);
        boolean confirmed = entry.flag("confirmed").orElse(false) || same;
        Shown shown =
            new Shown(
                entry,
                plate,
                same,
                new Weighing(at.getAsDouble(), gross.value(), gross.sd(), confirmed, true));
        boolean withPlate =
            entry
                .flag("with_plate")
                .orElse(tare.isPresent() || gross.value() > mostKg(gross, freshKg));
        if (withPlate && plates.isDoneBefore(plate, at.getAsDouble())) {
          entry.notice("at", "weighed with its plate after the film was off it; check both times");
        }
        if (withPlate && tare.isEmpty()) {
          withoutTare.add(shown);
        } else {
          Estimate film = withPlate ? gross.plus(tare.orElseThrow().times(-1)) : gross;
          if (possible(entry, film, freshKg, solids)) {
            films.add(shown.with(film, true));
          }
        }
      }
    }
    SortedMap<Integer, List<Shown>> withPlates = byPlate(withoutTare);
    withPlates.forEach(
        (plate, of) ->
            films.addAll(
                lossesOnly(
                    withPlates.size() > 1 ? " " + plate : "",
                    of,
                    onPlate(plate, areasM2, firstKg))));
    SortedMap<Integer, List<Weighing>> byPlate = new TreeMap<>();
    byPlate(films).forEach((plate, of) -> byPlate.put(plate, inOrder(of)));
    return byPlate;
  }

  private static Estimate onPlate(int plate, List<Double> areasM2, Estimate firstKg) {
    return areasM2.isEmpty() ? firstKg : firstKg.times(areasM2.get(plate - 1) / areasM2.get(0));
  }

  private static SortedMap<Integer, List<Shown>> byPlate(List<Shown> shown) {
    return shown.stream()
        .collect(Collectors.groupingBy(Shown::plate, TreeMap::new, Collectors.toList()));
  }

  /**
   * Of a plate whose tare is unknown the losses since its first weighing are known all the same.
   */
  private static List<Shown> lossesOnly(String number, List<Shown> shown, Estimate fresh) {
    shown
        .get(0)
        .entry()
        .findings()
        .notRecorded(
            "pour.plate.tare_g",
            "weight of the empty plate" + number,
            shown.size() == 1
                ? "unknown: one weighing with the plate does not count yet"
                : "unknown: of "
                    + shown.size()
                    + " weighings with the plate the loss since the first counts",
            "they show more if the empty plate was weighed too");
    if (shown.size() == 1) {
      shown
          .get(0)
          .entry()
          .notice(
              "mass_g",
              "a weighing with the plate, whose empty weight is unknown; it counts once that is"
                  + " noted, or a second weighing is");
      return List.of();
    }
    Shown first = Collections.min(shown, BY_TIME);
    return shown.stream()
        .map(
            each -> {
              double filmKg = fresh.value() + each.massKg().value() - first.massKg().value();
              return each.with(new Estimate(filmKg, each.massKg().sd()), false);
            })
        .toList();
  }

  private static double mostKg(Estimate film, Estimate fresh) {
    return fresh.value() * (1 + ROOM_FOR_ERROR) + SIGMAS * Math.hypot(fresh.sd(), film.sd());
  }

  private static boolean possible(
      ObjectReader entry, Estimate film, Estimate fresh, Estimate solids) {
    String given = "a film of " + Words.grams(film.value());
    double leastFresh = fresh.value() - SIGMAS * fresh.sd();
    double leastSolids = LEAST_OF_SOLIDS * solids.value() - SIGMAS * solids.sd();
    if (film.value() > mostKg(film, fresh)) {
      String allowed = "at most the " + Words.grams(fresh.value()) + " that were poured";
      return impossible(entry, given, allowed, "with_plate is right");
    }
    if (film.value() <= 0) {
      String after = given + " after the plate is subtracted";
      return impossible(entry, after, "more than 0 g", "with_plate is right");
    }
    if (leastFresh > 0 && film.value() + SIGMAS * film.sd() < leastFresh * leastSolids) {
      String dry = Words.grams(fresh.value() * solids.value());
      String allowed = "at least half of the " + dry + " that cannot evaporate";
      return impossible(entry, given, allowed, "this was the same plate");
    }
    return true;
  }

  private static boolean impossible(
      ObjectReader entry, String given, String allowed, String whether) {
    String mend = "check the mass, the plate's tare_g, and whether " + whether;
    entry.fault("mass_g", given, allowed, mend);
    return false;
  }

  private static List<Weighing> inOrder(List<Shown> ofPlate) {
    List<Shown> films = ofPlate.stream().sorted(BY_TIME).toList();
    List<Weighing> weighings = new ArrayList<>();
    for (int i = 0; i < films.size(); i++) {
      Shown next = films.get(i);
      Weighing weighing = next.weighing();
      Weighing before = i == 0 ? weighing : films.get(i - 1).weighing();
      if (i > 0 && before.timeS() == weighing.timeS()) {
        next.entry()
            .fault(
                "at",
                "a second weighing at the same time",
                "one weighing at a time",
                "delete one, or correct its time");
      } else if (!next.samePlate()
          && PlateDoubt.isQuick(before, weighing)
          && PlateDoubt.isDoubtful(before, weighing)) {
        next.entry()
            .notice(
                "mass_g",
                PlateDoubt.told(before, weighing)
                    + "; left out until \"same_plate\": true stands beside it, or false for another"
                    + " plate");
      } else {
        weighings.add(weighing);
      }
    }
    return weighings;
  }
}
