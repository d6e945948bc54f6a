package starchfilm.files.notebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import starchfilm.files.findings.Words;
import starchfilm.material.ingredient.Flour;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.material.recipe.StarchPortion;
import starchfilm.numerics.evidence.Estimate;

/**
 * Reads {@code recipe.starch}, and what starch and water say of each other where one is missing:
 * paste is cast at a usual concentration, see {@link StarchKind#usualCast()}.
 */
final class StarchReader {
  /** The pot taken where neither starch nor water is known; only the concentration matters. */
  private static final double POT_KG = 0.5;

  private StarchReader() {}

  /** One starch as noted, its mass perhaps missing. */
  record Noted(
      ObjectReader section,
      StarchKind kind,
      Optional<Estimate> massKg,
      Estimate moisture,
      Estimate inert) {}

  static List<Noted> starches(ObjectReader recipe, boolean mustBeThere) {
    List<Noted> noted = new ArrayList<>();
    for (ObjectReader section : recipe.sections("starch")) {
      StarchKind kind =
          section
              .choice("kind", StarchKind.values())
              .orElseGet(() -> section.assumed("kind", StarchKind.CORN));
      Optional<Estimate> moisture = section.amount("moisture_pct");
      Estimate usual = kind.powderMoisture();
      if (moisture.isEmpty()) {
        section.notRecorded(
            "moisture_pct",
            Words.percent(usual) + ", as " + kind + " starch usually holds",
            "dry starch uncertain by " + Words.percentSpread(usual));
      }
      Estimate inert = section.taken("inert_pct");
      Estimate loose = inert.value() > 0 ? Flour.BULK_KG_PER_M3 : kind.bulkDensityKgPerM3();
      Optional<Estimate> massKg = massKg(section, kind, loose);
      noted.add(new Noted(section, kind, massKg, moisture.orElse(usual), inert));
    }
    if (mustBeThere && recipe.entries("starch").isEmpty()) {
      recipe.fault(
          "starch",
          "a recipe without starch",
          "at least one starch",
          "add \"starch\": [{\"kind\": \"potato\", \"mass_g\": 20}]");
    }
    return noted;
  }

  private static Optional<Estimate> massKg(
      ObjectReader section, StarchKind kind, Estimate kgPerM3) {
    return Volumes.massKg(
        section,
        kgPerM3,
        byVolumeKg ->
            section.notRecorded(
                "mass_g",
                "%s by its volume, %s powder loose or shaken down"
                    .formatted(Words.grams(byVolumeKg), kind),
                "dry thickness and drying time are known only within this range; weigh the"
                    + " starch"));
  }

  static List<StarchPortion> weighedStarches(List<Noted> noted, Optional<Estimate> waterKg) {
    List<StarchPortion> portions = new ArrayList<>();
    long missing = noted.stream().filter(n -> n.massKg().isEmpty()).count();
    for (Noted starch : noted) {
      Estimate massKg =
          starch
              .massKg()
              .orElseGet(
                  () -> assumed(starch, waterKg.map(Estimate::value).orElse(POT_KG) / missing));
      portions.add(new StarchPortion(starch.kind(), massKg, starch.moisture(), starch.inert()));
    }
    return portions;
  }

  /** The powder that is usually cast with so much water (kg). */
  private static Estimate assumed(Noted starch, double waterKg) {
    double perPowder = waterKg / (1 - starch.moisture().value());
    double from = starch.kind().usualCast().min();
    double to = starch.kind().usualCast().max();
    Estimate massKg = Estimate.between(perPowder * from / (1 - from), perPowder * to / (1 - to));
    return starch.section().assumed("mass_g", massKg, usual(massKg, starch.kind()));
  }

  private static String usual(Estimate massKg, StarchKind kind) {
    return Words.grams(massKg) + ", as " + kind + " starch is usually cast";
  }

  static Estimate assumedWater(ObjectReader recipe, List<Noted> noted, double starchKg) {
    if (noted.isEmpty()) {
      return Estimate.exact(POT_KG);
    }
    StarchKind kind = noted.get(0).kind();
    double dryKg = starchKg * (1 - noted.get(0).moisture().value());
    boolean nothingKnown = noted.stream().allMatch(n -> n.massKg().isEmpty());
    Estimate water =
        nothingKnown
            ? Estimate.exact(POT_KG)
            : Estimate.between(
                dryKg * (1 / kind.usualCast().max() - 1), dryKg * (1 / kind.usualCast().min() - 1));
    return recipe.assumed("water", water, usual(water, kind));
  }
}
