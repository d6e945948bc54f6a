package starchfilm.files.notebook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.trial.Weighing;
import starchfilm.files.findings.Allowed;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Words;
import starchfilm.numerics.evidence.Estimate;

/** Reads {@code weighings}: takes the plate off, puts them in order, and refuses the impossible. */
final class WeighingsReader {

  /** How far a film may seem heavier than poured before it cannot be true; judged, no source. */
  private static final double ROOM_FOR_ERROR = 0.05;

  /** How far a film may seem lighter than its dry solids likewise; judged, no source. */
  private static final double LEAST_OF_SOLIDS = 0.5;

  private static final double SIGMAS = 3;

  private final Findings findings;
  private final Scale scale;
  private final TimesReader times;

  WeighingsReader(Findings findings, Scale scale, TimesReader times) {
    this.findings = findings;
    this.scale = scale;
    this.times = times;
  }

  private record Placed(ObjectReader entry, Weighing weighing, boolean samePlate) {}

  /**
   * Reads the weighings.
   *
   * @param trial the whole trial
   * @param tare the empty plate, if weighed
   * @param freshKg the paste on one plate when poured
   * @param solids dry solids (kg per kg paste)
   * @return in order of time
   */
  List<Weighing> read(
      ObjectReader trial, Optional<Estimate> tare, Estimate freshKg, Estimate solids) {
    List<Placed> placed = new ArrayList<>();
    int withoutTare = 0;
    for (ObjectReader entry : trial.sections("weighings")) {
      OptionalDouble at = times.at(entry, "a weighing");
      if (at.isEmpty() && !entry.has("at")) {
        findings.fault(
            entry.place(),
            "a weighing without at",
            "a time",
            "add \"at\": \"+6h\" or date and time");
      }
      Amount mass = entry.amount("mass_g");
      if (!mass.isKnown() && !entry.has("mass_g")) {
        Allowed allowed = entry.allowed("mass_g");
        findings.fault(entry.place(), "a weighing without mass_g", allowed.words(), allowed.mend());
      }
      boolean withPlate = entry.flag("with_plate").orElse(tare.isPresent());
      Optional<Boolean> samePlate = entry.flag("same_plate");
      if (samePlate.equals(Optional.of(false))) {
        findings.notice(entry.place(), "weighed on another plate; left out");
      } else if (mass == Amount.Missing.UNKNOWN) {
        findings.notRecorded(
            entry.path("mass_g"), "this weighing is left out", "one point less to learn from");
      } else if (withPlate && tare.isEmpty()) {
        withoutTare++;
      } else if (at.isPresent() && mass.isKnown()) {
        Estimate gross = scale.kg(mass, Estimate.exact(0));
        Estimate film = withPlate ? gross.plus(tare.orElseThrow().times(-1)) : gross;
        if (possible(entry, film, freshKg, solids)) {
          Weighing weighing = new Weighing(at.getAsDouble(), film.value(), film.sd());
          placed.add(new Placed(entry, weighing, samePlate.orElse(false)));
        }
      }
    }
    if (withoutTare > 0) {
      findings.notRecorded(
          "pour.plate.tare_g",
          withoutTare == 1
              ? "one weighing with the plate is left out"
              : withoutTare + " weighings with the plate are left out",
          "the forecast cannot learn from them; weigh the empty plate");
    }
    return inOrder(placed);
  }

  private boolean possible(ObjectReader entry, Estimate film, Estimate fresh, Estimate solids) {
    double mostKg =
        fresh.value() * (1 + ROOM_FOR_ERROR) + SIGMAS * Math.hypot(fresh.sd(), film.sd());
    if (film.value() > mostKg) {
      findings.fault(
          entry.placeOf("mass_g"),
          "a film of " + grams(film),
          "at most the " + grams(fresh) + " that were poured",
          "check the mass, the plate's tare_g, and whether with_plate is right");
      return false;
    }
    if (film.value() <= 0) {
      findings.fault(
          entry.placeOf("mass_g"),
          "a film of " + grams(film) + " after the plate is taken off",
          "more than 0 g",
          "check the mass, the plate's tare_g, and whether with_plate is right");
      return false;
    }
    double leastFresh = fresh.value() - SIGMAS * fresh.sd();
    double leastSolids = LEAST_OF_SOLIDS * solids.value() - SIGMAS * solids.sd();
    if (leastFresh > 0 && film.value() + SIGMAS * film.sd() < leastFresh * leastSolids) {
      findings.fault(
          entry.placeOf("mass_g"),
          "a film of " + grams(film),
          "at least half of the " + grams(fresh.times(solids.value())) + " that cannot dry away",
          "check the mass, the plate's tare_g, and whether this was the same plate");
      return false;
    }
    return true;
  }

  private static String grams(Estimate kg) {
    return Words.number(kg.value() * 1000) + " g";
  }

  private List<Weighing> inOrder(List<Placed> placed) {
    placed.sort(Comparator.comparingDouble(p -> p.weighing().timeS()));
    List<Weighing> weighings = new ArrayList<>();
    for (int i = 0; i < placed.size(); i++) {
      Placed next = placed.get(i);
      Weighing before = i == 0 ? next.weighing() : placed.get(i - 1).weighing();
      if (i > 0 && before.timeS() == next.weighing().timeS()) {
        findings.fault(
            next.entry().placeOf("at"),
            "a second weighing at the same time",
            "one weighing at a time",
            "take one out, or correct its time");
      } else if (!next.samePlate()
          && PlateDoubt.isQuick(before, next.weighing())
          && PlateDoubt.isDoubtful(before, next.weighing())) {
        findings.notice(
            next.entry().placeOf("mass_g"),
            PlateDoubt.told(before, next.weighing())
                + "; left out until \"same_plate\": true stands beside it, or false for another"
                + " plate");
      } else {
        weighings.add(next.weighing());
      }
    }
    return weighings;
  }
}
