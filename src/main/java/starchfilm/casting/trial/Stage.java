package starchfilm.casting.trial;

import java.time.LocalDateTime;

/** How far a trial has come. */
public enum Stage {
  /** Planned; nobody has poured it yet. */
  PLANNED,
  /** On the plate: poured, and nothing noted yet that only a finished film has. */
  DRYING,
  /**
   * Off the plate: a rating is noted, or, of a trial of one plate, a dry thickness or pulled strip.
   * Of several plates one may be measured while the others still dry.
   */
  ENDED;

  /**
   * How far a trial has come, going by what is noted.
   *
   * @param trial the trial
   * @param now the time by the clock on the wall
   * @return its stage; a pour that lies in the future is still planned
   */
  public static Stage of(Trial trial, LocalDateTime now) {
    boolean measured =
        !(trial.seen().pulls().isEmpty() && trial.seen().dryThicknessesM().isEmpty());
    boolean finished =
        trial.seen().rating().isPresent() || (measured && trial.casting().pour().plates() == 1);
    if (finished) {
      return ENDED;
    }
    return trial.pouredAt().filter(pour -> !pour.isAfter(now)).isPresent() ? DRYING : PLANNED;
  }
}
