package starchfilm.learning;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import starchfilm.casting.trial.PullTest;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;
import starchfilm.learning.summary.LeftOut;

/**
 * Trials that are one plate in two files, as in a backup folder: poured at the same time, with the
 * same weighings and strips.
 *
 * @param once every trial once; of copies the one that lies least deep in folders
 * @param copies the others, each with the file it repeats
 */
record Copies(List<Trial> once, List<LeftOut> copies) {
  /** What makes a plate the same. */
  private record PlateFingerprint(
      Optional<LocalDateTime> pouredAt, List<Weighing> weighings, List<PullTest> pulls) {
    static PlateFingerprint of(Trial trial) {
      return new PlateFingerprint(trial.pouredAt(), trial.seen().weighings(), trial.seen().pulls());
    }

    boolean isMeasured() {
      return !(weighings.isEmpty() && pulls.isEmpty());
    }
  }

  static Copies among(Path folder, List<Trial> trials) {
    Map<PlateFingerprint, Trial> first = new LinkedHashMap<>();
    trials.stream()
        .sorted(Comparator.comparingInt((Trial trial) -> trial.file().getNameCount()))
        .forEach(trial -> first.putIfAbsent(PlateFingerprint.of(trial), trial));
    List<Trial> once = new ArrayList<>();
    List<LeftOut> copies = new ArrayList<>();
    for (Trial trial : trials) {
      PlateFingerprint plate = PlateFingerprint.of(trial);
      Trial original = first.getOrDefault(plate, trial);
      if (original.file().equals(trial.file()) || !plate.isMeasured()) {
        once.add(trial);
      } else {
        copies.add(
            new LeftOut(
                TrialName.from(folder, trial),
                "the same plate as " + TrialName.from(folder, original) + ", which counts once"));
      }
    }
    return new Copies(once, copies);
  }
}
