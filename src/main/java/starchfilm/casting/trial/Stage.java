package starchfilm.casting.trial;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/** How far a trial has come; what wants to be looked at comes first. */
public enum Stage {
  /** On the plate: poured, and nothing noted yet that only a finished film has. */
  DRYING,
  /** Planned; nobody has poured it yet. */
  PLANNED,
  /**
   * Off the plate: noted so, or a rating is noted, or a dry thickness or pulled strip of this
   * plate. Of several plates one may be measured while the others still dry.
   */
  ENDED,
  /** Given up: the cat, a spill, mould. */
  GIVEN_UP;

  /**
   * How far a trial has come, going by what is noted.
   *
   * @param trial the trial
   * @param now the time by the clock on the wall
   * @return its stage: that of the plates that are not done, or of the first where all are; a pour
   *     that lies in the future is still planned
   */
  public static Stage of(Trial trial, LocalDateTime now) {
    return IntStream.rangeClosed(1, trial.plates())
        .mapToObj(plate -> of(trial, plate, now))
        .min(Comparator.comparing(stage -> stage == GIVEN_UP ? ENDED : stage))
        .orElse(PLANNED);
  }

  /**
   * How far one plate has come.
   *
   * @param trial its trial
   * @param plate its number, from 1
   * @param now the time by the clock on the wall
   * @return its stage
   */
  public static Stage of(Trial trial, int plate, LocalDateTime now) {
    Optional<PlateEnd> end = trial.seen().eachPlate().end(plate);
    if (end.isPresent()) {
      return end.get().givenUp().isPresent() ? GIVEN_UP : ENDED;
    }
    boolean measured =
        trial.plates() == 1
            ? !(trial.seen().pulls().isEmpty() && trial.seen().dryThicknessesM().isEmpty())
            : trial.seen().eachPlate().films().containsKey(plate);
    if (trial.seen().rating().isPresent() || measured) {
      return ENDED;
    }
    return trial.pouredAt().filter(pour -> !pour.isAfter(now)).isPresent() ? DRYING : PLANNED;
  }
}
