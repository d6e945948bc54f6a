package starchfilm.advice;

import java.util.List;
import java.util.OptionalDouble;
import starchfilm.casting.DryingCase;
import starchfilm.casting.FaceChange;
import starchfilm.casting.Plate;
import starchfilm.casting.Pour;
import starchfilm.casting.Room;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.film.FilmCase;
import starchfilm.material.recipe.Composition;
import starchfilm.material.recipe.Cook;
import starchfilm.material.recipe.Paste;
import starchfilm.numerics.evidence.Estimate;
import starchfilm.trial.Trial;
import starchfilm.trial.Trial.RoomUncertainty;
import starchfilm.trial.Trial.Use;

/**
 * What the model is given of a trial: everything a change may touch.
 *
 * @param composition the paste
 * @param doubt what the weighing of the ingredients leaves uncertain
 * @param cook how it was cooked
 * @param casting plate and pour
 * @param place where it dries
 * @param use where the film will be used
 */
public record Setup(
    Composition composition, Doubt doubt, Cook cook, Casting casting, Place place, Use use) {
  /**
   * What the weighing of the ingredients leaves uncertain.
   *
   * @param solidsRelativeSd of the dry solids per kg paste (ratio)
   * @param plasticiserRelativeSd of glycerol per dry starch (ratio)
   */
  public record Doubt(double solidsRelativeSd, double plasticiserRelativeSd) {}

  /**
   * Plate and pour.
   *
   * @param plate what it is poured on
   * @param pour how it is poured
   * @param faces when the film is turned or moved to a rack
   */
  public record Casting(Plate plate, Pour pour, List<FaceChange> faces) {
    /** Copies the list. */
    public Casting {
      faces = List.copyOf(faces);
    }
  }

  /**
   * Where a plate dries.
   *
   * @param name what its maker calls the room
   * @param room the air
   * @param doubt how uncertain the notes leave the air
   * @param benchTemperatureK temperature of what the plate stands on (K), if noted
   */
  public record Place(
      String name, Room room, RoomUncertainty doubt, OptionalDouble benchTemperatureK) {}

  /**
   * The set-up of a trial as it was noted.
   *
   * @param trial the trial
   * @return what the model is given of it
   */
  public static Setup of(Trial trial) {
    Paste paste = Paste.cooked(trial.recipe());
    return new Setup(
        paste.composition(),
        new Doubt(paste.solidsRelativeSd(), paste.plasticiserRelativeSd()),
        trial.recipe().cook(),
        new Casting(trial.plate(), trial.pour(), trial.faces()),
        placeOf(trial),
        trial.use());
  }

  static Place placeOf(Trial trial) {
    return new Place(trial.roomName(), trial.room(), trial.roomDoubt(), trial.benchTemperatureK());
  }

  /**
   * What a drying forecast is asked.
   *
   * @return the plate
   * @throws IllegalArgumentException where a figure lies outside what the model can do
   */
  public DryingCase dryingCase() {
    return new DryingCase(
        composition,
        doubt.solidsRelativeSd(),
        doubt.plasticiserRelativeSd(),
        casting.plate(),
        casting.pour(),
        place.room(),
        place.benchTemperatureK(),
        casting.faces());
  }

  /**
   * What a film forecast is asked.
   *
   * @return the film
   * @throws IllegalArgumentException where a figure lies outside what the model can do
   */
  public FilmCase filmCase() {
    return new FilmCase(
        composition,
        doubt.plasticiserRelativeSd(),
        doubt.solidsRelativeSd(),
        cook,
        casting.pour().wetThicknessM(),
        use.relativeHumidity(),
        use.temperatureK(),
        use.ageS());
  }

  /**
   * What is known of the drying factors with the doubt of this room.
   *
   * @param factors what is known apart from the room
   * @return the widened model
   */
  public ParameterDistribution inPlace(ParameterDistribution factors) {
    return place.doubt().addedTo(factors);
  }

  double wetThicknessM() {
    return casting.pour().wetThicknessM().value();
  }

  Setup with(Composition other) {
    return new Setup(other, doubt, cook, casting, place, use);
  }

  Setup with(Blend blend) {
    return with(blend.composition());
  }

  Setup with(Cook other) {
    return new Setup(composition, doubt, other, casting, place, use);
  }

  Setup with(Place other) {
    return new Setup(composition, doubt, cook, casting, other, use);
  }

  Setup with(Use other) {
    return new Setup(composition, doubt, cook, casting, place, other);
  }

  Setup with(Pour pour) {
    return with(new Casting(casting.plate(), pour, casting.faces()));
  }

  Setup with(Plate plate) {
    return with(new Casting(plate, casting.pour(), casting.faces()));
  }

  Setup withFaces(List<FaceChange> faces) {
    return with(new Casting(casting.plate(), casting.pour(), faces));
  }

  Setup with(Casting other) {
    return new Setup(composition, doubt, cook, other, place, use);
  }

  /** The same poured to another wet thickness (m), known as well as before. */
  Setup pouredTo(double wetThicknessM) {
    Estimate before = casting.pour().wetThicknessM();
    return with(
        new Pour(
            before.times(wetThicknessM / before.value()),
            casting.pour().unevenness(),
            casting.pour().pasteTemperatureK()));
  }

  Setup withUnevenness(double unevenness) {
    Pour pour = casting.pour();
    return with(new Pour(pour.wetThicknessM(), unevenness, pour.pasteTemperatureK()));
  }

  Setup withPasteTemperature(double temperatureK) {
    Pour pour = casting.pour();
    return with(new Pour(pour.wetThicknessM(), pour.unevenness(), temperatureK));
  }
}
