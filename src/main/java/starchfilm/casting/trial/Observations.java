package starchfilm.casting.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import starchfilm.casting.trial.ObservedFault.FaultKind;

/**
 * What was seen and measured of a casting.
 *
 * @param weighings of one plate, {@link EachPlate#shown}, in order of time
 * @param faults what went wrong
 * @param pulls strips pulled, of all plates
 * @param dryThicknessesM measured thicknesses of the dry film (m), of all plates
 * @param rating the maker's rating, 1 to 5, if given
 * @param remarks in the maker's words
 * @param photos photos beside the file
 * @param photoNotes what is noted of single photos
 * @param eachPlate what is noted of single plates
 */
public record Observations(
    List<Weighing> weighings,
    List<ObservedFault> faults,
    List<PullTest> pulls,
    List<Double> dryThicknessesM,
    OptionalInt rating,
    List<String> remarks,
    List<Path> photos,
    Map<Path, PhotoNote> photoNotes,
    EachPlate eachPlate) {
  /** The same observations with other weighings. */
  Observations with(List<Weighing> ofShown, EachPlate plates) {
    return new Observations(
        ofShown, faults, pulls, dryThicknessesM, rating, remarks, photos, photoNotes, plates);
  }

  /** Whether such a fault was seen. */
  public boolean hasFault(FaultKind kind) {
    return faults.stream().anyMatch(fault -> fault.kind() == kind);
  }

  public Observations {
    weighings = List.copyOf(weighings);
    faults = List.copyOf(faults);
    pulls = List.copyOf(pulls);
    dryThicknessesM = List.copyOf(dryThicknessesM);
    remarks = List.copyOf(remarks);
    photos = List.copyOf(photos);
    photoNotes = Map.copyOf(photoNotes);
  }
}
