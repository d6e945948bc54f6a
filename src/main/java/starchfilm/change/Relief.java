package starchfilm.change;

/** What may lower a risk of a plate: mould each of them, cracks those that slow or ease drying. */
public enum Relief {
  /** A thinner pour. */
  THINNER_POUR(Change.POUR_THINNER, true),
  /** A level plate. */
  LEVEL_PLATE(Change.LEVEL_THE_PLATE, true),
  /** More glycerol. */
  MORE_GLYCEROL(Change.MORE_GLYCEROL, true),
  /** Damper air. */
  COVER(Change.COVER_THE_PLATE, true),
  /** A fan. */
  FAN(Change.FAN, false),
  /** Drier air. */
  DRIER_ROOM(Change.DRIER_ROOM, false),
  /** Warmer air. */
  WARMER_ROOM(Change.WARMER_ROOM, false);

  private final Change change;
  private final boolean helpsAgainstCracks;

  Relief(Change change, boolean helpsAgainstCracks) {
    this.change = change;
    this.helpsAgainstCracks = helpsAgainstCracks;
  }

  /** The change of the casting. */
  public Change change() {
    return change;
  }

  boolean helpsAgainstCracks() {
    return helpsAgainstCracks;
  }
}
