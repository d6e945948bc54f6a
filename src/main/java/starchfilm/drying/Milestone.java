package starchfilm.drying;

import starchfilm.casting.Spot;

/** The moments people wait for, in the order they come. */
public enum Milestone {
  /** The open face holds at most 0.35 kg water per kg dry solids (judged, no source). */
  SKIN_DRY(Spot.NOMINAL),
  /** The wettest point holds at most 0.35 kg water per kg dry solids (judged, no source). */
  PEELABLE(Spot.NOMINAL),
  /**
   * The wettest point is within 0.02 kg/kg of the moisture it will keep, or would keep at 20 %
   * relative humidity where the air is drier.
   */
  DRY_THROUGH(Spot.THICK_SPOT);

  /** Moisture (kg/kg) below which a face no longer feels wet and a film holds together; judged. */
  public static final double FIRM_MOISTURE = 0.35;

  private final Spot spot;

  Milestone(Spot spot) {
    this.spot = spot;
  }

  /**
   * The spot that counts where it is told of a whole plate: a plate is lifted on average, for its
   * thick spot follows, and is dry when its thick spot is.
   */
  public Spot spot() {
    return spot;
  }
}
