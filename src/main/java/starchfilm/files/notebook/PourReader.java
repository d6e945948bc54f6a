package starchfilm.files.notebook;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import starchfilm.casting.Plate;
import starchfilm.casting.Plate.Outline;
import starchfilm.casting.PlateMaterial;
import starchfilm.casting.Pour;
import starchfilm.files.findings.Allowed;
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
  private static final double DISAGREEMENT = 2;

  /** More paste than this on a plate that nobody described was poured on several. */
  private static final double THICKEST_ON_ANY_M = 8e-3;

  private PourReader() {}

  /**
   * What was read.
   *
   * @param sized whether its area is noted, or the poured mass, which makes it
   * @param tare the empty plate, if weighed
   */
  record Poured(Plate plate, boolean sized, Optional<Estimate> tare, Pour pour) {}

  static Poured read(ObjectReader trial, Optional<Paste> paste) {
    ObjectReader pour = trial.sectionOrEmpty("pour");
    ObjectReader plate = pour.sectionOrEmpty("plate");
    boolean areaKnown =
        plate.has("diameter_mm")
            || plate.has("area_cm2")
            || (plate.has("length_mm") && plate.has("width_mm"));
    Plate read = plate(plate);
    Optional<Estimate> tare = plate.amount("tare_g");
    int count = pour.count("plates").orElse(1);
    Optional<Estimate> pouredKg = pour.amount("poured_g");
    Optional<Estimate> fromMass =
        areaKnown && paste.isPresent()
            ? pouredKg.map(kg -> kg.times(1 / (density(paste.get()) * read.areaM2())))
            : Optional.empty();
    List<Double> others = pour.numbers("other_areas_cm2");
    if (others.size() >= count) {
      String more = others.size() + " further areas beside " + count + " poured";
      pour.notice("other_areas_cm2", more + "; those left over are not used");
    }
    double allM2 =
        others.isEmpty()
            ? count * read.areaM2()
            : areas(others, read, count).stream().mapToDouble(area -> area).sum();
    Estimate wetM = wetThickness(pour, fromMass, paste, allM2, count, areaKnown);
    Plate sized =
        !areaKnown && pouredKg.isPresent() && paste.isPresent()
            ? read.ofArea(pouredKg.get().value() / (wetM.value() * density(paste.get())))
            : read;
    List<Double> areas = areas(others, sized, count);
    double unevenness = pour.takenNumber("unevenness_pct");
    double pasteK = pour.takenNumber("paste_C");
    double unevennessSd = pour.has("unevenness_pct") ? 0 : Pour.UNMEASURED_SD_OF_LOG;
    return new Poured(
        rimmed(plate, sized, wetM),
        areaKnown || pouredKg.isPresent(),
        tare,
        new Pour(wetM, unevenness, unevennessSd, pasteK, pouredKg, count, areas));
  }

  /** The area of each plate (m2) where they differ; one of which none is noted is as the first. */
  private static List<Double> areas(List<Double> others, Plate first, int count) {
    return others.isEmpty()
        ? List.of()
        : Stream.concat(
                Stream.of(first.areaM2()),
                Stream.concat(others.stream(), Stream.generate(first::areaM2).limit(count)))
            .limit(count)
            .toList();
  }

  /** The rim as measured on the empty plate, less the paste poured. */
  private static Plate rimmed(ObjectReader section, Plate plate, Estimate wetM) {
    OptionalDouble height = section.number("rim_height_mm");
    if (height.isEmpty()) {
      return plate;
    }
    if (section.has("rim_mm")) {
      section.fault(
          "rim_height_mm",
          "rim_height_mm beside rim_mm",
          "one of them: height above the empty plate, or what the paste leaves of it",
          "delete one of them");
    }
    return plate.filledTo(wetM.value(), height.getAsDouble());
  }

  private static double density(Paste paste) {
    return paste.composition().pasteDensityKgPerM3();
  }

  private static Estimate wetThickness(
      ObjectReader pour,
      Optional<Estimate> fromMass,
      Optional<Paste> paste,
      double allM2,
      int count,
      boolean areaKnown) {
    Allowed wet = pour.allowed("wet_thickness_mm");
    Optional<Estimate> notedM = pour.amount("wet_thickness_mm");
    if (fromMass.isPresent()) {
      double massMm = fromMass.get().value() / M_PER_MM;
      if (!wet.contains(massMm)) {
        pour.fault(
            "poured_g",
            "a pour that makes " + Words.number(massMm) + " mm on this plate",
            wet.words(),
            "check poured_g and the plate's sides");
        return ASSUMED_WET_M;
      }
      if (notedM.isPresent()) {
        double ratio = notedM.get().value() / fromMass.get().value();
        if (ratio > DISAGREEMENT || ratio < 1 / DISAGREEMENT) {
          pour.fault(
              "wet_thickness_mm",
              "a wet thickness that does not fit the grams poured",
              "about " + Words.number(massMm) + " mm, which poured_g makes on this plate",
              "check wet_thickness_mm, poured_g and the plate's sides");
        } else {
          pour.notice(
              "wet_thickness_mm",
              "poured_g makes " + Words.number(massMm) + " mm, which is more reliable");
        }
      }
      return fromMass.get();
    }
    if (notedM.isPresent()) {
      return notedM.get();
    }
    // Where only a part of the paste was weighed onto a plate, all of it says nothing.
    if (paste.isPresent() && !pour.has("poured_g")) {
      double mostM = paste.get().massKg() / (density(paste.get()) * allM2);
      boolean fits = wet.contains(mostM / M_PER_MM) && wet.contains(0.75 * mostM / M_PER_MM);
      if (areaKnown ? fits : fits && mostM <= THICKEST_ON_ANY_M) {
        Estimate whole = Estimate.between(0.75 * mostM, mostM);
        String plates =
            count == 1 ? "the plate" : count == 2 ? "both plates" : "all " + count + " plates";
        return assumedThickness(
            pour,
            whole,
            ", from all of the paste on " + (areaKnown ? plates : "one plate of 30 × 20 cm"));
      }
    }
    return assumedThickness(pour, ASSUMED_WET_M, "");
  }

  private static Estimate assumedThickness(ObjectReader pour, Estimate taken, String how) {
    return pour.assumed("wet_thickness_mm", taken, Words.millimetres(taken) + how);
  }

  private static Plate plate(ObjectReader section) {
    OptionalDouble length = section.number("length_mm");
    OptionalDouble width = section.number("width_mm");
    OptionalDouble diameter = section.number("diameter_mm");
    double lengthM = ASSUMED_LENGTH_M;
    double widthM = ASSUMED_WIDTH_M;
    Outline outline =
        section.oneOf("shape").equals(Optional.of("oval")) ? Outline.ELLIPSE : Outline.RECTANGLE;
    OptionalDouble area = section.number("area_cm2");
    boolean sides = length.isPresent() || width.isPresent();
    if (diameter.isPresent() && (sides || area.isPresent())) {
      section.fault(
          "diameter_mm",
          "a diameter beside a length or width",
          "diameter_mm for a round plate, length_mm and width_mm for any other",
          "delete one of them");
    } else if (area.isPresent() && sides) {
      section.fault(
          "area_cm2",
          "an area beside a length or width",
          "area_cm2 alone, or length_mm and width_mm",
          "delete one of them");
    }
    if (diameter.isPresent()) {
      lengthM = widthM = diameter.getAsDouble();
      outline = Outline.ELLIPSE;
    } else if (length.isPresent() && width.isPresent()) {
      lengthM = length.getAsDouble();
      widthM = width.getAsDouble();
    } else if (area.isPresent()) {
      lengthM = widthM = Math.sqrt(area.getAsDouble());
      outline = Outline.FREE;
    } else {
      section.leftAside("length_mm", "since width_mm is missing");
      section.leftAside("width_mm", "since length_mm is missing");
      section.notRecorded("length_mm");
    }
    if (diameter.isPresent() || area.isPresent()) {
      section.leftAside("shape", "since it is for a plate with length_mm and width_mm");
    }
    PlateMaterial material =
        section
            .choice("material", PlateMaterial.values())
            .orElseGet(() -> section.assumed("material", PlateMaterial.GLASS));
    double usualM = material.usualThicknessM();
    String usual = Words.number(usualM / M_PER_MM) + " mm";
    double thicknessM =
        section
            .number("thickness_mm")
            .orElseGet(() -> section.assumed("thickness_mm", usualM, usual));
    double rimM = section.takenNumber("rim_mm");
    Plate flat = Plate.across(material, lengthM, widthM, thicknessM, outline);
    return new Plate(material, flat.lengthM(), flat.widthM(), thicknessM, rimM, outline);
  }
}
