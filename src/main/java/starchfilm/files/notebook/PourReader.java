package starchfilm.files.notebook;

import static starchfilm.numerics.units.Units.CM2_PER_M2;
import static starchfilm.numerics.units.Units.ZERO_CELSIUS_K;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import starchfilm.casting.Plate;
import starchfilm.casting.Plate.Outline;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Pour;
import starchfilm.files.findings.Allowed;
import starchfilm.files.findings.Findings;
import starchfilm.files.findings.Words;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Estimate;

/**
 * Reads {@code pour}: plate, thickness and heat of the paste.
 *
 * <p>Wet thickness may be noted, or follow from the grams on a plate and its area; the grams count
 * for more, because a scale is surer than a ruler in a paste. Every assumption for what is not
 * recorded is judged, no source.
 */
final class PourReader {
  private static final double M_PER_MM = 1e-3;

  private static final double ASSUMED_LENGTH_M = 0.30;
  private static final double ASSUMED_WIDTH_M = 0.20;
  private static final Estimate ASSUMED_WET_M = Estimate.between(2e-3, 5e-3);
  private static final double ASSUMED_PASTE_C = 60;
  private static final double DISAGREEMENT = 2;

  /** More paste than this on a plate that nobody described was poured on several. */
  private static final double THICKEST_ON_ANY_M = 8e-3;

  private final Findings findings;
  private final Scale scale;

  PourReader(Findings findings, Scale scale) {
    this.findings = findings;
    this.scale = scale;
  }

  /**
   * What was read.
   *
   * @param sized whether its area is noted, or the poured mass, which makes it
   * @param tare the empty plate, if weighed
   */
  record Poured(Plate plate, boolean sized, Optional<Estimate> tare, Pour pour) {}

  Poured read(ObjectReader trial, Optional<Paste> paste) {
    ObjectReader pour = trial.section("pour").orElseGet(() -> trial.empty("pour"));
    ObjectReader plate = pour.section("plate").orElseGet(() -> pour.empty("plate"));
    boolean areaKnown =
        plate.has("diameter_mm")
            || plate.has("area_cm2")
            || (plate.has("length_mm") && plate.has("width_mm"));
    Plate read = plate(plate);
    Amount tareG = plate.amount("tare_g");
    Optional<Estimate> tare =
        tareG.isKnown() ? Optional.of(scale.kg(tareG, Estimate.exact(0))) : Optional.empty();
    int count = pour.count("plates").orElse(1);
    Amount pouredG = pour.amount("poured_g");
    Optional<Estimate> pouredKg =
        pouredG.isKnown() ? Optional.of(scale.kg(pouredG, Estimate.exact(0))) : Optional.empty();
    Amount wetMm = pour.amount("wet_thickness_mm");
    Optional<Estimate> fromMass =
        areaKnown && paste.isPresent()
            ? pouredKg.map(kg -> kg.times(1 / (density(paste.get()) * read.areaM2())))
            : Optional.empty();
    Estimate wetM = wetThickness(pour, wetMm, fromMass, paste, read, count, areaKnown);
    Plate sized =
        !areaKnown && pouredKg.isPresent() && paste.isPresent()
            ? read.ofArea(pouredKg.get().value() / (wetM.value() * density(paste.get())))
            : read;
    double unevenness = unevenness(pour);
    double pasteK = pasteTemperature(pour) + ZERO_CELSIUS_K;
    double unevennessSd = pour.has("unevenness_pct") ? 0 : Pour.UNMEASURED_SD_OF_LOG;
    return new Poured(
        rimmed(plate, sized, wetM),
        areaKnown || pouredKg.isPresent(),
        tare,
        new Pour(wetM, unevenness, unevennessSd, pasteK, pouredKg, count));
  }

  /** The rim as measured on the empty plate, less the paste poured. */
  private Plate rimmed(ObjectReader section, Plate plate, Estimate wetM) {
    OptionalDouble height = section.number("rim_height_mm");
    if (height.isEmpty()) {
      return plate;
    }
    if (section.has("rim_mm")) {
      findings.fault(
          section.placeOf("rim_height_mm"),
          "rim_height_mm beside rim_mm",
          "one of them: height above the empty plate, or what the paste leaves of it",
          "delete one of them");
    }
    return plate.filledTo(wetM.value(), height.getAsDouble() * M_PER_MM);
  }

  private static double density(Paste paste) {
    return paste.composition().pasteDensityKgPerM3();
  }

  private Estimate wetThickness(
      ObjectReader pour,
      Amount wetMm,
      Optional<Estimate> fromMass,
      Optional<Paste> paste,
      Plate plate,
      int count,
      boolean areaKnown) {
    Allowed wet = pour.allowed("wet_thickness_mm");
    if (fromMass.isPresent()) {
      double massMm = fromMass.get().value() / M_PER_MM;
      if (!wet.contains(massMm)) {
        findings.fault(
            pour.placeOf("poured_g"),
            "a pour that makes " + Words.number(massMm) + " mm on this plate",
            wet.words(),
            "check poured_g and the plate's sides");
        return ASSUMED_WET_M;
      }
      if (wetMm.isKnown()) {
        double ratio = wetMm.or(Estimate.exact(1)).value() / massMm;
        if (ratio > DISAGREEMENT || ratio < 1 / DISAGREEMENT) {
          findings.fault(
              pour.placeOf("wet_thickness_mm"),
              "a wet thickness that does not fit the grams poured",
              "about " + Words.number(massMm) + " mm, which poured_g makes on this plate",
              "check wet_thickness_mm, poured_g and the plate's sides");
        } else {
          findings.notice(
              pour.placeOf("wet_thickness_mm"),
              "poured_g makes " + Words.number(massMm) + " mm, which is more reliable");
        }
      }
      return fromMass.get();
    }
    if (wetMm.isKnown()) {
      return wetMm.or(ASSUMED_WET_M).times(M_PER_MM);
    }
    if (paste.isPresent()) {
      double mostM = paste.get().massKg() / (count * density(paste.get()) * plate.areaM2());
      boolean fits = wet.contains(mostM / M_PER_MM) && wet.contains(0.75 * mostM / M_PER_MM);
      if (areaKnown ? fits : fits && mostM <= THICKEST_ON_ANY_M) {
        Estimate whole = Estimate.between(0.75 * mostM, mostM);
        String plates = count == 1 ? "the plate" : "all " + count + " plates";
        notRecordedThickness(
            pour,
            whole,
            ", from all of the paste on " + (areaKnown ? plates : "one plate of 300 mm by 200 mm"));
        return whole;
      }
    }
    notRecordedThickness(pour, ASSUMED_WET_M, "");
    return ASSUMED_WET_M;
  }

  private void notRecordedThickness(ObjectReader pour, Estimate taken, String how) {
    double half = taken.sd() * Math.sqrt(12) / 2;
    findings.notRecorded(
        pour.path("wet_thickness_mm"),
        Words.number((taken.value() - half) / M_PER_MM)
            + " to "
            + Words.number((taken.value() + half) / M_PER_MM)
            + " mm"
            + how,
        "thickness affects the drying time more than anything else; weigh a"
            + " plate before and after the pour");
  }

  private Plate plate(ObjectReader section) {
    OptionalDouble length = section.number("length_mm");
    OptionalDouble width = section.number("width_mm");
    OptionalDouble diameter = section.number("diameter_mm");
    double lengthM = ASSUMED_LENGTH_M;
    double widthM = ASSUMED_WIDTH_M;
    Outline outline =
        section.oneOf("shape").filter("oval"::equals).isPresent()
            ? Outline.ELLIPSE
            : Outline.RECTANGLE;
    OptionalDouble area = section.number("area_cm2");
    boolean sides = length.isPresent() || width.isPresent();
    if (diameter.isPresent() && (sides || area.isPresent())) {
      findings.fault(
          section.placeOf("diameter_mm"),
          "a diameter beside a length or width",
          "diameter_mm for a round plate, length_mm and width_mm for any other",
          "delete one of them");
    } else if (area.isPresent() && sides) {
      findings.fault(
          section.placeOf("area_cm2"),
          "an area beside a length or width",
          "area_cm2 alone, or length_mm and width_mm",
          "delete one of them");
    }
    if (diameter.isPresent()) {
      lengthM = widthM = diameter.getAsDouble() * M_PER_MM;
      outline = Outline.ELLIPSE;
    } else if (length.isPresent() && width.isPresent()) {
      lengthM = length.getAsDouble() * M_PER_MM;
      widthM = width.getAsDouble() * M_PER_MM;
    } else if (area.isPresent()) {
      lengthM = widthM = Math.sqrt(area.getAsDouble() / CM2_PER_M2);
      outline = Outline.FREE;
    } else {
      findings.notRecorded(
          section.path("length_mm"),
          "300 mm by 200 mm, or what poured_g makes at the wet thickness",
          "grams cannot be converted to a thickness; evaporation is a little" + " uncertain");
    }
    PlateMaterial material = material(section);
    double thicknessM = plateThickness(section, material);
    double rimM = section.number("rim_mm").orElse(0) * M_PER_MM;
    Plate flat = Plate.across(material, lengthM, widthM, thicknessM, outline);
    return new Plate(material, flat.lengthM(), flat.widthM(), thicknessM, rimM, outline);
  }

  private PlateMaterial material(ObjectReader section) {
    boolean given = section.has("material");
    Optional<String> word = section.oneOf("material");
    if (!given) {
      findings.notRecorded(
          section.path("material"), "glass", "a little of the first hours; how the film comes off");
    }
    return word.flatMap(
            name ->
                Arrays.stream(PlateMaterial.values())
                    .filter(material -> material.tradeName().equals(name))
                    .findFirst())
        .orElse(PlateMaterial.GLASS);
  }

  private double plateThickness(ObjectReader section, PlateMaterial material) {
    OptionalDouble given = section.number("thickness_mm");
    if (given.isPresent()) {
      return given.getAsDouble() * M_PER_MM;
    }
    double assumedMm = material.usualThicknessM() / M_PER_MM;
    if (!section.has("thickness_mm")) {
      findings.notRecorded(
          section.path("thickness_mm"),
          Words.number(assumedMm) + " mm",
          "a little of the first hours, while the plate warms or cools");
    }
    return assumedMm * M_PER_MM;
  }

  private double unevenness(ObjectReader pour) {
    OptionalDouble given = pour.number("unevenness_pct");
    if (given.isEmpty() && !pour.has("unevenness_pct")) {
      findings.notRecorded(
          pour.path("unevenness_pct"),
          "25 %, 8 of 10 plates 13 to 48 %",
          "how far thin edge and thick spot are apart; measure the dry film there");
    }
    return given.isPresent() ? given.getAsDouble() / 100 : Pour.DEFAULT_UNEVENNESS;
  }

  private double pasteTemperature(ObjectReader pour) {
    OptionalDouble given = pour.number("paste_C");
    if (given.isEmpty() && !pour.has("paste_C")) {
      findings.notRecorded(
          pour.path("paste_C"),
          Words.number(ASSUMED_PASTE_C) + " \u00B0C",
          "a little of the first hour");
    }
    return given.orElse(ASSUMED_PASTE_C);
  }
}
