package starchfilm.advice;

import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.Casting;
import starchfilm.casting.DryingPlace;
import starchfilm.casting.Plate;

/**
 * What can be changed at the pour.
 *
 * <p>Limits: 1 to 4.5 mm wet, since without a rim a pool of paste stands no higher than about 5 mm,
 * and 50 to 250 µm dry (common practice, no source). Thicknesses are told to a tenth of a
 * millimetre.
 */
final class PourAdjustments {
  /** The thinnest pour that levels by hand (m); common practice, no source. */
  static final double THINNEST_WET_M = 1e-3;

  /** The thickest pour that is advised (m); common practice, no source. */
  static final double THICKEST_WET_M = 4.5e-3;

  /** The thinnest dry film that is advised (m); common practice, no source. */
  static final double THINNEST_DRY_M = 50e-6;

  private static final double THICKEST_DRY_M = 250e-6;
  private static final double TENTH_MM = 1e-4;
  private static final double[] THINNER = {0.85, 0.7, 0.55, 0.4, 0.3, 0.2};
  private static final double[] THICKER = {1.25, 1.6, 2};
  private static final double LEVEL_ENOUGH = 0.08;
  private static final double LEVELLED = 0.05;
  private static final double[] HOT_K = {338.15, 348.15, 353.15};
  private static final double NOTICEABLE_K = 4;

  private PourAdjustments() {}

  static List<Step> thinner(FaultContext scene, List<DryingPlace> otherPlaces) {
    return poured(scene, Adjustment.POUR_THINNER, THINNER);
  }

  static List<Step> thicker(FaultContext scene, List<DryingPlace> otherPlaces) {
    return poured(scene, Adjustment.POUR_THICKER, THICKER);
  }

  private static List<Step> poured(FaultContext scene, Adjustment adjustment, double[] factors) {
    Casting now = scene.setup();
    double from = now.wetThicknessM();
    double dryPerWet = scene.outlook().film().dryThicknessM().middle() / from;
    List<Step> steps = new ArrayList<>();
    for (double factor : factors) {
      double to = Math.rint(from * factor / TENTH_MM) * TENTH_MM;
      boolean allowed =
          to >= THINNEST_WET_M
              && to <= THICKEST_WET_M
              && to * dryPerWet >= THINNEST_DRY_M
              && to * dryPerWet <= THICKEST_DRY_M;
      boolean moves = factor < 1 ? to < from - TENTH_MM / 2 : to > from + TENTH_MM / 2;
      if (allowed && moves) {
        steps.add(Step.to(adjustment, now.pouredTo(to), words(now, from, to)));
      }
    }
    return steps;
  }

  private static String words(Casting setup, double fromM, double toM) {
    Plate plate = setup.plate();
    double kgPerM = plate.areaM2() * setup.composition().pasteDensityKgPerM3();
    return "wet thickness "
        + Told.number(1e3 * fromM)
        + " → "
        + Told.millimetres(toM)
        + " ("
        + Told.grams(toM * kgPerM)
        + " of paste a plate instead of "
        + Told.grams(fromM * kgPerM)
        + ")";
  }

  static List<Step> level(FaultContext scene, List<DryingPlace> otherPlaces) {
    double from = scene.setup().pour().unevenness();
    if (from <= LEVEL_ENOUGH || !scene.notes("pour.unevenness_pct")) {
      return List.of();
    }
    List<Step> steps = new ArrayList<>();
    for (double to : new double[] {from / 2, LEVELLED}) {
      if (steps.isEmpty() || to < from / 2) {
        steps.add(
            Step.to(
                Adjustment.LEVEL_THE_PLATE,
                scene.setup().with(scene.setup().pour().withUnevenness(to)),
                "a level plate: thin edge and thick spot "
                    + Told.percent(from)
                    + " → "
                    + Told.percent(to)
                    + " from the average"));
      }
    }
    return steps;
  }

  static List<Step> hotter(FaultContext scene, List<DryingPlace> otherPlaces) {
    double from = scene.setup().pour().pasteTemperatureK();
    double most = scene.setup().cook().topTemperatureK().value();
    List<Step> steps = new ArrayList<>();
    for (double to : HOT_K) {
      if (to > from + NOTICEABLE_K && to < most) {
        steps.add(
            Step.to(
                Adjustment.POUR_HOTTER,
                scene.setup().with(scene.setup().pour().withPasteTemperature(to)),
                "paste poured at " + Told.degrees(from) + " → " + Told.celsius(to)));
      }
    }
    return steps;
  }
}
