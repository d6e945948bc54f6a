package starchfilm.casting;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import starchfilm.material.recipe.Composition;

/**
 * Everything a drying forecast needs to know of one plate.
 *
 * @param composition the paste
 * @param solidsRelativeSd relative standard uncertainty of the paste's dry solids, from the
 *     weighing; joins the model's own 3 %
 * @param plasticiserRelativeSd relative standard uncertainty of glycerol per dry starch
 * @param plate what it was poured on
 * @param pour how it was poured
 * @param room the air
 * @param benchTemperatureK temperature of what the plate stands on (K), or empty for the air's; a
 *     heated bench is warmer
 * @param faces which faces are open from when; empty for the upper one all the time
 */
public record DryingCase(
    Composition composition,
    double solidsRelativeSd,
    double plasticiserRelativeSd,
    Plate plate,
    Pour pour,
    Room room,
    OptionalDouble benchTemperatureK,
    List<FaceChange> faces) {
  /** Copies the list, puts it in order of time, and checks every figure against the limits. */
  public DryingCase {
    faces = faces.stream().sorted(Comparator.comparingDouble(FaceChange::timeS)).toList();
    DryingLimits.require(DryingLimits.WET_THICKNESS, pour.wetThicknessM().value());
    DryingLimits.require(DryingLimits.UNEVENNESS, pour.unevenness());
    DryingLimits.require(DryingLimits.PASTE_TEMPERATURE, pour.pasteTemperatureK());
    DryingLimits.require(DryingLimits.START_MOISTURE, composition.waterKgPerKgDry());
    benchTemperatureK.ifPresent(
        given -> DryingLimits.require(DryingLimits.PASTE_TEMPERATURE, given));
    DryingLimits.require(room.at(0));
  }
}
