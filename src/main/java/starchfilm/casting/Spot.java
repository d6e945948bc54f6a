package starchfilm.casting;

/** The three places of a plate that are followed. */
public enum Spot {
  /** Where the paste ran thin. */
  THIN_EDGE,
  /** The plate's average thickness. */
  NOMINAL,
  /** Where the paste lies thickest, usually the middle. */
  THICK_SPOT;

  /**
   * The spot's thickness over the average.
   *
   * @param unevenness the plate's unevenness, as in {@link Pour}
   * @return a ratio above 0; an unevenness beyond the model's limit counts as that limit
   */
  public double thicknessRatio(double unevenness) {
    double within = Math.min(unevenness, DryingLimits.UNEVENNESS.max());
    return switch (this) {
      case THIN_EDGE -> 1 - within;
      case NOMINAL -> 1;
      case THICK_SPOT -> 1 + within;
    };
  }
}
