package starchfilm.request;

import static starchfilm.files.amount.Dimension.SHARE;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.files.findings.Words;
import starchfilm.jar.assay.Assay;
import starchfilm.jar.assay.Assayer;
import starchfilm.jar.assay.DensityReading;
import starchfilm.jar.assay.JarReading;
import starchfilm.jar.assay.Looks;
import starchfilm.jar.recovery.RecoveryLog;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.figures.Figures;
import starchfilm.numerics.units.Named;

/**
 * The question of what is in a jar.
 *
 * @param massKg what it holds (kg); of a jar with a record, the record has it too
 * @param record how it was recovered, if that was written down
 * @param label glycerol by the label (kg per kg), of a bought jar
 * @param reading a reading, if there is one
 * @param salt salt and soap in it (kg per kg), if known
 * @param origin where it comes from
 * @param strength glycerol (kg per kg) at which the jar's weight is asked for, of a bought jar
 * @param assumptions what was taken for granted, a sentence each
 */
public record AssayRequest(
    Estimate massKg,
    Optional<RecoveryLog> record,
    OptionalDouble label,
    Optional<JarReading> reading,
    Optional<Estimate> salt,
    GlycerolOrigin origin,
    OptionalDouble strength,
    List<String> assumptions) {

  /**
   * Reads what was written.
   *
   * @param entries what was written
   * @return the request
   * @throws RefusedRequestException where it cannot be meant
   */
  public static AssayRequest read(Entries entries) {
    EntryReader in = new EntryReader(entries);
    in.require("assay.mass", "what the jar holds, such as 500g");
    Optional<JarReading> reading = JarReadings.read(in);
    refuseUnlessClear(in);
    boolean recorded = in.hasAnyOf("record");
    for (String told : recorded ? List.of("assay.label", "assay.salt") : List.<String>of()) {
      if (in.has(told)) {
        in.refuse(told, "given beside a record of recovery, which shows it; leave it out");
      }
    }
    OptionalDouble label = recorded ? OptionalDouble.empty() : in.number("assay.label", SHARE::si);
    if (!recorded && label.isEmpty() && reading.isEmpty() && !in.hasAnyOf("reading")) {
      boolean bought = JarOrigin.stated(in).equals(Optional.of(GlycerolOrigin.BOUGHT));
      in.refuseAs(
          bought ? "assay.label" : "reading.density",
          """
          no label, reading or record given; add %s of a bought jar, the record beginning with %s \
          of a recovered one, or of any a reading such as %s; a plan does without and takes %s \
          glycerol\
          """
              .formatted(
                  in.quoted("assay.label"),
                  in.quoted("record.oil"),
                  in.quoted("reading.density"),
                  Words.percent(GlycerolStock.UNKNOWN_PURITY)));
    }
    Optional<Estimate> salt =
        recorded
            ? Optional.empty()
            : in.one("assay.salt", typed -> Estimate.exact(SHARE.si(typed)));
    if (label.isPresent() && salt.isPresent()) {
      in.refuseBeside("assay.label", "assay.salt", "; a bought jar holds none, leave one out");
    }
    GlycerolOrigin origin =
        recorded
            ? only(in, GlycerolOrigin.RECOVERED, "a record of recovery")
            : label.isPresent()
                ? only(in, GlycerolOrigin.BOUGHT, in.quoted("assay.label"))
                : JarOrigin.of(in, "assay.salt", salt.map(Estimate::value).orElse(0.0));
    OptionalDouble strength = strength(in, origin);
    Optional<Estimate> massKg =
        recorded ? in.one("assay.mass", Quantities::massKg) : massKg(in, reading, label);
    Optional<RecoveryLog> record =
        recorded ? RecoveryRecord.read(in, massKg.orElse(Estimate.exact(1))) : Optional.empty();
    return in.finished(
        () ->
            new AssayRequest(
                massKg.orElseThrow(),
                record,
                label,
                reading,
                salt,
                origin,
                strength,
                in.assumptions()));
  }

  /**
   * Strength of bought glycerol; other glycerol may hold methanol, and nothing said of it may sound
   * like boiling down.
   */
  private static OptionalDouble strength(EntryReader in, GlycerolOrigin origin) {
    OptionalDouble strength = in.number("assay.strength", SHARE::si);
    if (strength.isPresent() && origin != GlycerolOrigin.BOUGHT) {
      in.refuse(
          "assay.strength",
          "given of a jar that was not bought; the water in it is no fault, leave it out");
    } else if (strength.isPresent()
        && !(strength.getAsDouble() > 0 && strength.getAsDouble() <= 1)) {
      in.refuse("assay.strength", "allowed more than 0 to 100 %; write such as 85 %");
    }
    return strength;
  }

  private static void refuseUnlessClear(EntryReader in) {
    Looks looks = in.choice("assay.looks", List.of(Looks.values())).orElse(Looks.CLEAR);
    if (looks != Looks.CLEAR && in.hasAnyOf("reading")) {
      in.refuse(
          "assay.looks",
          Named.of(looks) + " given beside a reading, allowed clear; " + looks.whatToDo());
    }
  }

  private static GlycerolOrigin only(EntryReader in, GlycerolOrigin only, String because) {
    JarOrigin.stated(in)
        .filter(stated -> stated != only)
        .ifPresent(
            stated ->
                in.refuse(
                    "jar.origin",
                    "%s given beside %s, which means %s; leave one out"
                        .formatted(Named.of(stated), because, Named.of(only))));
    return only;
  }

  /** Mass as weighed, or from the volume by the density read, else by that of the label. */
  private static Optional<Estimate> massKg(
      EntryReader in, Optional<JarReading> reading, OptionalDouble label) {
    double labelled = label.orElse(1);
    double fraction = labelled > 0 && labelled <= 1 ? labelled : 1;
    boolean read = reading.isPresent() && reading.get() instanceof DensityReading;
    double kgPerM3 =
        reading.isPresent() && reading.get() instanceof DensityReading measured
            ? measured.densityKgPerM3().value()
            : GlycerolStock.kgPerM3(fraction);
    Optional<Estimate> mass = in.one("assay.mass", typed -> Quantities.massKg(typed, kgPerM3));
    if (mass.isPresent() && !read && in.one("assay.mass", Quantities::isVolume, false)) {
      in.assume(
          "the jar measured at 20 \u00B0C, with the density of "
              + Figures.percent(fraction)
              + " % glycerol");
    }
    return mass;
  }

  /**
   * Answers what is in the jar.
   *
   * @return the assay
   * @throws RefusedRequestException where there can be no such jar
   */
  public Assay answer() {
    Assayer assayer = new Assayer();
    return RefusedRequestException.orRefused(
        () ->
            record.isPresent()
                ? assayer.recovered(record.get(), reading)
                : label.isPresent()
                    ? withStrength(assayer.bought(massKg, label.getAsDouble(), reading))
                    : withStrength(assayer.measured(massKg, reading.orElseThrow(), salt, origin)));
  }

  private Assay withStrength(Assay assay) {
    return strength.isPresent() ? assay.at(strength.getAsDouble()) : assay;
  }
}
