package starchfilm.advice;

import java.util.Optional;
import starchfilm.advice.Cause.PutRight;
import starchfilm.casting.Casting;
import starchfilm.casting.Pour;
import starchfilm.change.Limits;
import starchfilm.material.recipe.Composition;

/**
 * Thickness, level and warmth of the pour.
 *
 * <p>Limits: dry film at home is 50 to 250 µm thick, and over 300 µm dries slowly, curls and cracks
 * (judged); film thinner than 50 µm tears easily by hand (judged); paste is poured hot, above about
 * 60 °C, and sets to a gel below about 40 °C (common practice, no source).
 */
final class PourCauses {
  private static final double USUAL_DRY_M = 200e-6;
  private static final double THICK_DRY_M = 400e-6;
  private static final double MODEST_DRY_M = 100e-6;
  private static final double TENDER_EDGE_M = 50e-6;
  private static final double FRAIL_EDGE_M = 20e-6;
  private static final double STURDY_EDGE_M = 80e-6;
  private static final double FAR_FROM_LEVEL = 0.35;
  private static final double FLOWS_K = 333.15;
  private static final double SETS_K = 313.15;

  /** Specific heat of a paste that is mostly water (J/(kg K)); of water, any steam table. */
  private static final double PASTE_J_PER_KG_K = 4_000;

  private PourCauses() {}

  static Reading tooThick(FaultContext scene) {
    if (!scene.notes("pour.wet_thickness_mm")) {
      return Reading.untold("how thick it was poured");
    }
    double dry = dryM(scene);
    return Reading.of(
        dry,
        USUAL_DRY_M,
        THICK_DRY_M,
        "poured "
            + Told.millimetres(scene.setup().wetThicknessM())
            + " wet, which leaves "
            + Told.micrometres(dry)
            + " of dry film; 50 to 250 µm are usual");
  }

  static Optional<PutRight> thin(FaultContext scene) {
    double wet = scene.setup().wetThicknessM() * MODEST_DRY_M / dryM(scene);
    if (wet >= scene.setup().wetThicknessM()) {
      return Optional.empty();
    }
    return Optional.of(
        new PutRight(scene.setup().pouredTo(wet), "poured " + Told.millimetres(wet) + " wet"));
  }

  static Reading tooThin(FaultContext scene) {
    if (!scene.notes("pour.wet_thickness_mm")) {
      return Reading.untold("how thick it was poured");
    }
    double edge = edgeM(scene);
    return Reading.of(
        edge,
        TENDER_EDGE_M,
        FRAIL_EDGE_M,
        "the thin edge is " + Told.micrometres(edge) + " when dry; under 50 µm film tears easily");
  }

  static Optional<PutRight> thicker(FaultContext scene) {
    double wet = scene.setup().wetThicknessM() * STURDY_EDGE_M / edgeM(scene);
    if (wet <= scene.setup().wetThicknessM()) {
      return Optional.empty();
    }
    return Optional.of(
        new PutRight(scene.setup().pouredTo(wet), "poured " + Told.millimetres(wet) + " wet"));
  }

  static Reading uneven(FaultContext scene) {
    double unevenness = scene.setup().pour().unevenness();
    if (!scene.notes("pour.unevenness_pct")) {
      return Reading.untold("how uneven the pour was");
    }
    return Reading.of(
        unevenness,
        Limits.LEVEL,
        FAR_FROM_LEVEL,
        "thin edge and thick spot lie "
            + Told.percent(unevenness)
            + " from the average; 10 % is level");
  }

  static Optional<PutRight> level(FaultContext scene) {
    if (!scene.notes("pour.unevenness_pct") || scene.setup().pour().unevenness() <= Limits.LEVEL) {
      return Optional.empty();
    }
    return Optional.of(
        new PutRight(
            scene.setup().with(scene.setup().pour().withUnevenness(Limits.LEVEL)),
            "on a level plate"));
  }

  static Reading tooCool(FaultContext scene) {
    if (!scene.notes("pour.paste_C")) {
      return Reading.untold("how warm the paste was when poured");
    }
    double poured = scene.setup().pour().pasteTemperatureK();
    return Reading.of(
        poured,
        FLOWS_K,
        SETS_K,
        "poured at "
            + Told.celsius(poured)
            + ", which the plate cools to "
            + Told.celsius(onPlateK(scene))
            + " at once; paste flows well above about 60 °C and sets below about 40 °C");
  }

  /** Paste and plate mixed, the plate as warm as the room. */
  private static double onPlateK(FaultContext scene) {
    Casting setup = scene.setup();
    Composition paste = setup.composition();
    Pour pour = setup.pour();
    double film = pour.wetThicknessM().value() * paste.pasteDensityKgPerM3() * PASTE_J_PER_KG_K;
    double plate = setup.plate().heatCapacityJPerM2K();
    double airK = setup.place().room().at(0).temperatureK();
    return (film * pour.pasteTemperatureK() + plate * airK) / (film + plate);
  }

  private static double dryM(FaultContext scene) {
    return scene.outlook().film().dryThicknessM().middle();
  }

  private static double edgeM(FaultContext scene) {
    return dryM(scene) * (1 - scene.setup().pour().unevenness());
  }
}
