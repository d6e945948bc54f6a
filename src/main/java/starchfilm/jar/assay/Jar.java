package starchfilm.jar.assay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.jar.recovery.AlcoholLeft;
import starchfilm.jar.recovery.RecoveryBalance;
import starchfilm.material.recipe.GlycerolOrigin;
import starchfilm.material.recipe.GlycerolStock;
import starchfilm.numerics.evidence.Band;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.numerics.evidence.Figures;
import starchfilm.numerics.evidence.Source;

/**
 * A jar's content on the way to an assay: glycerol and what stays, water for the rest.
 *
 * @param massKg what the jar holds (kg)
 * @param glycerol glycerol (kg per kg jar)
 * @param range its range (kg per kg jar)
 * @param stays salt, soap and whatever else stays in a film (kg per kg jar)
 * @param origin where it comes from
 */
record Jar(Estimate massKg, Estimate glycerol, Band range, Estimate stays, GlycerolOrigin origin) {
  /** Checks the mass. */
  Jar {
    if (!(massKg.value() > 0)) {
      throw new IllegalArgumentException(
          "what the jar holds: "
              + Figures.grams(massKg.value())
              + " g given, allowed more than 0 g; weigh it without the jar");
    }
  }

  /** From a figure for the whole jar. */
  Jar(Estimate massKg, Estimate glycerol, Estimate stays, GlycerolOrigin origin) {
    this(massKg, glycerol, within(glycerol, mostBeside(stays)), stays, origin);
  }

  /** From the mixture of glycerol and water that is left when what stays is left out. */
  Jar(Estimate massKg, Band mixture, Estimate stays, GlycerolOrigin origin) {
    this(
        massKg,
        new Estimate(
            mixture.middle() * (1 - stays.value()),
            Math.hypot(
                (mixture.high() - mixture.low()) / (2 * Band.Z90) * (1 - stays.value()),
                mixture.middle() * stays.sd())),
        mixture.times(1 - stays.value()),
        stays,
        origin);
  }

  Assay assay(List<String> remarks, List<Source> sources) {
    return assay(remarks, sources, Optional.empty(), Optional.empty());
  }

  Assay assay(
      List<String> remarks, List<Source> sources, RecoveryBalance recovery, AlcoholLeft alcohol) {
    return assay(remarks, sources, Optional.of(recovery), Optional.of(alcohol));
  }

  private Assay assay(
      List<String> remarks,
      List<Source> sources,
      Optional<RecoveryBalance> recovery,
      Optional<AlcoholLeft> alcohol) {
    GlycerolStock stock = new GlycerolStock(glycerol, stays, origin);
    List<Source> all = new ArrayList<>(sources);
    if (stays.value() > 0) {
      all.add(SaltAdvice.SOURCE);
    }
    double rest = Math.max(0, 1 - stays.value());
    return new Assay(
        massKg,
        stock,
        range,
        within(stays, 1),
        new Band(
            Math.max(0, rest - range.high()),
            Math.max(0, rest - range.middle()),
            Math.max(0, rest - range.low())),
        pureGlycerolKg(),
        alcohol,
        SaltAdvice.of(glycerol.value() > 0 ? stays.value() / glycerol.value() : 0),
        recovery,
        remarks,
        all);
  }

  /** The most that may leave with the water (kg). */
  double mostVolatileKg() {
    return massKg.value() * Math.max(0, 1 - stays.value() - range.low());
  }

  Band pureGlycerolKg() {
    double massRelativeSd = massKg.sd() / massKg.value();
    double reach = Band.Z90 * massRelativeSd;
    return new Band(
        massKg.value() * spread(range.low(), -reach),
        massKg.value() * range.middle(),
        massKg.value() * spread(range.high(), reach));
  }

  /** An end of the range moved by the mass's own error, both added in squares. */
  private double spread(double end, double massReach) {
    double reach = Math.hypot(end - range.middle(), massReach * range.middle());
    return range.middle() + Math.copySign(reach, massReach);
  }

  /** The most glycerol there is room for where little of the rest is there. */
  private static double mostBeside(Estimate stays) {
    return 1 - Math.max(0, stays.value() - Band.Z90 * stays.sd());
  }

  /** 10 to 90 %, no further than what can be. */
  private static Band within(Estimate fraction, double most) {
    Band normal = Band.normal(fraction.value(), fraction.sd());
    return new Band(
        Math.max(0, normal.low()),
        Math.max(0, fraction.value()),
        Math.max(fraction.value(), Math.min(most, normal.high())));
  }
}
