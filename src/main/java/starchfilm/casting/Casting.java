package starchfilm.casting;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.Paste;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Estimate;

/**
 * What is cast: everything a forecast of film, drying and risks needs to know, and a change may
 * touch.
 *
 * <p>Nothing is refused here: each model says which figures it takes, the drying by {@link
 * DryingLimits}.
 *
 * @param paste what is poured, with what the weighing of the ingredients leaves uncertain
 * @param cook how the paste was cooked; with the acid it decides the chain cuts
 * @param plate what it is poured on
 * @param pour how it is poured
 * @param faces which faces are open from when, in order of time; empty for the upper one all the
 *     time
 * @param place where it dries
 * @param use where the film will be used
 */
public record Casting(
    Paste paste,
    Cook cook,
    Plate plate,
    Pour pour,
    List<FaceChange> faces,
    DryingPlace place,
    Use use) {
  /** Puts the changes of faces in order of time. */
  public Casting {
    faces = faces.stream().sorted(Comparator.comparingDouble(FaceChange::timeS)).toList();
  }

  /**
   * What a recipe makes.
   *
   * @param recipe what went into the pot and how it was cooked
   * @param plate what the paste is poured on
   * @param pour how it is poured
   * @param faces which faces are open from when
   * @param place where it dries
   * @param use where the film will be used
   * @return the casting of its paste
   * @throws IllegalArgumentException if more water is lost in the pot than there is, or no dry
   *     starch is left
   */
  public static Casting of(
      Recipe recipe, Plate plate, Pour pour, List<FaceChange> faces, DryingPlace place, Use use) {
    return new Casting(Paste.cooked(recipe), recipe.cook(), plate, pour, faces, place, use);
  }

  /** The paste per kilogram. */
  public Composition composition() {
    return paste.composition();
  }

  /** The air, from the pour on. */
  public Room room() {
    return place.room();
  }

  /** Temperature of what the plate stands on (K), or empty for the air's. */
  public OptionalDouble benchTemperatureK() {
    return place.benchTemperatureK();
  }

  /** Wet thickness, averaged over the plate (m). */
  public double wetThicknessM() {
    return pour.wetThicknessM().value();
  }

  /** Paste on one plate (kg) by wet thickness, area and density. */
  public double pastePerPlateKg() {
    return wetThicknessM() * plate.areaM2() * composition().pasteDensityKgPerM3();
  }

  /** Paste on one plate (kg), as weighed, or else by wet thickness, area and density. */
  public double pouredKg() {
    return pour.weighedKg().map(Estimate::value).orElseGet(this::pastePerPlateKg);
  }

  /** Paste on all plates together (kg), counted likewise. */
  public double pouredOnAllKg() {
    return pour.areasM2().isEmpty()
        ? pour.plates() * pouredKg()
        : pour.areasM2().stream().mapToDouble(this::shareOf).sum() * pouredKg();
  }

  private double shareOf(double areaM2) {
    return areaM2 / plate.areaM2();
  }

  /**
   * The casting as one of its plates has it, poured as thick as the others.
   *
   * @param number of the plate, from 1
   */
  public Casting ofPlate(int number) {
    if (pour.areasM2().isEmpty() || pour.areasM2().get(number - 1) == plate.areaM2()) {
      return this;
    }
    double areaM2 = pour.areasM2().get(number - 1);
    return with(plate.ofArea(areaM2))
        .with(pour.weighing(pour.weighedKg().map(kg -> kg.times(shareOf(areaM2)))));
  }

  /** The same casting of another paste. */
  public Casting with(Paste other) {
    return new Casting(other, cook, plate, pour, faces, place, use);
  }

  /** The same casting of another paste, known as well as before. */
  public Casting with(Composition other) {
    return with(paste.with(other));
  }

  /** The same casting after another cook; the paste stays as it is. */
  public Casting with(Cook other) {
    return new Casting(paste, other, plate, pour, faces, place, use);
  }

  /** The same casting on another plate. */
  public Casting with(Plate other) {
    return new Casting(paste, cook, other, pour, faces, place, use);
  }

  /** The same casting with another pour. */
  public Casting with(Pour other) {
    return new Casting(paste, cook, plate, other, faces, place, use);
  }

  /** The same casting turned or moved to a rack at other times. */
  public Casting with(List<FaceChange> other) {
    return new Casting(paste, cook, plate, pour, other, place, use);
  }

  /** The same casting dried in another place. */
  public Casting with(DryingPlace other) {
    return new Casting(paste, cook, plate, pour, faces, other, use);
  }

  /** The same casting used in other air. */
  public Casting with(Use other) {
    return new Casting(paste, cook, plate, pour, faces, place, other);
  }

  /** The same casting poured to another wet thickness (m), known as well as before. */
  public Casting pouredTo(double wetThicknessM) {
    return with(pour.to(wetThicknessM));
  }
}
