package starchfilm.film.risk;

/**
 * The risk that a film cracks while it dries on its plate.
 *
 * <p>The energy that a crack sets free is held against the film's toughness ({@link FilmStress});
 * the largest ratio over the whole course counts, for cracks do not heal. The levels are those of a
 * critical thickness that is known within a factor of 5 (judged): below a fifth low, to 1 watch, to
 * 5 likely, beyond expected. A film that lets go of its plate cracks no more, unless a rim holds
 * it: then it may, and is watched.
 *
 * <p>Limits: the ends of a sheet, bubbles and lumps, where cracks start, are not in the model.
 *
 * @param level how likely
 * @param energyOverToughness the largest ratio until the film lets go
 * @param criticalDryThicknessM dry thickness up to which a film of this paste, stuck and dried so,
 *     should hold (m, within a factor of 5)
 * @param dryThicknessM dry thickness of the thick spot (m)
 * @param mayTearAtRim whether it lets go but is held at its rim, and may tear there
 */
public record CrackRisk(
    RiskLevel level,
    double energyOverToughness,
    double criticalDryThicknessM,
    double dryThicknessM,
    boolean mayTearAtRim) {
  /** Beyond this a critical thickness is not distinguished (m); no pour of paste gets there. */
  public static final double THICKEST_TOLD_M = 5e-3;

  /** The band of the critical thickness: times or divided by. */
  private static final double BAND = 5;

  static RiskLevel level(double energyOverToughness) {
    return RiskLevel.of(energyOverToughness, 1 / BAND, 1, BAND);
  }
}
