package starchfilm.trial;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import starchfilm.casting.DryingCase;
import starchfilm.casting.FaceChange;
import starchfilm.casting.Plate;
import starchfilm.casting.Pour;
import starchfilm.casting.Room;
import starchfilm.drying.uncertainty.ParameterDistribution;
import starchfilm.drying.uncertainty.UncertainParameter;
import starchfilm.film.FilmCase;
import starchfilm.material.recipe.Paste;
import starchfilm.material.recipe.Recipe;
import starchfilm.numerics.evidence.Estimate;

/**
 * One trial: what was weighed, cooked and poured, where it dried, and what came of it.
 *
 * @param file the file it was read from
 * @param name what its maker calls it
 * @param invented true where the trial is made up as an example
 * @param pouredAt when it was poured, by the clock on the wall, if noted
 * @param recipe what went into the pot
 * @param plate what it was poured on
 * @param pour how it was poured
 * @param pouredMassKg paste on one plate (kg), if it was weighed
 * @param plateCount plates poured from the pot; at least 1
 * @param roomName what the maker calls the room, such as "shed"; learning is kept per room
 * @param room the air
 * @param roomDoubt how uncertain the file leaves the air
 * @param benchTemperatureK temperature of what the plate stands on (K), if noted
 * @param faces when the film was turned or moved to a rack
 * @param use where the film will be used
 * @param weighings in order of time
 * @param faults what went wrong
 * @param pulls strips pulled
 * @param measuredDryThicknessM measured thicknesses of the dry film (m)
 * @param rating the maker's rating, 1 to 5, if given
 * @param remarks in the maker's words
 * @param photos photos beside the file
 * @param notRecorded what the file does not say
 */
public record Trial(
    Path file,
    String name,
    boolean invented,
    Optional<LocalDateTime> pouredAt,
    Recipe recipe,
    Plate plate,
    Pour pour,
    Optional<Estimate> pouredMassKg,
    int plateCount,
    String roomName,
    Room room,
    RoomUncertainty roomDoubt,
    OptionalDouble benchTemperatureK,
    List<FaceChange> faces,
    Use use,
    List<Weighing> weighings,
    List<ObservedFault> faults,
    List<PullTest> pulls,
    List<Double> measuredDryThicknessM,
    OptionalInt rating,
    List<String> remarks,
    List<Path> photos,
    List<NotRecorded> notRecorded) {
  /** Copies the lists. */
  public Trial {
    faces = List.copyOf(faces);
    weighings = List.copyOf(weighings);
    faults = List.copyOf(faults);
    pulls = List.copyOf(pulls);
    measuredDryThicknessM = List.copyOf(measuredDryThicknessM);
    remarks = List.copyOf(remarks);
    photos = List.copyOf(photos);
    notRecorded = List.copyOf(notRecorded);
  }

  /**
   * Says whether anything has been noted about a plate of this trial; a recipe that nobody has cast
   * yet has no history.
   *
   * @return true where a pour, a weighing, a fault, a strip, a thickness or a rating is noted
   */
  public boolean hasHistory() {
    return pouredAt.isPresent()
        || rating.isPresent()
        || !(weighings.isEmpty()
            && faults.isEmpty()
            && pulls.isEmpty()
            && measuredDryThicknessM.isEmpty());
  }

  /**
   * Paste on all plates together.
   *
   * @return kg; as weighed, or else from wet thickness, area and the paste's density
   */
  public double pouredPasteKg() {
    return plateCount * pouredPasteKgPerPlate();
  }

  /**
   * Paste on one plate.
   *
   * @return kg; as weighed, or else from wet thickness, area and the paste's density
   */
  public double pouredPasteKgPerPlate() {
    return pouredMassKg.isPresent()
        ? pouredMassKg.get().value()
        : pour.wetThicknessM().value()
            * plate.areaM2()
            * Paste.cooked(recipe).composition().pasteDensityKgPerM3();
  }

  /**
   * Paste in the pot after the cook.
   *
   * @return kg
   */
  public double cookedPasteKg() {
    return Paste.cooked(recipe).massKg();
  }

  /**
   * What a drying forecast needs to know of one plate of this trial.
   *
   * @return the plate, its paste as cooked
   * @throws IllegalArgumentException where a figure lies outside what the drying model takes; the
   *     message is a sentence for the reader
   */
  public DryingCase dryingCase() {
    Paste paste = Paste.cooked(recipe);
    return new DryingCase(
        paste.composition(),
        paste.solidsRelativeSd(),
        paste.plasticiserRelativeSd(),
        plate,
        pour,
        room,
        benchTemperatureK,
        faces);
  }

  /**
   * What a film forecast needs to know of this trial.
   *
   * @return the paste as cooked, its pour, and where the film will be used
   * @throws IllegalArgumentException where a figure lies outside what the film rules take; the
   *     message is a sentence for the reader
   */
  public FilmCase filmCase() {
    Paste paste = Paste.cooked(recipe);
    return new FilmCase(
        paste.composition(),
        paste.plasticiserRelativeSd(),
        paste.solidsRelativeSd(),
        recipe.cook(),
        pour.wetThicknessM(),
        use.relativeHumidity(),
        use.temperatureK(),
        use.ageS());
  }

  /**
   * What the file leaves uncertain about the room, as standard uncertainties; it joins what every
   * forecast allows for.
   *
   * @param temperatureSdK of the air temperature (K)
   * @param humiditySd of the relative humidity (ratio)
   * @param speedRelativeSd of the air speed (ratio)
   */
  public record RoomUncertainty(double temperatureSdK, double humiditySd, double speedRelativeSd) {
    /** A room that is noted in full. */
    public static final RoomUncertainty NONE = new RoomUncertainty(0, 0, 0);

    /**
     * Transfer over a plate in forced flow grows with the square root of the air's speed, so a
     * relative doubt of the speed is half as large a doubt of the transfer. Source: laminar
     * boundary layer, Incropera et al., Fundamentals of Heat and Mass Transfer, section 7.2
     * (recalled).
     */
    private static final double SPEED_TO_TRANSFER = 0.5;

    /**
     * What is known of the drying factors with the doubt of this room added.
     *
     * @param factors what is known apart from this room
     * @return the widened model
     */
    public ParameterDistribution addedTo(ParameterDistribution factors) {
      return factors
          .widened(UncertainParameter.AIR_TEMPERATURE, temperatureSdK)
          .widened(UncertainParameter.HUMIDITY, humiditySd)
          .widened(UncertainParameter.AIR_SIDE, SPEED_TO_TRANSFER * speedRelativeSd);
    }
  }

  /**
   * Where the film will be used.
   *
   * @param relativeHumidity of the air there (ratio, 0 to 1)
   * @param temperatureK of the air there (K)
   * @param ageS time between dry-through and use (s)
   */
  public record Use(double relativeHumidity, double temperatureK, double ageS) {}
}
