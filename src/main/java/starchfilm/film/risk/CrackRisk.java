package starchfilm.film.risk;

import java.util.Optional;
import starchfilm.numerics.evidence.Check;
import starchfilm.numerics.evidence.Source;

/**
 * The risk that a film cracks while it dries on its plate.
 *
 * <p>A part of the film that is already firm would shrink on, but hangs on a part that is wetter
 * and shrinks later: the skin on the core, the thin edge on the thick spot. What it must stretch is
 * {@code (1/3) ln[v(X_wet)/v(X_skin)]}, a third of the volume's strain, X_wet counted up to 0.35
 * kg/kg because a wetter part is a gel that yields. That is held against what the skin can stretch
 * at its own moisture and temperature; the worst moment counts.
 *
 * <p>Limits: no stress is computed, nothing relaxes, adhesion to the plate is not known, and the
 * ends of a sheet, bubbles and lumps, where cracks start, are not in the model. The levels (below
 * 0.3 low, to 1 watch, to 2 likely) are judged.
 *
 * @param level how likely
 * @param stretchNeeded the strain at the worst moment (ratio)
 * @param stretchAvailable what the skin can stretch then (ratio)
 * @param worstAtS the worst moment, since the pour (s)
 * @param cause what makes it crack; empty at a low risk
 * @param remedy the change that lowers the risk most, if one does; its measure is needed over
 *     available stretch
 */
public record CrackRisk(
    RiskLevel level,
    double stretchNeeded,
    double stretchAvailable,
    double worstAtS,
    Optional<CrackCause> cause,
    Optional<Remedy> remedy) {
  /** Where the rule comes from. */
  static final Source SOURCE =
      new Source(
          "crack rule: shrinkage that skin and core, or edge and middle, do not share, against the"
              + " stretch of the skin; assumed, no source",
          Check.JUDGED);

  private static final double WATCH_FROM = 0.3;
  private static final double LIKELY_FROM = 1;
  private static final double EXPECTED_FROM = 2;

  static RiskLevel level(double neededOverAvailable) {
    if (neededOverAvailable < WATCH_FROM) {
      return RiskLevel.LOW;
    }
    if (neededOverAvailable < LIKELY_FROM) {
      return RiskLevel.WATCH;
    }
    return neededOverAvailable < EXPECTED_FROM ? RiskLevel.LIKELY : RiskLevel.EXPECTED;
  }
}
