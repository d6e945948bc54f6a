package starchfilm.learning;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import starchfilm.casting.trial.Trial;
import starchfilm.learning.summary.LeftOut;

/**
 * Trials that are one plate in two files, as in a backup folder: poured at the same time, with the
 * same weighings and strips.
 *
 * @param once every trial once; of copies the one that lies least deep in folders
 * @param copies the others, each with the file it repeats
 */
record Copies(List<Trial> once, List<LeftOut> copies) {
  static Copies among(Path folder, List<Trial> trials) {
    Map<Optional<LocalDateTime>, List<Trial>> sameTime =
        trials.stream()
            .filter(Copies::isMeasured)
            .sorted(Comparator.comparingInt(trial -> trial.file().getNameCount()))
            .collect(Collectors.groupingBy(Trial::pouredAt));
    List<Trial> once = new ArrayList<>();
    List<LeftOut> copies = new ArrayList<>();
    for (Trial trial : trials) {
      Trial original =
          sameTime.getOrDefault(trial.pouredAt(), List.of()).stream()
              .filter(other -> isSamePlate(other, trial))
              .findFirst()
              .orElse(trial);
      if (original.file().equals(trial.file())) {
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

  private static boolean isMeasured(Trial trial) {
    return !(trial.seen().weighings().isEmpty() && trial.seen().pulls().isEmpty());
  }

  private static boolean isSamePlate(Trial one, Trial other) {
    return one.file().equals(other.file())
        || (one.seen().weighings().equals(other.seen().weighings())
            && one.seen().pulls().equals(other.seen().pulls()));
  }
}
