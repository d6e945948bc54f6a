package starchfilm.planning;

import java.util.OptionalDouble;
import starchfilm.casting.DryingCase;
import starchfilm.casting.Plate;
import starchfilm.casting.Pour;
import starchfilm.film.FilmCase;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Estimate;

/**
 * A paste that is ready, a plate, a room and a date: how thick may it be poured?
 *
 * @param paste the paste after the cook
 * @param cook how it was cooked
 * @param plate one plate; its own rim height is not used, {@code rimM} is
 * @param rimM height of the plate's rim above its floor (m); 0 for none
 * @param unevenness how far thin edge and thick spot are from the average (ratio, 0 to 0.9)
 * @param pasteTemperatureK temperature of the paste when poured (K)
 * @param place where it dries
 * @param byS when it must be ready (s after the pour, above 0)
 * @param use where the film will be used
 */
public record ThicknessRequest(
    Paste paste,
    Cook cook,
    Plate plate,
    double rimM,
    double unevenness,
    double pasteTemperatureK,
    DryingPlace place,
    double byS,
    UseAir use) {
  /** Paste of a cook that nobody measured is poured at this temperature (K): 60 C; assumed. */
  public static final double USUAL_PASTE_K = PotRules.POURED_AT_K;

  /** Checks the date. */
  public ThicknessRequest {
    if (!(byS > 0)) {
      throw new UnworkableRequestException(
          Sentence.of(
              "date",
              Sentence.days(byS) + " after the pour",
              "a time after the pour",
              "write when the film must be ready, such as 5d"));
    }
  }

  /** The plate with a pour of a thickness. */
  DryingCase pouredAt(double wetM) {
    return new DryingCase(
        paste.composition(),
        paste.solidsRelativeSd(),
        paste.plasticiserRelativeSd(),
        new Plate(
            plate.material(),
            plate.lengthM(),
            plate.widthM(),
            plate.thicknessM(),
            Math.max(0, rimM - wetM)),
        new Pour(Estimate.exact(wetM), unevenness, pasteTemperatureK),
        place.room(),
        place.benchTemperatureK(),
        java.util.List.of());
  }

  /** The film that a pour of a thickness leaves. */
  FilmCase filmAt(double wetM) {
    return new FilmCase(
        paste.composition(),
        paste.plasticiserRelativeSd(),
        paste.solidsRelativeSd(),
        cook,
        Estimate.exact(wetM),
        use.relativeHumidity(),
        use.temperatureK(),
        use.ageS());
  }

  /** Paste on one plate (kg) at a thickness. */
  double pourKg(double wetM) {
    return wetM * plate.areaM2() * paste.composition().pasteDensityKgPerM3();
  }

  /** The rim's height where there is one. */
  OptionalDouble rim() {
    return rimM > 0 ? OptionalDouble.of(rimM) : OptionalDouble.empty();
  }
}
